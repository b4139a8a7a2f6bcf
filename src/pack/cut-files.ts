// The cut files of a sheet part, each format of each set-up, and what was measured when they were read back.
// The kerf setting stands in every name, so that no file is compensated twice.

import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { dxfCutFile } from "../export/dxf-cut-file.ts";
import { dxfR12CutFile } from "../export/dxf-r12-cut-file.ts";
import { machinePaths } from "../export/machine-paths.ts";
import type { ProcessColours } from "../export/process-colours.ts";
import { svgCutFile } from "../export/svg-cut-file.ts";
import { fixed } from "../geometry/number.ts";
import { inspectFiles } from "../inspection/inspect-files.ts";
import type { InspectionRow } from "../inspection/row.ts";
import type { WrittenFile } from "../inspection/written-file.ts";
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

/** For several parts: what is said once each. */
export type TogetherOptions = Omit<CutFilesOptions, "title" | "span"> & {
  readonly titleOf: (part: SheetPart) => string;
  readonly spanOf: (part: SheetPart) => Span;
};

/** The cut files of one part by itself. */
export const cutFilesOf = (part: SheetPart, options: CutFilesOptions): PanelPack =>
  cutFilesTogether([part], {
    ...options,
    titleOf: () => options.title,
    spanOf: () => options.span,
  });

/** The cut files of parts that belong together: each measured by itself, then the layers laid on each other. */
export const cutFilesTogether = (
  parts: readonly SheetPart[],
  options: TogetherOptions,
): PanelPack => {
  const sets = parts.flatMap((part) =>
    part.setUps.map((setUp) =>
      setUpFiles(part, setUp, {
        ...options,
        title: options.titleOf(part),
        span: options.spanOf(part),
      }),
    ),
  );
  const inspection = inspectFiles(sets.flatMap(({ written }) => written));
  return {
    files: sets.flatMap(({ files }) => files),
    inspection,
    findings: [
      ...sets.flatMap(({ findings }) => findings),
      ...mismatches(inspection, parts, options),
    ],
  };
};

export const setUpName = (part: SheetPart, setUp: SetUp): string =>
  `${safeName(part.id)}-${safeName(setUp.id)}.${kerfName(setUp.kerf)}`;

const kerfName = (kerf: KerfSetting): string => {
  if (kerf.kind === "left-to-cutter") return "nominal";
  const short = fixed(kerf.kerf, 2);
  return `kerf-${Number(short) === kerf.kerf ? short : fixed(kerf.kerf, 3)}`;
};

interface SetUpFiles {
  readonly files: readonly PackFile[];
  readonly written: readonly WrittenFile[];
  readonly findings: readonly Finding[];
}

const setUpFiles = (part: SheetPart, setUp: SetUp, options: CutFilesOptions): SetUpFiles => {
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
    return { files: [], written: [], findings };
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
  return {
    files: texts.map(({ kind, path, text }) => packFile(kind, path, { part, text })),
    written: texts.map(({ kind, path, text }) => ({
      format: kind === "cut-svg" ? "svg" : "dxf",
      text,
      part,
      setUp,
      file: path,
    })),
    findings: [],
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

/** The first few are enough to see what is wrong. */
const SHOWN = 3;

const mismatches = (
  inspection: readonly InspectionRow[],
  parts: readonly SheetPart[],
  options: { readonly spanOf: (part: SheetPart) => Span },
): readonly Finding[] => {
  const first = parts[0];
  if (first === undefined) return [];
  const failed = inspection.filter(({ passed }) => !passed);
  return failed.slice(0, SHOWN).map((row, index) =>
    finding(INSPECTION_MISMATCH, {
      panel: first.panel,
      subjects: [row.feature],
      message: `${row.file}: ${row.feature}, ${row.what} must be ${row.expected} and measures ${row.measured}`,
      span: options.spanOf(partOf(row, parts) ?? first),
      suppressed: index === SHOWN - 1 ? failed.length - SHOWN : 0,
    }),
  );
};

const partOf = (row: InspectionRow, parts: readonly SheetPart[]): SheetPart | undefined =>
  parts.find((part) => part.setUps.some((setUp) => row.file.includes(setUpName(part, setUp))));
