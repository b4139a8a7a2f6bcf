// A place in a plane, in that plane's own unit (pixels of a picture, millimetres of a panel), and two that are the same spot.

export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

export interface PointPair {
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}
