// A test piece's pack on the disk, and what is said of it.

import { join, resolve } from "node:path";
import { safeName } from "../pack/file-name.ts";
import type { PanelPack } from "../pack/panel-pack.ts";
import { sha256 } from "../pack/sha256.ts";
import { EXIT, type ExitCode, type Shell } from "./shell.ts";
import { hasFault } from "./show-findings.ts";
import { writePack } from "./write-pack.ts";

export const writeTestPiece = (
  pack: PanelPack,
  asked: { readonly id: string; readonly out: string | null; readonly json: boolean },
  shell: Shell,
): ExitCode => {
  const name = asked.out ?? join("out", safeName(asked.id));
  if (hasFault(pack.findings)) {
    for (const { message } of pack.findings) shell.stderr(`fault: ${message}\n`);
    return EXIT.faults;
  }
  const result = writePack(resolve(shell.cwd, name), pack.files, shell.disk);
  if (result.kind === "refused") {
    shell.stderr(`${result.why}\n`);
    return EXIT.faults;
  }
  const files = pack.files.map(({ path, kind, bytes }) => ({
    path,
    kind,
    part: asked.id,
    bytes: bytes.length,
    sha256: sha256(bytes),
  }));
  shell.stdout(
    asked.json
      ? `${JSON.stringify({ files, findings: [], inspection: pack.inspection })}\n`
      : `${files.length} files in ${name}; begin with measure.md\n`,
  );
  return EXIT.fine;
};
