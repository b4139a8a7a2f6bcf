// Watts in a closed light box and the temperature that they bring it to. Model: everything electrical becomes heat, which
// leaves by free convection and radiation from all of the box's outside; inside it is one temperature.

import type { Catalogue } from "../catalogue/record.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { isLampBoxPart } from "../parts/printed/lamp-box-facts.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";

export interface BoxHeat {
  readonly watts: number;
  /** Outside of its box, in m². */
  readonly area: number;
  /** °C of the air round it, and of the box. */
  readonly room: number;
  readonly temperature: number;
}

/** Free air on all sides, convection and radiation together: 8 to 10 W/m²K is common practice. */
const COEFFICIENT = 9;
/** A warm room. */
const ROOM = 25;

/** All lamps at full brightness; null where a part holds none, or nobody knows what they draw. */
export const heatOf = (part: PrintedPart, catalogue: Catalogue): BoxHeat | null => {
  const watts = wattsIn(part, catalogue);
  if (watts === null || watts === 0) return null;
  const { plan, front, rear } = part.facts.box;
  const [width, height, depth] = [extentWidth(plan), extentHeight(plan), front - rear];
  const area = (2 * (width * height + width * depth + height * depth)) / SQUARE_MM_IN_M;
  return { watts, area, room: ROOM, temperature: ROOM + watts / (COEFFICIENT * area) };
};

const SQUARE_MM_IN_M = 1e6;

const wattsIn = (part: PrintedPart, { strips, ledBoards }: Catalogue): number | null => {
  if (isLampBoxPart(part)) return part.lampBox.watts;
  return part.facts.channels.reduce((sum, { part: id, cuts }) => {
    const strip = strips.get(id);
    const board = ledBoards.get(id);
    const each =
      strip === undefined
        ? (board?.volts ?? 0) * (board?.milliamps ?? 0)
        : strip.volts * strip.milliampsPerCut;
    return sum + (cuts * each) / MILLI;
  }, 0);
};

const MILLI = 1000;
