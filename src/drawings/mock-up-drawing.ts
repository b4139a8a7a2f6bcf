// Things of a console in true size for a mock-up in paper or card: the front of a panel with what is seen and read on it, and
// a board of the frame with its cut-outs. Each carries its name on its own area, so that a cut-out piece still says what it is.

import type { Contour } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import { extentCentre, extentWidth, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { FramePart } from "../parts/frame/frame-part.ts";
import type { Drawing } from "./drawing.ts";
import { faceItems } from "./face-view.ts";
import { frontHoles } from "./front-holes.ts";
import { HAIR, outlined, THIN } from "./items.ts";
import { shortened, words } from "./words.ts";

/** White round the piece, for scissors. */
const BORDER = 6;
const NAME_HEIGHT = 2.5;
/** Above the lower edge. */
const NAME_UP = 2;

export const panelMockUp = (face: Face | null, layout: PanelLayout, title: string): Drawing => {
  const front = layout.layers[0]?.outline ?? layout.outline;
  return pieceDrawing(face, {
    title,
    outlines: [layout.outline],
    inner: [
      outlined([front], { ink: "line", width: HAIR }),
      ...frontHoles(layout),
      ...faceItems(layout, "paper", "legend"),
    ],
  });
};

export const boardMockUp = (face: Face | null, { region, number, title }: FramePart): Drawing =>
  pieceDrawing(face, {
    title: `${number}  ${title}`,
    outlines: [region.outline],
    inner: [outlined(region.holes, { ink: "line", width: THIN })],
  });

const pieceDrawing = (
  face: Face | null,
  piece: {
    readonly title: string;
    readonly outlines: readonly [Contour];
    readonly inner: Drawing["items"];
  },
): Drawing => {
  const box = contourExtent(piece.outlines[0]);
  const short = shortened(face, piece.title, { capHeight: NAME_HEIGHT, width: extentWidth(box) });
  const name = words(face, short, point(extentCentre(box).x, box.minY + NAME_UP), {
    capHeight: NAME_HEIGHT,
    align: "middle",
    ink: "faint",
  });
  return {
    title: piece.title,
    box: grownExtent(box, BORDER),
    items: [...piece.inner, outlined(piece.outlines, { ink: "line", width: THIN }), ...name.items],
  };
};
