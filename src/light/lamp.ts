// A lamp behind the face: one LED of a strip or board, as a point that shines every way.

import type { PrintedPart } from "../parts/printed/printed-part.ts";
import type { Place } from "./blocker.ts";

export interface Lamp {
  /** `winch-spacer/1.3`: part, channel and LED, counted from 1. */
  readonly id: string;
  readonly part: string;
  readonly circuit: string;
  readonly at: Place;
}

/** In the order of parts, channels and LEDs. */
export const lampsOf = (printedParts: readonly PrintedPart[]): readonly Lamp[] =>
  printedParts.flatMap((part) =>
    part.facts.channels.flatMap(({ circuit, leds, lampHeight }, channel) =>
      leds.map(({ x, y }, led) => ({
        id: `${part.id}/${channel + 1}.${led + 1}`,
        part: part.id,
        circuit,
        at: { x, y, z: lampHeight },
      })),
    ),
  );
