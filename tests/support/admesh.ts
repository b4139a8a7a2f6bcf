// admesh (Debian's package of that name), a checker of STL files that shares nothing with this project. Where it is not
// installed, every test that needs it fails and says so.

import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What it found wrong; empty for a sound file of this many parts. */
export function admeshFaults(stl: Uint8Array, parts: number): readonly string[] {
  const report = admesh(stl);
  const expected: readonly (readonly [string, number])[] = [
    ["Number of parts", parts],
    ["Facets with 1 disconnected edge", 0],
    ["Facets with 2 disconnected edges", 0],
    ["Facets with 3 disconnected edges", 0],
    ["Total disconnected facets", 0],
    ["Degenerate facets", 0],
    ["Edges fixed", 0],
    ["Facets removed", 0],
    ["Facets added", 0],
    ["Facets reversed", 0],
    ["Backwards edges", 0],
    ["Normals fixed", 0],
  ];
  return expected
    .filter(([name, value]) => report.get(name) !== value)
    .map(([name]) => `${name}: ${report.get(name)}`);
}

/** Found on the path; not a package of npm's. */
const CHECKER = "admesh";

/** What it says by name: "Number of parts", "Degenerate facets", "Edges fixed" ... */
type AdmeshReport = ReadonlyMap<string, number>;

function admesh(stl: Uint8Array): AdmeshReport {
  const folder = mkdtempSync(join(tmpdir(), "admesh-"));
  try {
    const file = join(folder, "part.stl");
    writeFileSync(file, stl);
    const run = spawnSync(CHECKER, [file], { encoding: "utf8" });
    if (run.error !== undefined)
      throw new Error(
        `admesh does not start (${run.error.message}): install Debian's package "admesh"`,
      );
    return reportOf(run.stdout);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const reportOf = (text: string): AdmeshReport =>
  new Map(
    [...text.matchAll(/([A-Z][A-Za-z0-9 ]*?)\s*:\s+(-?\d+(?:\.\d+)?)/g)].map(([, name, value]) => [
      name!,
      Number(value),
    ]),
  );
