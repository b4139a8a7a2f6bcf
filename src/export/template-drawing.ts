// The paper template of a part as a drawing in true size: outline, openings with their centres and numbers, and on the part's
// own area the words FRONT or BACK, so that a template cut out of its page still says what it is.

import type { Drawing, DrawingItem } from "../drawings/drawing.ts";
import { extent, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { mm } from "../geometry/quantity.ts";
import { placement } from "../geometry/transform.ts";
import type { Face } from "../lettering/face.ts";
import { crossAt } from "./page-marks.ts";
import type { TemplatePoint, TemplatePoints } from "./template-points.ts";
import { wordItems } from "./words.ts";

/** White round the part, for scissors. */
const BORDER = 6;
const LINE = mm(0.18);
const CENTRE_LINE = mm(0.1);
const NUMBER_HEIGHT = mm(1.8);
const NAME_HEIGHT = mm(2.5);
/** A centre line runs on this far beyond the opening's edge. */
const BEYOND = 2;
/** Arms of the cross where there is no opening. */
const BARE_CROSS = 3;

export const templateDrawing = (
  points: TemplatePoints,
  options: { readonly face: Face; readonly title: string; readonly name: string },
): Drawing => ({
  title: options.title,
  box: grownExtent(extent(0, 0, points.width, points.height), BORDER),
  items: [
    { kind: "outline", contours: points.outlines, ink: "line", width: LINE, dashed: false },
    ...points.points.flatMap((at) => pointItems(at, options.face)),
    ...wordItems(options.face, options.name, {
      capHeight: NAME_HEIGHT,
      align: "middle",
      ink: "faint",
      at: placement(points.width / 2, BEYOND),
    }),
  ],
});

const pointItems = (point: TemplatePoint, face: Face): readonly DrawingItem[] => {
  const reach = reachOf(point);
  const items: DrawingItem[] = [
    {
      kind: "stroke",
      paths: crossAt(point.at, Math.max(reach.x, reach.y) + BEYOND),
      ink: "line",
      width: CENTRE_LINE,
      dashed: false,
    },
    ...wordItems(face, String(point.number), {
      capHeight: NUMBER_HEIGHT,
      align: "start",
      ink: "line",
      at: placement(point.at.x + reach.x * DIAGONAL + 0.5, point.at.y + reach.y * DIAGONAL + 0.5),
    }),
  ];
  if (point.contour === null) return items;
  const contours = [point.contour];
  return [{ kind: "outline", contours, ink: "line", width: LINE, dashed: false }, ...items];
};

/** cos 45°: a round hole's edge toward its number. */
const DIAGONAL = 0.75;

const reachOf = (point: TemplatePoint): { readonly x: number; readonly y: number } => {
  if (point.contour === null) return { x: BARE_CROSS, y: BARE_CROSS };
  const box = contourExtent(point.contour);
  return { x: box.maxX - point.at.x, y: box.maxY - point.at.y };
};
