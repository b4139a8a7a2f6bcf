// The command line from a cold start, as a user waits for it, beside a Node that does nothing.

import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { measured, type Row } from "./harness.ts";
import { panelDesign } from "./seeded-panel.ts";

const program = join(import.meta.dirname, "../dist/cli/main.js");

export function commandRows(): readonly Row[] {
  const folder = mkdtempSync(join(tmpdir(), "consolewright-bench-"));
  try {
    for (const [path, text] of panelDesign(0, "b612").files) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return [
      commandRow(
        { name: "--help from a cold start (yardstick: node alone)", rounds: 9 },
        ["--help"],
        folder,
      ),
      commandRow(
        {
          name: "make --only fascia of one panel from a cold start (yardstick: node alone)",
          rounds: 9,
        },
        ["make", "panel.yaml", "--only", "fascia", "--out", "out"],
        folder,
      ),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export const commandRow = (
  { name, rounds }: { readonly name: string; readonly rounds: number },
  args: readonly string[],
  cwd: string,
): Row =>
  measured({
    name,
    run: () => node([program, ...args], cwd),
    yardstick: () => node(["-e", "0"], cwd),
    warmUp: 1,
    rounds,
  });

const node = (args: readonly string[], cwd: string): void => {
  execFileSync(process.execPath, args, { cwd, stdio: ["ignore", "ignore", "pipe"] });
};
