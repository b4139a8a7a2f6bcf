// What can be done with a panel's photograph, each as one step of the history: chosen, marked, said, taken from.

import { effect } from "@preact/signals";
import type { Edit } from "../../src/design/edit.ts";
import type { PhotoMarks, SheetSize } from "../../src/design/photo-design.ts";
import {
  type Axis,
  type MarksText,
  markMoved,
  markSaid,
  photoFile,
  photoWritten,
  pointAdded,
  pointPlaced,
  pointTakenOff,
  sheetPlaced,
  sheetSaid,
  takenFromPhoto,
} from "../../src/design/photo-edit.ts";
import { markPairs } from "../../src/design/photo-plane.ts";
import { CORNER_NAMES, markName } from "../../src/design/photo-words.ts";
import { resolveInclude } from "../../src/design/resolve-include.ts";
import { type Source, source } from "../../src/design/source.ts";
import { mapped } from "../../src/geometry/homography.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { addBinary, edit, isCurrent, panel, settleWith, texts } from "../desk.ts";
import { store } from "../files/stored-state.ts";
import { say, selectedComponents, unit } from "../panel/board.ts";
import {
  chosenMark,
  isLocked,
  markInHand,
  marks,
  photo,
  picture,
  plane,
  residualText,
  spotsOf,
} from "./photo-state.ts";

/** As `view` takes them. */
const MOST_PICTURE_BYTES = 25_000_000;

export async function choosePicture(file: File): Promise<void> {
  const on = panel.value;
  if (on === null) return;
  if (file.size > MOST_PICTURE_BYTES) {
    say(`${file.name} has more than ${MOST_PICTURE_BYTES / 1e6} million bytes; save it smaller.`);
    return;
  }
  const resolved = resolveInclude(on.design.file, file.name);
  if (resolved.kind === "refused") {
    say(`${file.name} can't be used: ${resolved.why}.`);
    return;
  }
  const size = await sizeOf(file);
  if (size === null) {
    say(`${file.name} can't be shown: it is no picture, or a damaged one.`);
    return;
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  const kept = (await store.value?.keepPicture(resolved.path, bytes)) ?? { kind: "kept" };
  if (kept.kind === "refused") {
    say(`Not kept: ${kept.why}.`);
    return;
  }
  addBinary(resolved.path, bytes);
  const corners = panelCorners();
  const points = firstSpots(size).map((inPicture, index) => ({
    inPicture,
    onPanel: corners[index] ?? inPicture,
  }));
  const isFirst = photo.value === null;
  const done = act(
    (from) =>
      isFirst
        ? photoWritten(from, { file: file.name, marks: { kind: "points", points } }, unit.value)
        : photoFile(from, file.name),
    `lay ${file.name} under the panel`,
  );
  if (done && isFirst) say("Now set the four marks on the corners of the panel.");
}

async function sizeOf(file: File): Promise<{ width: number; height: number } | null> {
  try {
    const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
    const { width, height } = bitmap;
    bitmap.close();
    return { width, height };
  } catch {
    return null;
  }
}

/** From the edge of a picture to the first marks, as a share of it. */
const INSET = 0.2;

const firstSpots = (size: { width: number; height: number }): readonly PlanePoint[] =>
  [
    [INSET, 1 - INSET],
    [1 - INSET, 1 - INSET],
    [1 - INSET, INSET],
    [INSET, INSET],
  ].map(([across = 0, down = 0]) => ({
    x: Math.round(across * size.width),
    y: Math.round(down * size.height),
  }));

/** Of the finished panel, as it can be marked in a picture: lower left, lower right, upper right, upper left. */
const panelCorners = (): readonly PlanePoint[] => {
  const layout = panel.value?.layout ?? null;
  if (layout === null) return [];
  const { minX, minY, maxX, maxY } = contourExtent(layout.outline);
  return [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
};

export type Known = "panel" | "paper" | "points";

/** What the marks are marks of. Spots in the picture stay; what they are on the panel is said anew. */
export function sayKnown(known: Known): void {
  const now = photo.value;
  if (now === null) return;
  const spots = spotsOf(now.marks);
  act(
    (from) => photoWritten(from, { file: now.file, marks: marksFor(known, now.marks) }, unit.value),
    known === "paper" ? "mark a sheet of paper" : "mark points of the panel",
  );
  chosenMark.value = Math.min(chosenMark.value, spots.length - 1);
}

function marksFor(known: Known, now: PhotoMarks): MarksText {
  const pairs = markPairs(now);
  const corners = panelCorners();
  if (known === "paper") {
    const [a, b, c, d] = spotsOf(now);
    const none = { x: 0, y: 0 };
    const sheet = { size: "a4" as const, at: none, turn: degrees(0) };
    return {
      kind: "sheet",
      sheet: { ...sheet, corners: [a ?? none, b ?? none, c ?? none, d ?? none] },
    };
  }
  return {
    kind: "points",
    points: pairs.map(({ from, to }, index) => ({
      inPicture: from,
      onPanel: known === "panel" ? (corners[index] ?? to) : rounded(to),
    })),
  };
}

const rounded = ({ x, y }: PlanePoint): PlanePoint => ({
  x: Math.round(x * 1000) / 1000,
  y: Math.round(y * 1000) / 1000,
});

/** Where the mark in hand goes, until it is let go. */
export function holdMark(index: number, at: PlanePoint): void {
  if (isLocked.value) return;
  markInHand.value = { index, at: within(at) };
}

const within = ({ x, y }: PlanePoint): PlanePoint => {
  const { width = 0, height = 0 } = picture.value ?? {};
  const tenth = (value: number, most: number): number =>
    Math.round(Math.min(most, Math.max(0, value)) * 10) / 10;
  return { x: tenth(x, width), y: tenth(y, height) };
};

/** The text gets it as soon as it is the one that was read. */
export function letMarkGo(): void {
  const held = markInHand.value;
  if (held === null) return;
  whenCurrent(() => {
    setMark(held.index, held.at);
    whenCurrent(() => {
      if (markInHand.value === held) markInHand.value = null;
    });
  });
}

/** Steps of the arrow keys become one step of the history when the hand rests, ms. */
const REST = 350;
let rest: ReturnType<typeof setTimeout> | null = null;

export function nudgeMark(by: PlanePoint): void {
  const now = marks.value;
  const spot = now === null ? undefined : spotsOf(now)[chosenMark.value];
  if (spot === undefined) return;
  if (isLocked.value) {
    say("The marks are locked.");
    return;
  }
  holdMark(chosenMark.value, { x: spot.x + by.x, y: spot.y + by.y });
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(settleMark, REST);
}

function settleMark(): void {
  if (rest === null) return;
  clearTimeout(rest);
  rest = null;
  letMarkGo();
}

settleWith(settleMark);

function setMark(index: number, at: PlanePoint): void {
  const now = photo.value;
  if (now === null) return;
  const { kind } = now.marks;
  act((from) => markMoved(from, { kind, index, at: within(at) }), `mark ${markName(index, kind)}`);
}

/** A number of pixels as typed. */
export function typeMark(index: number, axis: Axis, typed: string): void {
  const kind = photo.value?.marks.kind;
  if (kind === undefined) return;
  const { x, y } = within({ x: Number(typed), y: Number(typed) });
  const inside = axis === "across" ? x : y;
  if (!/^\d+(?:\.\d+)?$/.test(typed) || Math.abs(inside - Number(typed)) > 0.05)
    say(`"${typed}" is no number of pixels within the picture; write 412.5.`);
  else
    act((from) => markSaid(from, { kind, index, axis }, inside), `mark ${markName(index, kind)}`);
}

/** A length as typed: of a point's place, or of where the sheet lay. */
export function typePlace(of: number | "sheet", axis: Axis, typed: string): void {
  if (!LENGTH.test(typed)) say(`"${typed}" is no length; write 12.5 mm or 3/8 in.`);
  else if (of === "sheet") act((from) => sheetPlaced(from, axis, typed), "say where the sheet lay");
  else
    act((from) => pointPlaced(from, { index: of, axis }, typed), `place ${markName(of, "points")}`);
}

/** A further mark in the middle of the picture, and on the panel where the others put that spot. */
export function addPoint(): void {
  const [now, shown, known] = [photo.value, picture.value, plane.value];
  if (now?.marks.kind !== "points" || shown === null) return;
  const spot = within({ x: shown.width / 2, y: shown.height / 2 });
  const put = known?.kind === "plane" ? mapped(known.map, spot) : null;
  const onPanel = put === null ? { x: 0, y: 0 } : halves(put);
  const { length } = now.marks.points;
  const done = act(
    (from) => pointAdded(from, { inPicture: spot, onPanel }, unit.value),
    `add ${markName(length, "points")}`,
  );
  if (done) chosenMark.value = length;
}

const halves = ({ x, y }: PlanePoint): PlanePoint => ({
  x: Math.round(x * 2) / 2,
  y: Math.round(y * 2) / 2,
});

export function takeOffPoint(index: number): void {
  act((from) => pointTakenOff(from, index), `take off ${markName(index, "points")}`);
  chosenMark.value = Math.max(0, chosenMark.value - 1);
}

export const saySheetSize = (size: SheetSize): void => {
  act((from) => sheetSaid(from, "size", size), `it is a sheet of ${size}`);
};

export function saySheetTurn(turn: string): void {
  if (/^-?\d+(?:\.\d+)? ?(?:deg|°)?$/.test(turn))
    act((from) => sheetSaid(from, "turn", turn), "say how the sheet lay");
  else say(`"${turn}" is no angle; write 15 deg.`);
}

/** What is selected was placed by the photograph: the text says how far off it may be. */
export function takeFromPhoto(): void {
  const entries = [...new Set(selectedComponents.value.map(({ entry }) => entry))];
  const residual = residualText();
  if (entries.length === 0) say("Select what was placed by the photograph.");
  else if (residual === null) say("The marks do not say where the panel lies.");
  else if (act((from) => takenFromPhoto(from, entries, residual), `take from the photograph`))
    say(`${entries.join(", ")}: from the photograph, ± ${residual}.`);
}

/** A length as the reader takes it; nothing else may come into the text from a field. */
const LENGTH = /^[+-]?(?:\d*\.?\d+|(?:\d+[ -])?\d+\/\d+) ?(?:mm|cm|m|in|")?$/;

export const cornerWords = (index: number): string =>
  `The sheet's ${CORNER_NAMES[index] ?? ""} corner`;

function act(make: (from: Source) => Edit, what: string): boolean {
  const file = panel.value?.file;
  const text = file === undefined ? undefined : texts.value.get(file);
  if (file === undefined || text === undefined) return false;
  const made = make(source(file, text));
  const outcome = made.kind === "edit" ? edit([made.edit], what) : made;
  say(
    outcome.kind === "refused"
      ? `Not done: ${outcome.why}.`
      : `${what.charAt(0).toUpperCase()}${what.slice(1)}.`,
  );
  return outcome.kind !== "refused";
}

/** At once, or as soon as the picture is that of the text. */
function whenCurrent(work: () => void): void {
  let isDone = false;
  const stop = effect(() => {
    if (!isCurrent.value || isDone) return;
    isDone = true;
    queueMicrotask(() => {
      stop();
      work();
    });
  });
}
