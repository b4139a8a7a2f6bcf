// A selection in motion: what goes along, where it comes to rest, and the text edit when it is let go. While it lasts only the
// picture moves; letting go is one step of the history.

import { dragOf } from "../../src/design/drag-table.ts";
import type { AxisPlace } from "../../src/design/panel-design.ts";
import { joinedExtent } from "../../src/geometry/extent.ts";
import { movableThings } from "../../src/layout/movable-things.ts";
import { type MoveAxis, movedWith } from "../../src/layout/moved-with.ts";
import { panel, settleWith, unread } from "../desk.ts";
import { HAND_RESTS, onceDrawn, whenCurrent } from "../when-current.ts";
import { drag, gridStep, say, selectedEntries, selectedThings, things } from "./board.ts";
import { withDeeds } from "./deeds-door.ts";
import { isUnread } from "./open-panel.ts";
import { groupsAlong, type SheetThing, withMembers } from "./sheet-things.ts";
import { type Shift, type SnapScene, snapped } from "./snap.ts";

/** Pixels within which a thing is drawn to a line. */
const SNAP_PIXELS = 7;

/** The scene for one drag, worked out once when it begins; null where nothing is selected. */
export function dragScene(held: SheetThing, scale: number): SnapScene | null {
  const layout = panel.value?.layout ?? null;
  if (layout === null || unread.value !== null) return null;
  const along = goingAlong();
  const own = things.value.filter(({ entry }) => selectedEntries.value.includes(entry));
  const place = movableThings(layout).find(({ id }) => id === held.id)?.place ?? null;
  const { minX, minY } = layout.nominal;
  return {
    moving: { at: held.at, box: own.map(({ box }) => box).reduce(joinedExtent, held.box) },
    still: things.value
      .filter(({ id, grip }) => isAligned(grip) && !along.across.has(id) && !along.along.has(id))
      .map(({ id, at, box }) => ({ id, at, box })),
    panel: layout.nominal,
    grid: gridStep.value,
    stated: {
      x: statedNumber(place?.across ?? null, held.at.x - minX),
      y: statedNumber(place?.along ?? null, held.at.y - minY),
    },
    reach: Math.min(3, SNAP_PIXELS / scale),
  };
}

/** Nobody lines a switch up with the middle of a border or of a line. */
const isAligned = ({ kind }: SheetThing["grip"]): boolean => kind !== "ring" && kind !== "run";

/** The design's own number is what is to be round: a distance from the top stays one of half millimetres. */
const statedNumber = (place: AxisPlace | null, coordinate: number): number => {
  const said = place === null ? null : dragOf(place);
  return said?.kind === "number" ? said.value * said.sign : coordinate;
};

const goingAlong = (): {
  readonly across: ReadonlySet<string>;
  readonly along: ReadonlySet<string>;
} => {
  return { across: alongOn("across"), along: alongOn("along") };
};

const NONE: ReadonlySet<string> = new Set();

/** With the borders round what goes along, and with what a picked border goes round: it is dropped with it, or not at all. */
function alongOn(axis: MoveAxis): ReadonlySet<string> {
  const layout = panel.value?.layout ?? null;
  if (layout === null) return NONE;
  const picked = withMembers(selectedEntries.value, layout.design);
  const moved = movedWith(picked, axis, movableThings(layout));
  return new Set([...picked, ...moved, ...groupsAlong(moved, layout)]);
}

export function dragTo(wanted: Shift, scene: SnapScene, isFree: boolean): void {
  const { x, y, guides } = isFree ? { ...wanted, guides: [] } : snapped(wanted, scene);
  drag.value = { shift: { x, y }, guides, ...goingAlong() };
}

/** The picture keeps the shift until it is that of the new text, so that nothing jumps back and forth. */
export function letGo(): void {
  const now = drag.value;
  if (now === null) return;
  const landing = { ...now, guides: [] };
  drag.value = landing;
  // What is picked meanwhile is another matter.
  const entries = selectedEntries.value;
  if (entries.length === 0) say("Not moved: what was dragged is not in this panel any more.");
  const landed = (): void => {
    // What has been taken in hand since is another drag, and goes on.
    if (drag.value === landing) drag.value = null;
  };
  withDeeds(
    ({ moveEntries }) =>
      whenCurrent(() => {
        moveEntries(entries, now.shift);
        onceDrawn(landed);
      }),
    landed,
  );
}

export function giveUp(): void {
  drag.value = null;
}

/** Steps of the arrow keys become one step of the history when the hand rests. */
let rest: ReturnType<typeof setTimeout> | null = null;

export function nudge(by: Shift): void {
  if (selectedThings.value.length === 0 || isUnread()) return;
  const { x, y } = rest === null ? { x: 0, y: 0 } : (drag.value?.shift ?? { x: 0, y: 0 });
  drag.value = { shift: { x: x + by.x, y: y + by.y }, guides: [], ...goingAlong() };
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(() => {
    rest = null;
    letGo();
  }, HAND_RESTS);
}

/** A nudge that waits is carried out at once: before anything else is done. */
export function settleNudge(): void {
  if (rest === null) return;
  clearTimeout(rest);
  rest = null;
  letGo();
}

settleWith(settleNudge);
