// A lamp behind the face, as a point that shines every way: one LED of a strip or board, the lens of a lamp that a panel
// holds, an LED in a cell of a lamp box.

import { extentCentre } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { PanelLayout, PlacedBody } from "../layout/panel-layout.ts";
import type { LampBoxFact, LampCellFact } from "../parts/printed/lamp-box-facts.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import type { Place } from "./blocker.ts";

export interface Lamp {
  /** `winch-spacer/1.3`: part, channel and LED, counted from 1; `warn/2`; `window.3/1`. */
  readonly id: string;
  readonly of: LampOf;
  readonly at: Place;
  /** Owners of blockers that do not stop it: the lens that it shines in, the room that its box takes. */
  readonly clear: readonly string[];
}

export type LampOf =
  | { readonly kind: "circuit"; readonly circuit: string }
  | { readonly kind: "component"; readonly id: string }
  | { readonly kind: "cell"; readonly window: string };

/** LEDs of strips and boards, in the order of parts, channels and LEDs. */
export const stripLamps = (printedParts: readonly PrintedPart[]): readonly Lamp[] =>
  printedParts.flatMap((part) =>
    part.facts.channels.flatMap(({ circuit, leds, lampHeight }, channel) =>
      leds.map(({ x, y }, led) => ({
        id: `${part.id}/${channel + 1}.${led + 1}`,
        of: { kind: "circuit" as const, circuit },
        at: { x, y, z: lampHeight },
        clear: [],
      })),
    ),
  );

/** Lamps of their own whose lens begins behind the face; what stands before it is meant to be seen. */
export const componentLamps = ({ components }: PanelLayout): readonly Lamp[] =>
  components
    .filter(({ part, common }) => part.family === "lamp" && common.lampBox === null)
    .flatMap(({ id, bodies }) =>
      bodies
        .filter(({ role, low }) => role === "lens" && low < 0)
        .flatMap((lens) => lensPlaces(lens))
        .map((at, index) => ({
          id: `${id}/${index + 1}`,
          of: { kind: "component" as const, id },
          at,
          clear: [lensOwner(id)],
        })),
    );

/** As a blocker a lens has a name of its own: it stops every light but its own. */
export const lensOwner = (component: string): string => `${component}/lens`;

/** All of a lens glows: its foot, its middle and its tip, as far as they stand behind the face. */
const LENS_SHARES: readonly number[] = [0.1, 0.5, 0.9];

const lensPlaces = ({ footprint, low, high }: PlacedBody): readonly Place[] => {
  const { x, y } = extentCentre(contourExtent(footprint));
  return LENS_SHARES.map((share) => ({ x, y, z: low + share * (Math.min(high, 0) - low) }));
};

export const cellLamps = (
  { window, leds }: LampCellFact,
  { cells, lampHeight }: LampBoxFact,
): readonly Lamp[] =>
  leds.map(({ x, y }, led) => ({
    id: `${window}/${led + 1}`,
    of: { kind: "cell", window },
    at: { x, y, z: lampHeight },
    clear: cells.map((cell) => cell.window),
  }));
