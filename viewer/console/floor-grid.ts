// The floor as a grid in millimetres, and the rails' modules as ticks: lines as two points each, and the numbers that stand
// at them.

import { plus, scaled, type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene, SceneBay } from "./console-messages.ts";

export interface Grid {
  /** Every 100 mm, and every 500 mm. */
  readonly fine: readonly number[];
  readonly coarse: readonly number[];
  readonly numbers: readonly { readonly at: Vector; readonly words: string }[];
}

const FINE = 100;
const COARSE = 500;

export const floorGrid = ({ box, operator }: ConsoleScene): Grid => {
  const reach = operator === null ? [] : [operator.seat];
  const low = (axis: "x" | "y"): number =>
    Math.floor((Math.min(box.low[axis], ...reach.map((at) => at[axis])) - FINE) / COARSE) * COARSE;
  const high = (axis: "x" | "y"): number =>
    Math.ceil((Math.max(box.high[axis], ...reach.map((at) => at[axis])) + FINE) / COARSE) * COARSE;
  const [minX, maxX, minY, maxY] = [low("x"), high("x"), low("y"), high("y")];
  const grid = { fine: [] as number[], coarse: [] as number[] };
  for (let x = minX; x <= maxX; x += FINE)
    (x % COARSE === 0 ? grid.coarse : grid.fine).push(x, minY, 0, x, maxY, 0);
  for (let y = minY; y <= maxY; y += FINE)
    (y % COARSE === 0 ? grid.coarse : grid.fine).push(minX, y, 0, maxX, y, 0);
  const along = steps(minX, maxX).map((x) => ({ at: vector(x, minY, 0), words: `${x}` }));
  const aside = steps(minY, maxY).map((y) => ({ at: vector(minX, y, 0), words: `${y}` }));
  return { ...grid, numbers: [...along, ...aside.slice(1)] };
};

const steps = (from: number, to: number): readonly number[] =>
  Array.from({ length: (to - from) / COARSE + 1 }, (_, index) => from + index * COARSE);

/** How far a tick stands out beside the panels, mm: every module, and every fifth. */
const TICK = { each: 5, fifth: 11 } as const;

export const railTicks = ({ frame, pitch, modules, width }: SceneBay): readonly number[] => {
  const lines: number[] = [];
  for (let module = 0; module <= modules; module += 1) {
    const out = module % 5 === 0 ? TICK.fifth : TICK.each;
    for (const side of [-1, 1]) {
      const at = plus(frame.origin, scaled(frame.y, module * pitch));
      const from = plus(at, scaled(frame.x, (side * width) / 2));
      const to = plus(at, scaled(frame.x, side * (width / 2 + out)));
      lines.push(from.x, from.y, from.z, to.x, to.y, to.z);
    }
  }
  return lines;
};
