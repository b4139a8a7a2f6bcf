// The screws that hold the stack together: length = layers + nut + a little, taken from the lengths that are sold.
// Where no length reaches, the list says what is needed instead of naming a screw that is too short.

import type { Nut, Screw } from "../catalogue/hardware.ts";
import type { Catalogue } from "../catalogue/record.ts";
import { decimal } from "../geometry/number.ts";
import type { PanelForPack } from "./panel-pack.ts";

export interface FixingRow {
  readonly count: number;
  readonly part: string;
  readonly title: string;
  readonly use: string;
}

/** Thread that stands out of a nut, two turns of a coarse M3 (common practice). */
const BEYOND_NUT = 1;

export const stackScrews = (panel: PanelForPack): readonly FixingRow[] => {
  const { layout, design, catalogue } = panel;
  const screws = layout.fixings.filter(({ kind }) => kind === "screw");
  const dowels = layout.fixings.filter(({ kind }) => kind !== "screw");
  const thread = design.fixings?.screws ?? "";
  return [
    ...(screws.length === 0
      ? []
      : screwRows(screws.length, { thread, depth: stackDepth(panel) }, catalogue)),
    ...dowels.map(({ id, diameter, kind }) => ({
      count: 1,
      part: `dowel-${decimal(diameter, 2)}`,
      title: `dowel pin, ${decimal(diameter, 2)} mm, ${kind === "dowel-round" ? "round hole" : "slotted hole"}`,
      use: id,
    })),
  ];
};

/** Thickest that the stack can be, paint included: a screw must reach even then. */
const stackDepth = ({ layout }: PanelForPack): number =>
  layout.layers.reduce((sum, { thickness, paint }) => sum + thickness.high + 2 * paint.high, 0);

const screwRows = (
  count: number,
  need: { readonly thread: string; readonly depth: number },
  catalogue: Catalogue,
): readonly FixingRow[] => {
  const hardware = [...catalogue.hardware.values()];
  const nut = hardware.find(
    (record): record is Nut => record.kind === "nut" && record.thread.toLowerCase() === need.thread,
  );
  const least = need.depth + (nut?.thickness ?? 0) + BEYOND_NUT;
  const sold = hardware
    .filter((record): record is Screw => record.kind === "screw" && isFlat(record, need.thread))
    .flatMap((screw) => screw.lengths.map((length) => ({ screw, length })))
    .filter(({ length }) => length >= least)
    .sort((a, b) => a.length - b.length || (a.screw.id < b.screw.id ? -1 : 1));
  const [found] = sold;
  const screw =
    found === undefined
      ? {
          part: need.thread,
          title: `screw ${need.thread}, at least ${decimal(least, 1)} mm long: none in the catalogue`,
        }
      : {
          part: found.screw.id,
          title: `${found.screw.title}, ${decimal(found.length, 1)} mm long`,
        };
  const nuts = nut === undefined ? [] : [{ count, part: nut.id, title: nut.title, use: "stack" }];
  return [{ count, ...screw, use: "stack" }, ...nuts];
};

/** A countersunk head would wedge acrylic apart. */
const isFlat = ({ head, thread }: Screw, wanted: string): boolean =>
  head !== "countersunk" && thread.toLowerCase() === wanted;
