// What `make` says: for programs one record of files, findings and inspection; for people a line a panel.

import { relative } from "node:path";
import { countWords } from "../diagnostics/count-words.ts";
import { findingRecord } from "../diagnostics/render-json.ts";
import { changesSentence } from "../pack/changes.ts";
import { sha256 } from "../pack/sha256.ts";
import type { Made, MadePanel } from "./made.ts";
import { seenFrom } from "./open-project.ts";
import type { Shell } from "./shell.ts";
import { countsInWords, showFindings } from "./show-findings.ts";

/** Paths of files are from the output folder, or from the root of their zip; only what was written is listed. */
export const madeRecord = (made: Made, cwd: string): object => {
  const seen = seenFrom(cwd, made.opened.loaded, made.findings);
  const written = made.panels.filter(({ isWritten }) => isWritten);
  return {
    files: written.flatMap(({ folder, zip, pack }) =>
      pack.files.map(({ path, kind, part, bytes }) => ({
        path: `${folder}${path}`,
        zip,
        kind,
        part,
        bytes: bytes.length,
        sha256: sha256(bytes),
      })),
    ),
    findings: seen.findings.map((found) => findingRecord(found, seen.files)),
    inspection: made.panels.flatMap(({ folder, pack }) =>
      pack.inspection.map((row) => ({ ...row, file: `${folder}${row.file}` })),
    ),
    out: made.out,
    panels: made.panels.map(({ name, folder, zip, isWritten, isStale, changes }) => ({
      name,
      folder,
      zip,
      written: isWritten,
      stale: isStale,
      changes,
    })),
    zips: made.zips.map(({ name, bytes }) => ({
      path: name,
      bytes: bytes.length,
      sha256: sha256(bytes),
    })),
  };
};

export const tellMade = (
  made: Made,
  { shell, notes }: { readonly shell: Shell; readonly notes: boolean },
): void => {
  const seen = seenFrom(shell.cwd, made.opened.loaded, made.findings);
  showFindings(seen.findings, seen.files, { shell, style: { notes, lines: false } });
  const out = relative(shell.cwd, made.out) || made.out;
  const lines = [
    ...made.panels.map((panel) => panelLine(panel, out)),
    ...made.leftOver.map(
      ({ name, manifest }) =>
        `${manifest.panel}: no panel of this console; its old pack in ${out}/${name} is left as it is`,
    ),
  ];
  const { loaded, project } = made.opened;
  const older = made.otherForm.map(
    ({ place }) => `an older pack in ${relative(shell.cwd, place) || place} is left as it is`,
  );
  const name = project.name === "" ? loaded.entry : project.name;
  shell.stdout(`${[...lines, ...older, `${name}: ${countsInWords(made.findings)}`].join("\n")}\n`);
};

const panelLine = (panel: MadePanel, out: string): string => {
  const place = `${out}/${panel.zip ?? panel.folder}`;
  if (!panel.isWritten)
    return panel.isStale
      ? `${panel.name}: not written; ${place} is kept and marked stale`
      : `${panel.name}: not written`;
  const measured = `${panel.pack.inspection.length} measurements right`;
  const line = `${panel.name}: ${countWords(panel.pack.files.length, "file")} in ${place}, ${measured}`;
  return panel.changes === null || panel.changes.length === 0
    ? line
    : `${line}\n  since the last pack: ${changesSentence(panel.changes)}`;
};
