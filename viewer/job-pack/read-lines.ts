// What a reader found in a cut file, as path data by process: millimetres, y down from the upper edge of the sheet.

import { point } from "../../src/geometry/contour.ts";
import { decimal } from "../../src/geometry/number.ts";
import type { Edge, ReadFile, ReadLoop } from "../../src/inspection/read-file.ts";

export interface DrawnProcess {
  readonly process: string;
  readonly isFilled: boolean;
  readonly count: number;
  readonly data: string;
}

export const drawnProcesses = ({ items }: ReadFile, height: number): readonly DrawnProcess[] => {
  const drawn = new Map<
    string,
    { process: string; isFilled: boolean; count: number; data: string }
  >();
  for (const { process, look, loops } of items) {
    const isFilled = look === "fill" || look === "both";
    const key = `${process} ${isFilled}`;
    const known = drawn.get(key) ?? { process, isFilled, count: 0, data: "" };
    known.count += 1;
    known.data += loops.map((loop) => loopData(loop, height)).join("");
    drawn.set(key, known);
  }
  return [...drawn.values()];
};

/** A tenth of a micrometre: finer than any screen. */
const PLACES = 4;

const loopData = ({ edges, gap }: ReadLoop, height: number): string => {
  const [first] = edges;
  if (first === undefined) return "";
  const at = ({ x, y }: Edge["from"]): string =>
    `${decimal(x, PLACES)} ${decimal(height - y, PLACES)}`;
  const data = edges.map((edge) => edgeData(edge, at)).join("");
  return `M${at(first.from)}${data}${gap === 0 ? "Z" : ""}`;
};

const edgeData = (edge: Edge, at: (place: Edge["from"]) => string): string => {
  if (edge.kind === "line") return `L${at(edge.to)}`;
  const { sweep, from, centre } = edge;
  const radius = decimal(edge.radius, PLACES);
  const arc = (to: Edge["from"]): string =>
    // y is turned over: what turns left on the sheet is drawn with sweep flag 0.
    `A${radius} ${radius} 0 0 ${sweep > 0 ? 0 : 1} ${at(to)}`;
  if (Math.abs(sweep) <= Math.PI) return arc(edge.to);
  // In two pieces: a whole circle begins where it ends, and more than half a turn hangs on the last digits of its ends.
  const half = sweep / 2;
  const [x, y] = [from.x - centre.x, from.y - centre.y];
  const middle = point(
    centre.x + x * Math.cos(half) - y * Math.sin(half),
    centre.y + x * Math.sin(half) + y * Math.cos(half),
  );
  return `${arc(middle)}${arc(edge.to)}`;
};
