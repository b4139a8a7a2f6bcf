// The sheet under mouse, pen and fingers: pick, drag, rubber band, pan, pinch. Takes places in the drawing's pixels.

import { signal } from "@preact/signals";
import { type Extent, extent, extentsOverlap } from "../../src/geometry/extent.ts";
import { selection } from "../desk.ts";
import { selectionWords } from "./acts.ts";
import { drag, gridStep, inHand, type Sight, say, sight, things } from "./board.ts";
import { onPanel, zoomed } from "./board-places.ts";
import { withDeeds } from "./deeds-door.ts";
import { dragScene, dragTo, giveUp, letGo, settleNudge } from "./dragging.ts";
import type { SheetThing } from "./sheet-things.ts";
import type { Shift, SnapScene } from "./snap.ts";

/** The rubber band, in millimetres on the panel. */
export const band = signal<Extent | null>(null);

type Hand =
  | { readonly kind: "idle" }
  | {
      readonly kind: "pressed" | "dragging";
      readonly from: Shift;
      readonly scene: SnapScene | null;
      /** What a press without a drag leaves selected, where it was one of several; else null. */
      readonly picks: string | null;
    }
  | { readonly kind: "band"; readonly from: Shift; readonly before: readonly string[] }
  | { readonly kind: "pan"; readonly from: Shift; readonly sight: Sight };

/** A hand shakes by so many pixels before it means to drag. */
const SHAKE = 4;

let hand: Hand = { kind: "idle" };
const fingers = new Map<number, Shift>();
let pinch: { readonly apart: number; readonly sight: Sight; readonly about: Shift } | null = null;

export interface Touch {
  readonly at: Shift;
  readonly now: Sight;
  readonly event: PointerEvent;
}

export function pointerDown({ at, now, event }: Touch): void {
  settleNudge();
  if (event.pointerType === "touch") fingers.set(event.pointerId, at);
  if (fingers.size === 2) {
    beginPinch(now);
    return;
  }
  const held = inHand.value;
  if (held.kind === "part" && event.button === 0) {
    const spot = onGrid(onPanel(now, at));
    withDeeds(({ placePart }) => placePart(held.card, spot));
    return;
  }
  const thing = thingUnder(event.target);
  if (event.button === 1 || (thing === null && event.pointerType === "touch"))
    hand = { kind: "pan", from: at, sight: now };
  else if (event.button !== 0) return;
  else if (thing === null) beginBand(at, now, event.shiftKey);
  else beginPress(thing, { at, now, event });
  event.preventDefault();
}

export function pointerMove({ at, now, event }: Touch): void {
  if (event.pointerType === "touch" && fingers.has(event.pointerId))
    fingers.set(event.pointerId, at);
  if (pinch !== null) {
    followPinch();
    return;
  }
  const held = inHand.value;
  if (held.kind === "part") inHand.value = { ...held, at: onGrid(onPanel(now, at)) };
  switch (hand.kind) {
    case "idle":
      return;
    case "pan":
      sight.value = {
        ...hand.sight,
        x: hand.sight.x + at.x - hand.from.x,
        y: hand.sight.y + at.y - hand.from.y,
      };
      return;
    case "band":
      followBand(hand, onPanel(now, at));
      return;
    case "pressed":
    case "dragging":
      followDrag(hand, { at, now, event });
  }
}

export function pointerUp({ event }: Touch): void {
  fingers.delete(event.pointerId);
  if (fingers.size < 2) pinch = null;
  if (hand.kind === "dragging") letGo();
  if (hand.kind === "pressed" && hand.picks !== null) {
    selection.value = [hand.picks];
    say(selectionWords());
  }
  if (hand.kind === "band") say(selectionWords());
  band.value = null;
  hand = { kind: "idle" };
}

export function pointerLost(event: PointerEvent): void {
  fingers.delete(event.pointerId);
  pinch = null;
  if (hand.kind === "dragging" && drag.value !== null) giveUp();
  band.value = null;
  hand = { kind: "idle" };
}

const onGrid = ({ x, y }: Shift): Shift => {
  const step = gridStep.value;
  return { x: Math.round(x / step) * step, y: Math.round(y / step) * step };
};

function thingUnder(target: EventTarget | null): SheetThing | null {
  if (!(target instanceof Element)) return null;
  const owner = target.closest("[data-owner]")?.getAttribute("data-owner");
  return things.value.find(({ id }) => id === owner) ?? null;
}

function beginPress(thing: SheetThing, { at, now, event }: Touch): void {
  const isChosen = selection.value.includes(thing.id);
  if (event.shiftKey)
    selection.value = isChosen
      ? selection.value.filter((id) => id !== thing.id)
      : [...selection.value, thing.id];
  else if (!isChosen) selection.value = [thing.id];
  say(selectionWords());
  const picks = isChosen && !event.shiftKey && selection.value.length > 1 ? thing.id : null;
  hand = { kind: "pressed", from: at, scene: dragScene(thing, now.scale), picks };
}

function followDrag(
  held: Hand & { readonly kind: "pressed" | "dragging" },
  { at, now, event }: Touch,
): void {
  const by = { x: at.x - held.from.x, y: at.y - held.from.y };
  if (held.kind === "pressed" && Math.max(Math.abs(by.x), Math.abs(by.y)) < SHAKE) return;
  if (held.scene === null || selection.value.length === 0) return;
  hand = { ...held, kind: "dragging" };
  dragTo({ x: by.x / now.scale, y: -by.y / now.scale }, held.scene, event.altKey);
}

function beginBand(at: Shift, now: Sight, isAdding: boolean): void {
  hand = { kind: "band", from: onPanel(now, at), before: isAdding ? selection.value : [] };
  if (!isAdding) selection.value = [];
}

/** What is seen of a thing must be touched; of a border or a line, all of it enclosed. */
function followBand(held: Hand & { readonly kind: "band" }, to: Shift): void {
  const { from, before } = held;
  const box = extent(
    Math.min(from.x, to.x),
    Math.min(from.y, to.y),
    Math.max(from.x, to.x),
    Math.max(from.y, to.y),
  );
  band.value = box;
  const inside = things.value.filter((thing) => isCaught(thing, box)).map(({ id }) => id);
  selection.value = [...new Set([...before, ...inside])];
}

function isCaught({ grip, box }: SheetThing, band: Extent): boolean {
  if (grip.kind !== "ring" && grip.kind !== "run") return extentsOverlap(band, box);
  const { minX, minY, maxX, maxY } = band;
  return minX <= box.minX && minY <= box.minY && maxX >= box.maxX && maxY >= box.maxY;
}

function beginPinch(now: Sight): void {
  giveUp();
  hand = { kind: "idle" };
  const [a, b] = [...fingers.values()];
  if (a === undefined || b === undefined) return;
  pinch = { apart: apart(a, b), sight: now, about: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 } };
}

function followPinch(): void {
  const [a, b] = [...fingers.values()];
  if (pinch === null || a === undefined || b === undefined) return;
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const larger = zoomed(pinch.sight, apart(a, b) / Math.max(1, pinch.apart), pinch.about);
  sight.value = {
    ...larger,
    x: larger.x + middle.x - pinch.about.x,
    y: larger.y + middle.y - pinch.about.y,
  };
}

const apart = (a: Shift, b: Shift): number =>
  Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
