// A selection in motion: what goes along, where it comes to rest, and the text edit when it is let go. While it lasts only the
// picture moves; letting go is one step of the history.

import { effect } from "@preact/signals";
import { dragOf } from "../../src/design/drag-table.ts";
import type { AxisPlace } from "../../src/design/panel-design.ts";
import { type Extent, joinedExtent } from "../../src/geometry/extent.ts";
import { movedWith } from "../../src/layout/moved-with.ts";
import type { PlacedComponent } from "../../src/layout/panel-layout.ts";
import { isCurrent, panel, settleWith } from "../desk.ts";
import { moveSelection } from "./acts.ts";
import { drag, gridStep, selectedComponents, selectedEntries } from "./board.ts";
import { type Shift, type SnapScene, snapped } from "./snap.ts";

/** Pixels within which a thing is drawn to a line. */
const SNAP_PIXELS = 7;

/** The scene for one drag, worked out once when it begins; null where nothing is selected. */
export function dragScene(held: PlacedComponent, scale: number): SnapScene | null {
  const reading = panel.value;
  const layout = reading?.layout ?? null;
  const boxes = reading?.picture?.boxes ?? {};
  if (layout === null) return null;
  const along = goingAlong();
  const boxOf = ({ id, at }: PlacedComponent): Extent =>
    boxes[id] ?? { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y };
  const own = layout.components.filter(({ entry }) => selectedEntries.value.includes(entry));
  return {
    moving: { at: held.at, box: own.map(boxOf).reduce(joinedExtent, boxOf(held)) },
    still: layout.components
      .filter(({ id }) => !along.across.has(id) && !along.along.has(id))
      .map((one) => ({ id: one.id, at: one.at, box: boxOf(one) })),
    panel: layout.nominal,
    grid: gridStep.value,
    stated: {
      x: statedNumber(held.place.across, held.at.x - layout.nominal.minX),
      y: statedNumber(held.place.along, held.at.y - layout.nominal.minY),
    },
    reach: Math.min(3, SNAP_PIXELS / scale),
  };
}

/** The design's own number is what is to be round: a distance from the top stays one of half millimetres. */
const statedNumber = (place: AxisPlace, coordinate: number): number => {
  const said = dragOf(place);
  return said.kind === "number" ? said.value * said.sign : coordinate;
};

const goingAlong = (): {
  readonly across: ReadonlySet<string>;
  readonly along: ReadonlySet<string>;
} => {
  const components = panel.value?.layout?.components ?? [];
  return {
    across: movedWith(selectedEntries.value, "across", components),
    along: movedWith(selectedEntries.value, "along", components),
  };
};

export function dragTo(wanted: Shift, scene: SnapScene, isFree: boolean): void {
  const { x, y, guides } = isFree ? { ...wanted, guides: [] } : snapped(wanted, scene);
  drag.value = { shift: { x, y }, guides, ...goingAlong() };
}

/** The picture keeps the shift until it is that of the new text, so that nothing jumps back and forth. */
export function letGo(): void {
  const now = drag.value;
  if (now === null) return;
  drag.value = { ...now, guides: [] };
  whenCurrent(() => {
    moveSelection(now.shift);
    whenCurrent(() => {
      drag.value = null;
    });
  });
}

export function giveUp(): void {
  drag.value = null;
}

/** At once, or as soon as the picture is that of the text. */
function whenCurrent(act: () => void): void {
  let isDone = false;
  const stop = effect(() => {
    if (!isCurrent.value || isDone) return;
    isDone = true;
    queueMicrotask(() => {
      stop();
      act();
    });
  });
}

/** Steps of the arrow keys become one step of the history when the hand rests. */
const REST = 350;
let rest: ReturnType<typeof setTimeout> | null = null;

export function nudge(by: Shift): void {
  if (selectedComponents.value.length === 0) return;
  const { x, y } = rest === null ? { x: 0, y: 0 } : (drag.value?.shift ?? { x: 0, y: 0 });
  drag.value = { shift: { x: x + by.x, y: y + by.y }, guides: [], ...goingAlong() };
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(() => {
    rest = null;
    letGo();
  }, REST);
}

/** A nudge that waits is carried out at once: before anything else is done. */
export function settleNudge(): void {
  if (rest === null) return;
  clearTimeout(rest);
  rest = null;
  letGo();
}

settleWith(settleNudge);
