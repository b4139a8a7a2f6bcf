// Where a further mark of a photograph tells most: off the lines between the others, so that each of them can be held against a
// map of the others alone. Takes the marks and the map that they give; pure.

import { type Homography, mapped } from "../../src/geometry/homography.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { withoutEach } from "../../src/geometry/homography-without.ts";

export interface Spot {
  readonly inPicture: PlanePoint;
  readonly onPanel: PlanePoint;
}

/** The first of some of which the most marks are then checked by the others; null where all lie beyond the horizon. */
export function furtherSpot(points: readonly Spot[], map: Homography): Spot | null {
  const [across, down] = [
    points.map(({ inPicture: { x } }) => x),
    points.map(({ inPicture: { y } }) => y),
  ];
  const [left, top] = [Math.min(...across), Math.min(...down)];
  const [width, height] = [Math.max(...across) - left, Math.max(...down) - top];
  const spots = SHARES.flatMap(([right, below]): readonly Spot[] => {
    const inPicture = { x: left + right * width, y: top + below * height };
    const put = mapped(map, inPicture);
    return put === null ? [] : [{ inPicture, onPanel: halves(put) }];
  });
  const checked = spots.map((spot) => checkedWith([...points, spot]));
  return spots[checked.indexOf(Math.max(...checked))] ?? null;
}

/** From one side of the marks to the other, across and down: off the lines between four corners. */
const SHARES: readonly (readonly [number, number])[] = [
  [0.5, 0.35],
  [0.35, 0.55],
  [0.65, 0.6],
  [0.45, 0.75],
  [0.7, 0.4],
];

const checkedWith = (points: readonly Spot[]): number =>
  withoutEach(points.map(({ inPicture: from, onPanel: to }) => ({ from, to }))).filter(
    ({ kind }) => kind === "put",
  ).length;

const halves = ({ x, y }: PlanePoint): PlanePoint => ({
  x: Math.round(x * 2) / 2,
  y: Math.round(y * 2) / 2,
});
