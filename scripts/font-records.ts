// Reads the fonts that the library ships out of the installed packages, with the licence that must travel with each.
// All are under the SIL Open Font License 1.1. Run by the library build; the fonts themselves are not kept in the source.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { FaceKind, FontRecord } from "../src/lettering/font-record.ts";

interface PackedFace {
  readonly id: string;
  readonly title: string;
  readonly kind: FaceKind;
  readonly folder: string;
  readonly file: string;
}

/** Two weights where a face has them: one near 1/7 of the height for light on dark, one near 1/6 for dark on light. */
const OUTLINE_FACES: readonly PackedFace[] = [
  {
    id: "b612",
    title: "B612 Regular",
    kind: "outline",
    folder: "b612",
    file: "b612-latin-400-normal.woff",
  },
  {
    id: "b612-bold",
    title: "B612 Bold",
    kind: "outline",
    folder: "b612",
    file: "b612-latin-700-normal.woff",
  },
  {
    id: "barlow-condensed",
    title: "Barlow Condensed Medium",
    kind: "outline",
    folder: "barlow-condensed",
    file: "barlow-condensed-latin-500-normal.woff",
  },
  {
    id: "barlow-condensed-semibold",
    title: "Barlow Condensed SemiBold",
    kind: "outline",
    folder: "barlow-condensed",
    file: "barlow-condensed-latin-600-normal.woff",
  },
  {
    id: "overpass",
    title: "Overpass Medium",
    kind: "outline",
    folder: "overpass",
    file: "overpass-latin-500-normal.woff",
  },
  {
    id: "overpass-semibold",
    title: "Overpass SemiBold",
    kind: "outline",
    folder: "overpass",
    file: "overpass-latin-600-normal.woff",
  },
  {
    id: "saira-stencil",
    title: "Saira Stencil One",
    kind: "stencil",
    folder: "saira-stencil-one",
    file: "saira-stencil-one-latin-400-normal.woff",
  },
];

const SINGLE_LINE_FACE = {
  id: "single-line",
  title: "EMS Readability",
  kind: "single-line",
  file: "svg_fonts/EMSReadability.svg",
} as const;

export const fontRecords = (): readonly FontRecord[] => [
  ...OUTLINE_FACES.map(outlineRecord),
  singleLineRecord(),
];

const outlineRecord = (face: PackedFace): FontRecord => {
  const folder = packageFolder(`@fontsource/${face.folder}`);
  return {
    id: face.id,
    title: face.title,
    kind: face.kind,
    format: "woff",
    base64: readFileSync(join(folder, "files", face.file)).toString("base64"),
    licence: readFileSync(join(folder, "LICENSE"), "utf8"),
  };
};

/** The SVG font names its licence and authors in its metadata; the licence's text is the same for every font under it. */
const singleLineRecord = (): FontRecord => {
  const { file, ...face } = SINGLE_LINE_FACE;
  const bytes = readFileSync(join(packageFolder("hersheytext"), file));
  const notice = /<metadata>([\s\S]*?)<\/metadata>/.exec(bytes.toString("utf8"))?.[1]?.trim();
  if (notice === undefined) throw new Error(`${file} carries no notice of its licence`);
  return {
    ...face,
    format: "svg",
    base64: bytes.toString("base64"),
    licence: `${notice}\n\n${openFontLicence()}`,
  };
};

const LICENCE_START = "SIL OPEN FONT LICENSE Version 1.1";

const openFontLicence = (): string => {
  const text = readFileSync(join(packageFolder("@fontsource/b612"), "LICENSE"), "utf8");
  const start = text.indexOf(LICENCE_START);
  if (start < 0) throw new Error("the licence text of the fonts is not where it was");
  return text.slice(start);
};

const packageFolder = (name: string): string =>
  dirname(createRequire(import.meta.url).resolve(`${name}/package.json`));
