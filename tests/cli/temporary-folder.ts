// A new empty folder of the system's temporary place, removed when the test is over.

import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(realpathSync(tmpdir()), "consolewright-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};
