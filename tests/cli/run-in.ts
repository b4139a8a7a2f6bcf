// Runs the command line in this process, in a folder of the test's, and hands back what it said.

import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { run } from "../../src/cli/run.ts";
import type { Shell } from "../../src/cli/shell.ts";
import { openKernel } from "../support/kernel.ts";

export interface Outcome {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunSettings {
  readonly disk?: Disk;
  readonly colour?: boolean;
  readonly trace?: boolean;
  readonly library?: Shell["library"];
}

export const runIn = async (
  cwd: string,
  args: readonly string[],
  settings: RunSettings = {},
): Promise<Outcome> => {
  let stdout = "";
  let stderr = "";
  const shell: Shell = {
    cwd,
    disk: settings.disk ?? realDisk,
    colour: settings.colour ?? false,
    stdout: (text) => {
      stdout += text;
    },
    stderr: (text) => {
      stderr += text;
    },
    library: settings.library ?? (() => Promise.reject(new Error("this test has no library"))),
    kernel: openKernel,
    version: () => "0.0.0-test",
    pageFolder: "dist/viewer",
    untilStopped: () => Promise.resolve(),
  };
  const code = await run(args, shell, settings.trace);
  return { code, stdout, stderr };
};
