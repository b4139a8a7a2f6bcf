// The lettering that is shipped is acknowledged, and each font travels with its licence (SIL Open Font License 1.1, 2:
// each copy contains the copyright notice and the licence).

import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { buildLibrary } from "../../scripts/build-library.ts";

const readme = readFileSync(join(dirname(dirname(import.meta.dirname)), "README.md"), "utf8");
const { fonts } = buildLibrary();

test.each(fonts)(
  "$title is named in the README and has its licence with it",
  ({ title, licence }) => {
    const family = title.replace(/ (Regular|Medium|SemiBold|Bold)$/, "");
    expect(readme).toContain(family);
    expect(licence).toMatch(/SIL Open Font License/i);
    expect(licence).toMatch(/copyright|created by/i);
  },
);
