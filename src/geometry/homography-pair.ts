// A place in a plane, in that plane's own unit (pixels of a picture, millimetres of a panel), two that are the same spot, and
// how far two of one plane lie apart.

export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

export interface PointPair {
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

export const distanceOf = (a: PlanePoint, b: PlanePoint): number =>
  Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
