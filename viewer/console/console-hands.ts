// Hands on the picture: mouse, touch, pen and keys become turns, shifts and nearings of the camera, a panel along its rail,
// a measured pair, a choice. Takes the canvas and its picture; gives back how to let go.

import { plus, scaled } from "../../src/geometry/space/vector.ts";
import { nearedGoal, shiftedGoal, turnedGoal } from "./camera-goal.ts";
import { hearKeys } from "./console-keys.ts";
import type { ConsolePicture, Picked, ScreenPoint } from "./console-picture.ts";
import { changeLook, hand, measuring, NOTHING_MEASURED, said } from "./console-state.ts";
import type { Note } from "./look.ts";
import { featureWords, measureWords, pairWords, placeWords } from "./measure-words.ts";
import { type MeasuredPlace, measuredPair, snapped } from "./measured-pair.ts";
import { cancelDrag, chooseToWork, drag, dragTo, offer, railed, settleDrag } from "./panel-drag.ts";
import { alongLine, pulledModule, type Ray } from "./space-point.ts";

/** Degrees of turn for a pixel. */
const TURN = 0.35;
/** A press that moves no further is a click, in pixels. */
const CLICK = 5;

interface Pull {
  readonly panel: string;
  readonly line: Ray;
  readonly start: number;
  readonly from: number;
  readonly pitch: number;
}

export const takeHands = (canvas: HTMLCanvasElement, picture: ConsolePicture): (() => void) => {
  const pressed = new Map<number, ScreenPoint>();
  let began: ScreenPoint | null = null;
  let pull: Pull | null = null;
  const stop = new AbortController();
  const listen = <Kind extends keyof HTMLElementEventMap>(
    kind: Kind,
    heard: (event: HTMLElementEventMap[Kind]) => void,
  ): void => canvas.addEventListener(kind, heard, { signal: stop.signal, passive: false });

  listen("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    canvas.parentElement?.focus({ preventScroll: true });
    const at = placeOf(event, canvas);
    pressed.set(event.pointerId, at);
    began = pressed.size === 1 ? at : null;
    pull = pressed.size === 1 && event.button === 0 ? pullAt(at, picture) : null;
  });
  listen("pointermove", (event) => {
    const before = pressed.get(event.pointerId);
    if (before === undefined) return;
    const at = placeOf(event, canvas);
    const others = [...pressed].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
    pressed.set(event.pointerId, at);
    if (began !== null && spread(began, at) > CLICK) began = null;
    if (began !== null) return;
    if (pull !== null) followPull(pull, picture.ray(at));
    else if (others[0] !== undefined) pinch(picture, { before, at, other: others[0] }, canvas);
    else if (event.shiftKey || event.buttons > 1) shift(picture, before, at, canvas);
    else turn(picture, before, at);
  });
  listen("pointerup", (event) => {
    pressed.delete(event.pointerId);
    if (began !== null) click(picture, began);
    else if (pull !== null && drag.value !== null) void settleDrag();
    began = null;
    pull = null;
  });
  listen("pointercancel", (event) => {
    pressed.delete(event.pointerId);
    if (pull !== null) cancelDrag();
    pull = null;
    began = null;
  });
  listen("contextmenu", (event) => event.preventDefault());
  listen("wheel", (event) => {
    event.preventDefault();
    picture.goTo(nearedGoal(picture.goal(), Math.exp(event.deltaY * 0.0012)));
  });
  hearKeys(canvas, { picture, take: (at) => click(picture, at), signal: stop.signal });
  return () => stop.abort();
};

const placeOf = (event: PointerEvent, canvas: HTMLCanvasElement): ScreenPoint => {
  const box = canvas.getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
};

const spread = (a: ScreenPoint, b: ScreenPoint): number => Math.hypot(a.x - b.x, a.y - b.y);

/** A hand that moves panels has hold of one that stands on a rail. */
const pullAt = (at: ScreenPoint, picture: ConsolePicture): Pull | null => {
  if (hand.value !== "move" || offer.value !== null) return null;
  const found = picture.pick(at);
  const rail = railed(found?.group ?? null);
  if (found === null || rail === null) return null;
  chooseToWork(rail.panel.name);
  const line: Ray = { from: found.at, way: rail.bay.frame.y };
  const start = alongLine(line, picture.ray(at));
  if (start === null) {
    said.value = "From here the rail is seen end on: turn the view before you move a panel.";
    return null;
  }
  return { panel: rail.panel.name, line, start, from: rail.module, pitch: rail.bay.pitch };
};

const followPull = ({ panel, line, start, from, pitch }: Pull, ray: Ray): void => {
  const along = alongLine(line, ray);
  if (along !== null) void dragTo(panel, pulledModule(from, { by: along - start, pitch }));
};

const turn = (picture: ConsolePicture, before: ScreenPoint, at: ScreenPoint): void =>
  picture.goTo(
    turnedGoal(picture.goal(), {
      side: (at.x - before.x) * -TURN,
      rise: (at.y - before.y) * TURN,
    }),
  );

const shift = (
  picture: ConsolePicture,
  before: ScreenPoint,
  at: ScreenPoint,
  canvas: HTMLCanvasElement,
): void => {
  const goal = picture.goal();
  const share = picture.pixelAt(goal.target) / goal.distance;
  if (canvas.clientHeight > 0)
    picture.goTo(
      shiftedGoal(goal, { right: (before.x - at.x) * share, up: (at.y - before.y) * share }),
    );
};

/** Two fingers: apart is nearer, together is farther, and both along shift. */
const pinch = (
  picture: ConsolePicture,
  { before, at, other }: { before: ScreenPoint; at: ScreenPoint; other: ScreenPoint },
  canvas: HTMLCanvasElement,
): void => {
  const [was, is] = [spread(before, other), spread(at, other)];
  if (was > 0 && is > 0) picture.goTo(nearedGoal(picture.goal(), was / is));
  const half = { x: (before.x + at.x) / 2, y: (before.y + at.y) / 2 };
  shift(picture, before, half, canvas);
};

const click = (picture: ConsolePicture, at: ScreenPoint): void => {
  const found = picture.pick(at);
  if (hand.value === "measure") measure(picture, found);
  else if (found !== null && found.group !== "") chooseToWork(found.group);
};

/** How near a corner or an edge must be to pull a click, in pixels. */
const PULL = 12;

const measure = (picture: ConsolePicture, found: Picked | null): void => {
  if (found === null) {
    said.value = "Nothing is there to measure from.";
    return;
  }
  const at = snapped(found.at, found.lines, PULL * picture.pixelAt(found.at));
  const { thing } = found.body;
  const place = { at, thing: found.group === "" ? thing : `${thing} on ${found.group}` };
  const { first, pair } = measuring.value;
  if (first === null || pair !== null) {
    measuring.value = { ...NOTHING_MEASURED, first: place };
    changeLook({ notes: [endNote("from", place)], stretch: null });
    said.value = `From ${placeWords(at, place.thing)}. Choose the second place.`;
    return;
  }
  const taken = measuredPair(first.at.at, at.at);
  measuring.value = { first, second: place, pair: taken };
  const [from, to] = [first.at.at, at.at];
  const middle = scaled(plus(from, to), 1 / 2);
  const length: Note = { kind: "measure", at: middle, words: measureWords(taken), isOnIt: false };
  changeLook({
    notes: [endNote("from", first), endNote("to", place), ...(taken.distance > 0 ? [length] : [])],
    stretch: { from, to },
  });
  said.value = pairWords({ first, second: place, pair: taken });
};

const endNote = (end: string, { at }: MeasuredPlace): Note => ({
  kind: "measure",
  at: at.at,
  words: `${end}: ${featureWords(at)}`,
  isOnIt: false,
});
