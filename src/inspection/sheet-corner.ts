// Where the lower left corner of a set-up's sheet lies on the panel, seen from the front: the datum that readers lay files on.

import { type Point, point } from "../geometry/contour.ts";
import type { SetUp } from "../parts/sheet-part.ts";

export const sheetCorner = ({ sheet }: SetUp): Point => point(sheet.minX, sheet.minY);
