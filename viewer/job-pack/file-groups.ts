// The files of a pack in the order in which they are used: cut files by set-up, what is printed, drawings, templates, papers.

import { fixed } from "../../src/geometry/number.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";

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
      const what = path.startsWith("card/") ? "Card for a first fitting" : "Cut";
      return `${what}: ${name.replace(/\.(nominal|kerf-[\d.]+)\.(svg|dxf|r12\.dxf)$/, "")}`;
    }
    case "print-3mf":
    case "print-stl":
    case "print-step":
      return "To print";
    case "label-film":
      return "Label films";
    case "drawing-svg":
    case "drawing-pdf":
    case "console-model":
      return "Drawings";
    case "template-pdf":
    case "mock-up":
      return "Templates and mock-up in true size";
    case "picture-png":
      return "Pictures";
    case "inspection":
      return "Inspection";
    case "fit-report":
      return "Fit report";
    case "key":
    case "measuring-list":
    case "parts-list":
    case "hand-operations":
    case "assembly":
    case "readme":
    case "findings":
    case "manifest":
      return "Papers";
  }
};

const ORDER = [
  "Cut",
  "Card",
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
  if (bytes < 999_950) return `${fixed(bytes / 1000, 1)} kB`;
  return `${fixed(bytes / 1_000_000, 1)} MB`;
};
