// Whatever is picked copied beside itself, as one step of the history, and the copies picked.

import {
  type Extent,
  extentHeight,
  extentsOverlap,
  extentWidth,
  joinedExtent,
  movedExtent,
} from "../../src/geometry/extent.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { gridStep, offer, say, selectedEntries, things } from "./board.ts";
import { thingsCopied } from "./copy-edits.ts";
import { open } from "./open-panel.ts";
import { freshNames, named, selectEntries } from "./panel-names.ts";
import { takeEdit } from "./told-edit.ts";

export function copySelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const { from, layout } = on;
  const nameOf = freshNames(on.panel);
  const nameLike = (entry: string): string => nameOf(null, entry.replace(/-\d+$/, ""));
  const shift = shiftOf(entries, layout.nominal);
  const copied = thingsCopied(from, { entries, shift, layout, nameLike });
  const what = `copy ${named(entries)}`;
  offer.value = null;
  if (copied.kind === "refused") say(`Not copied: ${copied.why}.`);
  else if (copied.edit.kind === "refused") say(`Not copied: ${copied.edit.why}.`);
  else if (copied.kind === "choice") {
    const { why, title, edit } = copied;
    offer.value = { why, title, edits: [edit.edit], what };
    say(`Not yet copied: ${why}. Offered: ${title}.`);
  } else if (takeEdit(copied.edit, what, `Copied as ${named(copied.names)}`))
    selectEntries(copied.names);
}

/** Between what is copied and its copy, mm. */
const COPY_GAP = 5;

/** To the right, else below, to the left or above: where the panel has room and nothing else stands; else where it has room. */
function shiftOf(entries: readonly string[], panel: Extent): Shift {
  const own = things.value.filter(({ entry }) => entries.includes(entry)).map(({ box }) => box);
  const others = things.value
    .filter(({ grip, entry }) => grip.kind !== "ring" && !entries.includes(entry))
    .map(({ box }) => box);
  const box = own.reduce(joinedExtent);
  const step = gridStep.value;
  const onGrid = (size: number): number => Math.round((size + COPY_GAP) / step) * step;
  const [across, up] = [onGrid(extentWidth(box)), onGrid(extentHeight(box))];
  const ways: readonly Shift[] = [
    { x: across, y: 0 },
    { x: 0, y: -up },
    { x: -across, y: 0 },
    { x: 0, y: up },
  ];
  const isInside = ({ x, y }: Shift): boolean => {
    const moved = movedExtent(box, x, y);
    const { minX, maxX, minY, maxY } = panel;
    return moved.minX >= minX && moved.maxX <= maxX && moved.minY >= minY && moved.maxY <= maxY;
  };
  const isFree = ({ x, y }: Shift): boolean =>
    own.every((one) => !others.some((other) => extentsOverlap(movedExtent(one, x, y), other)));
  const inside = ways.filter(isInside);
  return inside.find(isFree) ?? inside[0] ?? ways[0]!;
}
