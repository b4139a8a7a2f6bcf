// Lamps that lie behind a face: strip from a roll, cut at its marks, and small boards with LEDs at fixed places.
// Brightness is a typical figure, good for comparing and never for a promise.

import type { Point } from "../geometry/contour.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { BoardHole } from "./board.ts";
import type { Figures } from "./part.ts";

export interface Strip {
  readonly kind: "strip";
  readonly id: string;
  readonly title: string;
  readonly width: Mm;
  /** Over all, from its adhesive to the top of its LEDs. */
  readonly height: Mm;
  /** From LED to LED. */
  readonly pitch: Mm;
  /** From cut mark to cut mark. */
  readonly cutEvery: Mm;
  readonly ledsPerCut: number;
  /** Length that a soldered joint costs at an end. */
  readonly joint: Mm;
  readonly volts: number;
  /** One cut length at full brightness. */
  readonly milliampsPerCut: number;
  /** From the axis to half of the greatest intensity. */
  readonly halfAngle: Degrees;
  readonly lumensPerLed: number;
  readonly figures: Figures;
}

export interface LedBoard {
  readonly kind: "led-board";
  readonly id: string;
  readonly title: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly thickness: Mm;
  /** From the board's lower left corner, seen from the LEDs' side. */
  readonly leds: readonly Point[];
  /** Top of the LEDs above the board. */
  readonly ledHeight: Mm;
  /** Pads, leads and solder behind the board. */
  readonly tallestBack: Mm;
  readonly volts: number;
  /** The whole board at full brightness. */
  readonly milliamps: number;
  readonly halfAngle: Degrees;
  readonly lumensPerLed: number;
  readonly holes: readonly BoardHole[];
  readonly figures: Figures;
}
