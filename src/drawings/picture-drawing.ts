// A panel as it will look on the bench, lit: no dimensions, no names but its own legends. What people see first.

import { type Contour, circle, type Point } from "../geometry/contour.ts";
import { type Extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { offsetContour } from "../geometry/offset.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import type { LayerLayout, PanelLayout, PlacedComponent } from "../layout/panel-layout.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { around } from "./art-scene.ts";
import type { Drawing, DrawingItem, Ink } from "./drawing.ts";
import { faceLook } from "./face-look.ts";
import { faceItems, seenExtents } from "./face-view.ts";
import { areas, filled, filledBox } from "./items.ts";

/** Table round the panel, and how far the panel's shadow falls. */
const BORDER = 9;
const FALL = 1.6;
/** The bright edge of a sheet round its face. */
const EDGE = 0.45;

/** The lettering is that of the layout already; it is taken so that every drawing is asked for in one way. */
export const pictureDrawing = (layout: PanelLayout, _lettering: Lettering): Drawing => {
  const look = faceLook(layout.layers[0]);
  const seen = seenExtents(layout)
    .map(([, each]) => each)
    .reduce(joinedExtent, contourExtent(layout.outline));
  const box = grownExtent(seen, BORDER);
  return {
    title: layout.design.title,
    box,
    items: [
      ...backdrop(layout, box),
      ...sheetItems(layout),
      ...layout.components.flatMap((component) => shadeOf(component, look.shade)),
      ...faceItems(layout, "picture", look.legend),
    ],
  };
};

const backdrop = ({ outline }: PanelLayout, box: Extent): readonly DrawingItem[] => [
  filledBox(box, "backdrop"),
  filled([moved(offsetOr(outline, 0.4), FALL * 0.6, -FALL)], "shadow"),
];

/** From the rearmost sheet forward, so that what stands in front hides what lies behind. */
const sheetItems = (layout: PanelLayout): readonly DrawingItem[] => {
  const sheets = layout.layers.filter(({ kind }) => kind === "sheet");
  const held = sheets.findLast(({ cutOuts }) => cutOuts.some(({ purpose }) => purpose === "mount"));
  return sheets
    .toReversed()
    .flatMap((layer) => [
      ...sheetFace(layer),
      ...(layer === held ? mountHeads(layout) : []),
      ...(layer === layout.layers[0] ? fixingHeads(layout) : []),
    ]);
};

const sheetFace = (layer: LayerLayout): readonly DrawingItem[] => {
  const holes = layer.cutOuts
    .filter(({ purpose }) => purpose === "mount" || purpose === "window")
    .map(({ contour }) => contour);
  const windows = layer.cutOuts.filter(({ purpose }) => purpose === "window");
  const { face } = faceLook(layer);
  const inner = moved(offsetOr(layer.outline, -EDGE), 0, -EDGE * 0.3);
  const lip = face === "face-black" ? "face-edge" : "metal-dark";
  return [
    filled(
      windows.map(({ contour }) => contour),
      "glass-dark",
    ),
    areas([{ outline: layer.outline, holes }], lip),
    areas([{ outline: inner, holes }], face),
  ];
};

/** What stands higher than a nut throws a shadow down and to the right. */
const SHADE_FROM = 3;
const SHADELESS: readonly string[] = ["plug", "cable", "lever", "shaft", "needle", "bush"];

const shadeOf = (component: PlacedComponent, ink: Ink): readonly DrawingItem[] =>
  component.bodies
    .filter(({ role, high }) => high >= SHADE_FROM && !SHADELESS.includes(role))
    .map(({ footprint, high }) => {
      const fall = Math.min(2.2, high * 0.12);
      return filled([moved(footprint, fall * 0.6, -fall)], ink);
    });

/** A head fills its clearance but for a little: common practice for studs and pan heads. */
const HEAD_SHARE = 0.86;
/** Head over thread: ISO 7045 pan heads are 1.9 to 2 times as wide. */
const SCREW_HEAD = 1.9;

const mountHeads = (layout: PanelLayout): readonly DrawingItem[] => {
  const { mount, mountHoles, layers, outline } = layout;
  const holes = layers.flatMap(({ cutOuts }) =>
    cutOuts.filter(({ purpose }) => purpose === "mount"),
  );
  const least = Math.min(...holes.map(({ contour }) => leastSide(contour)));
  const radius = (Math.max(mount.headClearance, least) / 2) * HEAD_SHARE;
  return mountHoles.flatMap(({ at }) =>
    headItems(at, Math.min(radius, edgeDistance(at, contourExtent(outline)) - EDGE)),
  );
};

/** A head stays on its panel. */
const edgeDistance = (at: Point, box: Extent): number =>
  Math.min(at.x - box.minX, box.maxX - at.x, at.y - box.minY, box.maxY - at.y);

const fixingHeads = ({ fixings, layers }: PanelLayout): readonly DrawingItem[] =>
  fixings.flatMap(({ id, kind, at, diameter }) => {
    const isSeen = layers[0]?.cutOuts.some(({ owner }) => owner === id) ?? false;
    if (!isSeen) return [];
    if (kind === "screw") return headItems(at, (diameter * SCREW_HEAD) / 2);
    return [
      filled([circle(at, diameter / 2)], "metal-dark"),
      filled([circle(at, (diameter / 2) * 0.8)], "metal"),
    ];
  });

const headItems = (at: Point, radius: number): readonly DrawingItem[] => [
  filled([circle(at, radius)], "metal-dark"),
  filled([circle(at, radius * 0.9)], "metal"),
  filled([circle(at, radius * 0.6)], "metal-light"),
  filled([circle(at, radius * 0.55)], "metal"),
  filled([around(at, { radius: radius * 0.4, corners: 6, first: 0 })], "well"),
];

const leastSide = (contour: Contour): number => {
  const box = contourExtent(contour);
  return Math.min(box.maxX - box.minX, box.maxY - box.minY);
};

const moved = (contour: Contour, dx: number, dy: number): Contour =>
  placedContour(contour, placement(dx, dy));

const offsetOr = (contour: Contour, by: number): Contour => {
  const offset = offsetContour(contour, by);
  return offset.kind === "offset" ? offset.contour : contour;
};
