// The paper template of a part as a drawing in true size: outline, openings with their centres and numbers, and on the part's
// own area the words FRONT or BACK, so that a template cut out of its page still says what it is.

import type { Drawing, DrawingItem } from "../drawings/drawing.ts";
import { outlined, stroked } from "../drawings/items.ts";
import { words } from "../drawings/words.ts";
import { point } from "../geometry/contour.ts";
import { extent, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { mm } from "../geometry/quantity.ts";
import type { Face } from "../lettering/face.ts";
import { crossAt } from "./page-marks.ts";
import { plainText } from "./plain-text.ts";
import type { TemplatePoint, TemplatePoints } from "./template-points.ts";

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
    outlined(points.outlines, { ink: "line", width: LINE }),
    ...points.points.flatMap((at) => pointItems(at, options.face)),
    ...words(options.face, plainText(options.name), point(points.width / 2, BEYOND), {
      capHeight: NAME_HEIGHT,
      align: "middle",
      ink: "faint",
    }).items,
  ],
});

const pointItems = (marked: TemplatePoint, face: Face): readonly DrawingItem[] => {
  const { at, contour, number } = marked;
  const reach = reachOf(marked);
  const beside = point(at.x + reach.x * DIAGONAL + 0.5, at.y + reach.y * DIAGONAL + 0.5);
  const look = { capHeight: NUMBER_HEIGHT, align: "start", ink: "line" } as const;
  const cross = crossAt(at, Math.max(reach.x, reach.y) + BEYOND);
  return [
    ...(contour === null ? [] : [outlined([contour], { ink: "line", width: LINE })]),
    stroked(cross, { ink: "line", width: CENTRE_LINE }),
    ...words(face, String(number), beside, look).items,
  ];
};

/** A little over cos 45°: the number stands just outside a round hole, up and to the right. */
const DIAGONAL = 0.75;

const reachOf = ({ at, contour }: TemplatePoint): { readonly x: number; readonly y: number } => {
  if (contour === null) return { x: BARE_CROSS, y: BARE_CROSS };
  const box = contourExtent(contour);
  return { x: box.maxX - at.x, y: box.maxY - at.y };
};
