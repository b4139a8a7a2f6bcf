// Where each mark of a photograph lies in it, whatever the marks are marks of.

import type { PhotoMarks } from "../../src/design/photo-design.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";

export const spotsOf = (of: PhotoMarks): readonly PlanePoint[] =>
  of.kind === "points" ? of.points.map(({ inPicture }) => inPicture) : of.sheet.corners;
