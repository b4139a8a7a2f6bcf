// A photograph's marks written into a panel's text: the whole key, a mark moved, a point added or taken off, and what a place
// that was read from it may be off by. Pixels to a tenth; lengths as text with their unit.

import type { PlanePoint } from "../geometry/homography-pair.ts";
import { decimal } from "../geometry/number.ts";
import { appendItem, type Edit, nodeAt, type Path, removeItem, removeKey, setKey } from "./edit.ts";
import { lengthIn, type WritingUnit } from "./length-text.ts";
import type { PhotoDesign } from "./photo-design.ts";
import { quoted } from "./quoted.ts";
import { rewritten } from "./rewriting.ts";
import { replacement, type Source, spanIn } from "./source.ts";

type Marks = PhotoDesign["marks"];

/** The whole key, in place of the one that is there. */
export const photoWritten = (
  from: Source,
  photo: { readonly file: string; readonly marks: MarksText },
  unit: WritingUnit,
): Edit =>
  rewritten(from, [
    ...(nodeAt(from, ["photo"]) === null
      ? []
      : [(now: Source): Edit => removeKey(now, [], "photo")]),
    (now) => withKey(now, photo, unit),
  ]);

/** As `PhotoMarks`, without where it was written. */
export type MarksText =
  | {
      readonly kind: "points";
      readonly points: readonly { readonly inPicture: PlanePoint; readonly onPanel: PlanePoint }[];
    }
  | {
      readonly kind: "sheet";
      readonly sheet: Omit<Extract<Marks, { readonly kind: "sheet" }>["sheet"], "written">;
    };

export const photoFile = (from: Source, file: string): Edit =>
  setKey(from, ["photo"], { key: "file", value: quoted(file) });

/** A mark's spot in the picture. */
export const markMoved = (
  from: Source,
  mark: { readonly kind: Marks["kind"]; readonly index: number; readonly at: PlanePoint },
): Edit => replaced(from, spotPath(mark), pixels(mark.at));

/** One of the two numbers of a pair: what lies across, or what lies down the picture and up the panel. */
export type Axis = "across" | "along";

/** One of the two pixels of a mark: the other is left as the text has it now, whatever was last read. */
export const markSaid = (
  from: Source,
  mark: { readonly kind: Marks["kind"]; readonly index: number; readonly axis: Axis },
  value: number,
): Edit => replaced(from, [...spotPath(mark), step(mark.axis)], decimal(value, 1));

/** One of the two lengths of a point's place on the panel, as it was typed. */
export const pointPlaced = (
  from: Source,
  point: { readonly index: number; readonly axis: Axis },
  value: string,
): Edit => replaced(from, [...pointPath(point.index), "on-panel", step(point.axis)], value);

/** One of the two lengths of where the sheet's lower left corner lay. */
export const sheetPlaced = (from: Source, axis: Axis, value: string): Edit =>
  replaced(from, ["photo", "sheet", "at", step(axis)], value);

export interface SheetPlace {
  readonly at: PlanePoint;
  /** Degrees. */
  readonly turn: number;
}

/** Where the sheet lay and how it was turned: what is as before stays as it is written. */
export const sheetMoved = (from: Source, { before, after, unit }: SheetMove): Edit =>
  rewritten(from, [
    ...(before.at.x === after.at.x
      ? []
      : [(now: Source): Edit => sheetPlaced(now, "across", lengthIn(unit, after.at.x))]),
    ...(before.at.y === after.at.y
      ? []
      : [(now: Source): Edit => sheetPlaced(now, "along", lengthIn(unit, after.at.y))]),
    ...(before.turn === after.turn
      ? []
      : [(now: Source): Edit => sheetSaid(now, "turn", `${decimal(after.turn, 2)} deg`)]),
  ]);

export interface SheetMove {
  readonly before: SheetPlace;
  readonly after: SheetPlace;
  readonly unit: WritingUnit;
}

const step = (axis: Axis): string => (axis === "across" ? "0" : "1");

export const pointAdded = (
  from: Source,
  point: { readonly inPicture: PlanePoint; readonly onPanel: PlanePoint },
  unit: WritingUnit,
): Edit => appendItem(from, ["photo", "points"], pointText(point, unit));

export const pointTakenOff = (from: Source, index: number): Edit =>
  removeItem(from, ["photo", "points"], index);

/** A key of the sheet of paper. */
export const sheetSaid = (from: Source, key: "size" | "turn", value: string): Edit =>
  setKey(from, ["photo", "sheet"], { key, value });

const pointPath = (index: number): Path => ["photo", "points", `${index}`];

const spotPath = (mark: { readonly kind: Marks["kind"]; readonly index: number }): Path =>
  mark.kind === "points"
    ? [...pointPath(mark.index), "in-picture"]
    : ["photo", "sheet", "corners", `${mark.index}`];

const replaced = (from: Source, path: Path, value: string): Edit => {
  const node = nodeAt(from, path);
  return node === null
    ? { kind: "refused", why: `there is nothing at ${path.join(".")}` }
    : { kind: "edit", edit: replacement(from, node.span, value) };
};

const pixels = ({ x, y }: PlanePoint): string => `[${decimal(x, 1)}, ${decimal(y, 1)}]`;

const lengths = ({ x, y }: PlanePoint, unit: WritingUnit): string =>
  `[${lengthIn(unit, x)}, ${lengthIn(unit, y)}]`;

const pointText = (
  { inPicture, onPanel }: { readonly inPicture: PlanePoint; readonly onPanel: PlanePoint },
  unit: WritingUnit,
): string => `{ in-picture: ${pixels(inPicture)}, on-panel: ${lengths(onPanel, unit)} }`;

/** Lines of its own at the end of a file of lines; behind the last key of a file in braces. */
const withKey = (
  from: Source,
  { file, marks }: { readonly file: string; readonly marks: MarksText },
  unit: WritingUnit,
): Edit => {
  const name = `file: ${quoted(file)}`;
  const root = nodeAt(from, []);
  if (root?.kind !== "map" || root.flow) {
    const value = `{ ${name}, ${flowMarks(marks, unit)} }`;
    return setKey(from, [], { key: "photo", value });
  }
  const lines = ["photo:", `  ${name}`, ...blockMarks(marks, unit).map((line) => `  ${line}`), ""];
  const lineBreak = from.text.includes("\r\n") ? "\r\n" : "\n";
  const { length } = from.text;
  const first = from.text === "" || from.text.endsWith("\n") ? "" : lineBreak;
  return {
    kind: "edit",
    edit: replacement(from, spanIn(from, length, length), first + lines.join(lineBreak)),
  };
};

const flowMarks = (marks: MarksText, unit: WritingUnit): string =>
  marks.kind === "points"
    ? `points: [${marks.points.map((point) => pointText(point, unit)).join(", ")}]`
    : `sheet: { ${sheetKeys(marks.sheet, unit).join(", ")} }`;

const blockMarks = (marks: MarksText, unit: WritingUnit): readonly string[] =>
  marks.kind === "points"
    ? ["points:", ...marks.points.map((point) => `  - ${pointText(point, unit)}`)]
    : ["sheet:", ...sheetKeys(marks.sheet, unit).map((line) => `  ${line}`)];

const sheetKeys = (
  { size, corners, at, turn }: Extract<MarksText, { readonly kind: "sheet" }>["sheet"],
  unit: WritingUnit,
): readonly string[] => [
  `size: ${size}`,
  `corners: [${corners.map(pixels).join(", ")}]`,
  `at: ${lengths(at, unit)}`,
  ...(turn === 0 ? [] : [`turn: ${decimal(turn, 2)} deg`]),
];
