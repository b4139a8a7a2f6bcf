// What can be done with a panel's photograph that lies there, each as one step of the history: marked, said, taken from.

import type { SheetSize } from "../../src/design/photo-design.ts";
import {
  type Axis,
  markMoved,
  markSaid,
  photoWritten,
  pointAdded,
  pointPlaced,
  pointTakenOff,
  sheetPlaced,
  sheetSaid,
} from "../../src/design/photo-edit.ts";
import { CORNER_NAMES, markName } from "../../src/design/photo-words.ts";
import { source } from "../../src/design/source.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { isCurrent, panel, settleWith, texts } from "../desk.ts";
import { angleTyped } from "../panel/angle-typed.ts";
import { say, selectedEntries, unit } from "../panel/board.ts";
import { lengthTyped } from "../panel/length-typed.ts";
import { take } from "../panel/told-edit.ts";
import { HAND_RESTS, onceDrawn, whenCurrent } from "../when-current.ts";
import { furtherSpot } from "./further-spot.ts";
import { type Known, marksFor } from "./known-marks.ts";
import { spotsOf } from "./mark-spots.ts";
import { panelCorners } from "./panel-corners.ts";
import {
  chosenMark,
  isLocked,
  type MarkInHand,
  markInHand,
  marks,
  type Picture,
  photo,
  picture,
  plane,
  residualNow,
} from "./photo-state.ts";
import { photoStep } from "./photo-step.ts";
import { placesIn, saidOfPlaces } from "./placed-by-photo.ts";

/** What the marks are marks of: what they are on the panel is said anew. */
export function sayKnown(known: Known): void {
  const now = photo.value;
  if (now === null) return;
  const made = marksFor(known, now.marks, {
    panelCorners: panelCorners(),
    size: picture.value,
  });
  if (made.kind === "refused") {
    say(`Not done: ${made.why}.`);
    return;
  }
  const what = known === "paper" ? "mark a sheet of paper" : "mark points of the panel";
  const { marks: next, lost } = made;
  if (
    !photoStep(
      (from) => photoWritten(from, { file: now.file, marks: next }, unit.value),
      what,
      lost,
    )
  )
    return;
  const count = next.kind === "sheet" ? 4 : next.points.length;
  chosenMark.value = Math.min(chosenMark.value, count - 1);
}

/** Where the mark in hand goes, until it is let go. */
export function holdMark(index: number, at: PlanePoint): void {
  const [file, shown] = [panel.value?.file, picture.value];
  if (isLocked.value || file === undefined || shown === null) return;
  markInHand.value = { file, index, at: within(at, shown) };
}

const within = ({ x, y }: PlanePoint, { width, height }: Picture): PlanePoint => {
  const tenth = (value: number, most: number): number =>
    Math.round(Math.min(most, Math.max(0, value)) * 10) / 10;
  return { x: tenth(x, width), y: tenth(y, height) };
};

/** The text gets it as soon as it is the one that was read. */
export function letMarkGo(): void {
  const held = markInHand.value;
  if (held === null) return;
  whenCurrent(() => {
    setMark(held);
    onceDrawn(() => {
      if (markInHand.value === held) markInHand.value = null;
    });
  });
}

/** Steps of the arrow keys become one step of the history when the hand rests. */
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
  rest = setTimeout(settleMark, HAND_RESTS);
}

function settleMark(): void {
  if (rest === null) return;
  clearTimeout(rest);
  rest = null;
  letMarkGo();
}

settleWith(settleMark);

/** As it was held: a picture that has gone meanwhile changes nothing of it. */
function setMark({ file, index, at }: MarkInHand): void {
  const now = photo.value;
  const { kind } = now?.marks ?? {};
  if (kind === undefined || panel.value?.file !== file) {
    say("The mark is not set: another panel was opened meanwhile.");
    return;
  }
  photoStep((from) => markMoved(from, { kind, index, at }), `mark ${markName(index, kind)}`);
}

/** A number of pixels as typed. */
export function typeMark(index: number, axis: Axis, typed: string): void {
  const [kind, shown] = [photo.value?.marks.kind, picture.value];
  if (kind === undefined || shown === null) return;
  const most = axis === "across" ? shown.width : shown.height;
  const value = Number(typed);
  if (!/^\d+(?:\.\d)?$/.test(typed) || value > most)
    say(
      `"${typed}" is no number of pixels within the picture, 0 to ${most} with one decimal; write 412.5.`,
    );
  else
    photoStep(
      (from) => markSaid(from, { kind, index, axis }, value),
      `mark ${markName(index, kind)}`,
    );
}

/** A length as typed: of a point's place, or of where the sheet lay. */
export function typePlace(of: number | "sheet", axis: Axis, typed: string): void {
  const length = lengthTyped(typed, unit.value);
  if (length.kind === "refused") say(`${length.why}.`);
  else if (of === "sheet")
    photoStep((from) => sheetPlaced(from, axis, length.text), "say where the sheet lay");
  else
    photoStep(
      (from) => pointPlaced(from, { index: of, axis }, length.text),
      `place ${markName(of, "points")}`,
    );
}

/** A further mark where it tells most, and on the panel where the others put that spot. */
export function addPoint(): void {
  const [now, shown, known] = [photo.value, picture.value, plane.value];
  if (now?.marks.kind !== "points" || shown === null) return;
  if (known?.kind !== "plane") {
    say("No point is added: the marks do not say where the panel lies; set these first.");
    return;
  }
  const { points } = now.marks;
  const spot = furtherSpot(points, known.map);
  if (spot === null) {
    say("No point is added: the middle of the marks lies beyond the horizon; set these first.");
    return;
  }
  const done = photoStep(
    (from) => pointAdded(from, { ...spot, inPicture: within(spot.inPicture, shown) }, unit.value),
    `add ${markName(points.length, "points")}`,
  );
  if (done) chosenMark.value = points.length;
}

export function takeOffPoint(index: number): void {
  if (photoStep((from) => pointTakenOff(from, index), `take off ${markName(index, "points")}`))
    chosenMark.value = Math.max(0, chosenMark.value - 1);
}

export const saySheetSize = (size: SheetSize): void => {
  photoStep((from) => sheetSaid(from, "size", size), `it is a sheet of ${size}`);
};

export function saySheetTurn(turn: string): void {
  const angle = angleTyped(turn);
  if (angle.kind === "refused") say(`${angle.why}.`);
  else photoStep((from) => sheetSaid(from, "turn", angle.text), "say how the sheet lay");
}

/** What is selected was placed by the photograph: the text says how far off it may be. */
export function takeFromPhoto(): void {
  const on = panel.value;
  const text = on === null ? undefined : texts.value.get(on.file);
  const entries = selectedEntries.value;
  const residual = residualNow();
  if (on === null || on.layout === null || text === undefined) return;
  if (entries.length === 0) say("Select what was placed by the photograph.");
  else if (!isCurrent.value) say("Still reading the last change: a moment.");
  else if (residual.kind === "unknown") say(`Not done: ${residual.why}.`);
  else {
    const from = source(on.file, text);
    const { edits, words } = saidOfPlaces(placesIn(on.layout, from, entries), from, residual.text);
    if (edits.length === 0) say(`Not done${words}.`);
    else take(edits, "take from the photograph", `taken from the photograph${words}`);
  }
}

export const cornerWords = (index: number): string =>
  `The sheet's ${CORNER_NAMES[index] ?? ""} corner`;
