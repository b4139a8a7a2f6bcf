// The files of a pack in the order in which they are used: cut files by set-up, what is printed, drawings, templates, papers.

import type { PackFile, PackFileKind } from "../../src/pack/pack-file.ts";

export interface FileGroup {
  readonly title: string;
  readonly files: readonly PackFile[];
}

export const fileGroups = (files: readonly PackFile[]): readonly FileGroup[] => {
  const groups = new Map<string, PackFile[]>();
  for (const file of files) {
    const title = groupOf(file);
    groups.set(title, [...(groups.get(title) ?? []), file]);
  }
  return [...groups]
    .map(([title, members]) => ({ title, files: members }))
    .toSorted((a, b) => rankOf(a) - rankOf(b));
};

/** A set-up is the name of its files without folder, kerf and ending. */
const groupOf = ({ path, kind }: PackFile): string => {
  switch (kind) {
    case "cut-svg":
    case "cut-dxf":
    case "cut-dxf-r12": {
      const name = path.split("/").at(-1) ?? path;
      return `Cut: ${name.replace(/\.(nominal|kerf-[\d.]+)\.(svg|dxf|r12\.dxf)$/, "")}`;
    }
    default:
      return TITLES[kind];
  }
};

const TITLES: Readonly<
  Record<Exclude<PackFileKind, "cut-svg" | "cut-dxf" | "cut-dxf-r12">, string>
> = {
  "print-3mf": "To print",
  "print-stl": "To print",
  "print-step": "To print",
  "label-film": "Label films",
  "drawing-svg": "Drawings",
  "drawing-pdf": "Drawings",
  "console-model": "Drawings",
  "template-pdf": "Templates and mock-up in true size",
  "mock-up": "Templates and mock-up in true size",
  "picture-png": "Pictures",
  key: "Papers",
  inspection: "Inspection",
  "measuring-list": "Papers",
  "parts-list": "Papers",
  "hand-operations": "Papers",
  assembly: "Papers",
  "fit-report": "Fit report",
  readme: "Papers",
  findings: "Papers",
  manifest: "Papers",
};

const ORDER = [
  "Cut",
  "To print",
  "Label films",
  "Drawings",
  "Templates",
  "Pictures",
  "Inspection",
  "Fit report",
  "Papers",
];

const rankOf = ({ title }: FileGroup): number =>
  ORDER.findIndex((start) => title.startsWith(start));

/** "1.4 kB": thousands, as disks count. */
export const sizeWords = (bytes: number): string => {
  if (bytes < 1000) return `${bytes} B`;
  if (bytes < 999_950) return `${(bytes / 1000).toFixed(1)} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
};
