// The cut files of a sheet part, each format of each set-up, and what was measured when they were read back.
// The kerf setting stands in every name, so that no file is compensated twice.

import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { dxfCutFile } from "../export/dxf-cut-file.ts";
import { dxfR12CutFile } from "../export/dxf-r12-cut-file.ts";
import { machinePaths } from "../export/machine-paths.ts";
import type { ProcessColours } from "../export/process-colours.ts";
import { svgCutFile } from "../export/svg-cut-file.ts";
import { fixed } from "../geometry/number.ts";
import { inspectDxf } from "../inspection/inspect-dxf.ts";
import { inspectSvg } from "../inspection/inspect-svg.ts";
import type { InspectionRow } from "../inspection/row.ts";
import type { KerfSetting, SetUp, SheetPart } from "../parts/sheet-part.ts";
import { INSPECTION_MISMATCH, REFUSED_SET_UP } from "./codes.ts";
import { safeName } from "./file-name.ts";
import type { PackFile, PackFileKind } from "./pack-file.ts";
import type { PanelPack } from "./panel-pack.ts";
import { utf8Bytes } from "./utf8.ts";

export interface CutFilesOptions {
  readonly folder: "cut" | "card";
  readonly colours: ProcessColours;
  /** What the files call themselves. */
  readonly title: string;
  /** Where a fault of this part is shown. */
  readonly span: Span;
}

export const cutFilesOf = (part: SheetPart, options: CutFilesOptions): PanelPack => {
  const sets = part.setUps.map((setUp) => setUpFiles(part, setUp, options));
  return {
    files: sets.flatMap(({ files }) => files),
    inspection: sets.flatMap(({ inspection }) => inspection),
    findings: sets.flatMap(({ findings }) => findings),
  };
};

export const setUpName = (part: SheetPart, setUp: SetUp): string =>
  `${safeName(part.id)}-${safeName(setUp.id)}.${kerfName(setUp.kerf)}`;

const kerfName = (kerf: KerfSetting): string => {
  if (kerf.kind === "left-to-cutter") return "nominal";
  const short = fixed(kerf.kerf, 2);
  return `kerf-${Number(short) === kerf.kerf ? short : fixed(kerf.kerf, 3)}`;
};

const setUpFiles = (part: SheetPart, setUp: SetUp, options: CutFilesOptions): PanelPack => {
  const paths = machinePaths(setUp);
  if (paths.kind === "refused") {
    const findings = paths.refusals.map(({ feature, why }) =>
      finding(REFUSED_SET_UP, {
        panel: part.panel,
        subjects: [feature],
        message: `${part.id}, set-up ${setUp.id}, ${feature}: ${why}`,
        span: options.span,
      }),
    );
    return { files: [], inspection: [], findings };
  }
  const stem = `${options.folder}/${setUpName(part, setUp)}`;
  const { colours, title } = options;
  const texts: readonly CutText[] = [
    { kind: "cut-svg", path: `${stem}.svg`, text: svgCutFile(part, setUp, { colours, title }) },
    { kind: "cut-dxf", path: `${stem}.dxf`, text: dxfCutFile(part, setUp, { colours, title }) },
    {
      kind: "cut-dxf-r12",
      path: `${stem}.r12.dxf`,
      text: dxfR12CutFile(part, setUp, { title }),
    },
  ];
  const inspection = texts.flatMap((cut) => inspected(cut, part, setUp));
  return {
    files: texts.map(({ kind, path, text }) => packFile(kind, path, { part, text })),
    inspection,
    findings: mismatches(inspection, part, options.span),
  };
};

interface CutText {
  readonly kind: PackFileKind;
  readonly path: string;
  readonly text: string;
}

const packFile = (
  kind: PackFileKind,
  path: string,
  content: { readonly part: SheetPart; readonly text: string },
): PackFile => ({ path, kind, part: content.part.id, bytes: utf8Bytes(content.text) });

const inspected = (cut: CutText, part: SheetPart, setUp: SetUp): readonly InspectionRow[] => {
  const inspect = cut.kind === "cut-svg" ? inspectSvg : inspectDxf;
  return inspect(cut.text, { part, setUp, file: cut.path });
};

/** The first few are enough to see what is wrong. */
const SHOWN = 3;

const mismatches = (
  inspection: readonly InspectionRow[],
  part: SheetPart,
  span: Span,
): readonly Finding[] => {
  const failed = inspection.filter(({ passed }) => !passed);
  return failed.slice(0, SHOWN).map((row, index) =>
    finding(INSPECTION_MISMATCH, {
      panel: part.panel,
      subjects: [row.feature],
      message: `${row.file}: ${row.feature}, ${row.what} must be ${row.expected} and measures ${row.measured}`,
      span,
      suppressed: index === SHOWN - 1 ? failed.length - SHOWN : 0,
    }),
  );
};
