// One view of the section: the stack, the rail behind it, the components of its column, and its dimensions in depth.

import { point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { degrees } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { PanelLayout, PlacedComponent } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { filled, HAIR, outlined, segment, stroked } from "./items.ts";
import { rangeWords } from "./layer-words.ts";
import { type Dimension, dimension } from "./measure-line.ts";
import { bodyBox, bodyItems, ROLE_ORDER } from "./section-body.ts";
import { layerItems } from "./section-layers.ts";
import type { SectionPlane } from "./section-planes.ts";
import { spread } from "./spread.ts";
import { words } from "./words.ts";

export interface SectionView {
  readonly name: string;
  /** x on the sheet of the panel's finished front: z runs to the left from here. */
  readonly zero: number;
  readonly silhouettes: readonly Silhouette[];
  readonly dimensions: readonly Dimension[];
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
}

export interface Silhouette {
  readonly id: string;
  /** In front of and behind the panel's front. */
  readonly proud: number;
  readonly depth: number;
  readonly box: Extent;
}

interface Place {
  readonly plane: SectionPlane;
  /** Where the view begins on the sheet. */
  readonly left: number;
}

/** Room at the left of the foremost body, and from the panel's edge to the first line of dimensions. */
const SIDE = 4;
const FIRST_LINE = 5;
const LINE_PITCH = 5.5;

export const sectionView = (
  face: Face | null,
  layout: PanelLayout,
  { plane, left }: Place,
): SectionView => {
  const panel = contourExtent(layout.outline);
  const front = Math.max(
    0,
    ...plane.components.flatMap(({ bodies }) => bodies.map(({ high }) => high)),
  );
  const zero = left + SIDE + front;
  const silhouettes = plane.components.map((component) => silhouetteOf(component, zero));
  const whole = { low: panel.minY, high: panel.maxY };
  const dimensions = depthDimensions(face, layout, { plane, zero, foot: panel.minY, silhouettes });
  const thicknesses = thicknessLabels(face, layout, { zero, top: panel.maxY });
  const names = nameItems(face, plane, { zero, left, top: thicknesses.box.maxY });
  const body = silhouettes
    .map(({ box }) => box)
    .reduce(joinedExtent, extent(left, whole.low, zero, whole.high));
  const box = [...dimensions.map((each) => each.box), thicknesses.box, names.box].reduce(
    joinedExtent,
    body,
  );
  return {
    name: plane.name,
    zero,
    silhouettes,
    dimensions,
    items: [
      ...railItems(layout, zero),
      ...layerItems(layout, plane, { zero, whole }),
      ...plane.components.flatMap((component) => componentItems(component, zero)),
      ...dimensions.flatMap(({ items }) => items),
      ...thicknesses.items,
      ...names.items,
      ...componentNames(face, silhouettes),
    ],
    box,
  };
};

const silhouetteOf = (component: PlacedComponent, zero: number): Silhouette => {
  const { x, y } = { x: zero, y: component.at.y };
  const box = component.bodies
    .map((body) => bodyBox(body, zero))
    .reduce(joinedExtent, extent(x, y, x, y));
  return { id: component.id, proud: zero - box.minX, depth: box.maxX - zero, box };
};

const componentItems = (component: PlacedComponent, zero: number): readonly DrawingItem[] => {
  const axis = segment(
    zero - Math.max(0, ...component.bodies.map(({ high }) => high)) - 2,
    component.at.y,
    zero - Math.min(0, ...component.bodies.map(({ low }) => low)) + 2,
    component.at.y,
  );
  const bodies = component.bodies.toSorted(
    (a, b) => ROLE_ORDER.indexOf(a.role) - ROLE_ORDER.indexOf(b.role),
  );
  return [
    ...bodies.flatMap((body) => bodyItems(body, zero)),
    stroked([axis], { ink: "dimension", width: HAIR, dashed: true }),
  ];
};

/** A rail is seen behind the stack's last sheet; how deep it goes is the console's. */
const RAIL_DEPTH = 10;

const railItems = (layout: PanelLayout, zero: number): readonly DrawingItem[] => {
  const [rail] = layout.rails;
  const last = layout.layers.findLast(({ kind }) => kind === "sheet");
  if (rail === undefined || last === undefined) return [];
  const from = zero - last.rear;
  const shape = rectangle(extent(from, rail.minY, from + RAIL_DEPTH, rail.maxY));
  return [filled([shape], "rail"), outlined([shape], { ink: "faint", width: HAIR, dashed: true })];
};

const depthDimensions = (
  face: Face | null,
  layout: PanelLayout,
  at: {
    readonly plane: SectionPlane;
    readonly zero: number;
    readonly foot: number;
    readonly silhouettes: readonly Silhouette[];
  },
): readonly Dimension[] => {
  const line = (index: number) => ({
    line: at.foot - FIRST_LINE - LINE_PITCH * index,
    witness: at.foot - 1,
  });
  const stack = -(layout.layers.at(-1)?.rear ?? 0);
  const spans = [
    { from: 0, to: stack, before: "stack ", after: "" },
    ...furthest(at.silhouettes, "depth", at.plane).map((each) => ({
      from: 0,
      to: each.reach,
      before: `${each.id} `,
      after: each.words,
    })),
    ...(layout.design.depth === null
      ? []
      : [{ from: 0, to: layout.design.depth, before: "room ", after: "" }]),
  ];
  const front = furthest(at.silhouettes, "proud", at.plane).map((each) =>
    dimension(
      face,
      { axis: "across", from: at.zero - each.reach, to: at.zero, ...line(0) },
      { before: "", after: "" },
    ),
  );
  return [
    ...front,
    ...spans.map(({ from, to, before, after }, index) =>
      dimension(
        face,
        { axis: "across", from: at.zero + from, to: at.zero + to, ...line(index) },
        { before, after },
      ),
    ),
  ];
};

/** The one that reaches furthest; none where nothing reaches beyond the front. */
const furthest = (
  silhouettes: readonly Silhouette[],
  way: "proud" | "depth",
  plane: SectionPlane,
): readonly { readonly id: string; readonly reach: number; readonly words: string }[] => {
  const [far] = silhouettes.toSorted((a, b) => b[way] - a[way]);
  if (far === undefined || far[way] <= 0) return [];
  const total = plane.components.find(({ id }) => id === far.id)?.depth.total;
  const isRanged = way === "depth" && total !== undefined && total.low !== total.high;
  const after = isRanged ? rangeWords(total).replace(/^\S+/, "") : "";
  return [{ id: far.id, reach: far[way], words: after }];
};

const LABEL_HEIGHT = 1.9;
const QUARTER_TURN = degrees(90);

/** Each layer's thickness over the view, on a line that bends from its middle to its label. */
const thicknessLabels = (
  face: Face | null,
  layout: PanelLayout,
  { zero, top }: { readonly zero: number; readonly top: number },
): { readonly items: readonly DrawingItem[]; readonly box: Extent } => {
  const middles = layout.layers.map(({ front, rear }) => zero - (front + rear) / 2);
  const places = spread(middles, LABEL_HEIGHT * 1.5);
  const lines = middles.flatMap((middle, index) => [
    segment(middle, top + 0.5, middle, top + 2),
    segment(middle, top + 2, places[index]!, top + 6),
  ]);
  const said = layout.layers.map(({ id, thickness }, index) =>
    words(
      face,
      `${id} ${rangeWords(thickness)}`,
      point(places[index]! + LABEL_HEIGHT / 2, top + 6.7),
      {
        capHeight: LABEL_HEIGHT,
        align: "start",
        ink: "dimension",
        turn: QUARTER_TURN,
      },
    ),
  );
  return {
    items: [
      stroked(lines, { ink: "dimension", width: HAIR }),
      ...said.flatMap(({ items }) => items),
    ],
    box: said.map(({ box }) => box).reduce(joinedExtent, extent(zero, top, zero, top + 6)),
  };
};

const nameItems = (
  face: Face | null,
  plane: SectionPlane,
  at: { readonly zero: number; readonly left: number; readonly top: number },
) =>
  words(face, `${plane.name}-${plane.name}`, point(at.zero, at.top + 3), {
    capHeight: 3.2,
    align: "middle",
    ink: "line",
  });

/** Beside the axis, behind the rearmost body. */
const componentNames = (
  face: Face | null,
  silhouettes: readonly Silhouette[],
): readonly DrawingItem[] =>
  silhouettes.flatMap(
    ({ id, box }) =>
      words(face, id, point(box.maxX + 2.6, (box.minY + box.maxY) / 2 - 0.8), {
        capHeight: 1.6,
        align: "start",
        ink: "dimension",
      }).items,
  );
