// One view of the section: the stack, the rail behind it, the components of its column, and its dimensions in depth.

import { type Contour, point } from "../geometry/contour.ts";
import { contoursOverlap } from "../geometry/distance.ts";
import { type Extent, extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { degrees } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { recipeExtent } from "../geometry/solid/recipe-extent.ts";
import { samePlace } from "../geometry/tolerance.ts";
import type { PanelLayout, PlacedComponent } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import type { DrawingItem } from "./drawing.ts";
import { HAIR, outlined, segment, stroked, THIN } from "./items.ts";
import { rangeWords } from "./layer-words.ts";
import { type Dimension, dimension } from "./measure-line.ts";
import { bodyBox, bodyItems, ROLE_ORDER } from "./section-body.ts";
import { layerItems } from "./section-layers.ts";
import type { SectionPlane } from "./section-planes.ts";
import {
  beyondItems,
  cutOutlines,
  isOfComponent,
  printedCuts,
  printedItems,
  printedProud,
} from "./section-prints.ts";
import { spread } from "./spread.ts";
import { type Words, words } from "./words.ts";

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
  /** y of its axis. */
  readonly axis: number;
  readonly box: Extent;
}

interface Place {
  readonly plane: SectionPlane;
  readonly printedParts: readonly PrintedPart[];
  /** Where the view begins on the sheet. */
  readonly left: number;
  /** The depth that there is, where this view shows it. */
  readonly room: number | null;
}

/** Room at the left of the foremost body, and from the panel's edge to the first line of dimensions. */
const SIDE = 4;
const FIRST_LINE = 5;
const LINE_PITCH = 5.5;

export const sectionView = (
  face: Face | null,
  layout: PanelLayout,
  { plane, printedParts, left, room }: Place,
): SectionView => {
  const panel = contourExtent(layout.outline);
  const front = Math.max(
    printedProud(printedParts, plane),
    ...plane.components.flatMap(({ bodies }) => bodies.map(({ high }) => high)),
  );
  const zero = left + SIDE + front;
  const cuts = printedCuts(printedParts, plane, zero);
  const outlines = cuts.flatMap(cutOutlines);
  const printed = outlines.map(contourExtent);
  const silhouettes = plane.components.map((component) => silhouetteOf(component, zero));
  const whole = { low: panel.minY, high: panel.maxY };
  const dimensions = depthDimensions(face, layout, {
    plane,
    zero,
    room,
    foot: Math.min(panel.minY, ...printed.map(({ minY }) => minY)),
    silhouettes,
    parts: printedParts,
  });
  const thicknesses = thicknessLabels(face, layout, {
    zero,
    top: Math.max(panel.maxY, ...printed.map(({ maxY }) => maxY)),
  });
  const names = nameItems(face, plane, { zero, left, top: thicknesses.box.maxY });
  const body = [...silhouettes.map((each) => each.box), ...printed].reduce(
    joinedExtent,
    extent(left, whole.low, zero, whole.high),
  );
  const labels = componentNames(face, silhouettes, outlines);
  const around = [...dimensions, ...labels, thicknesses, names].map((each) => each.box);
  const box = around.reduce(joinedExtent, body);
  return {
    name: plane.name,
    zero,
    silhouettes,
    dimensions,
    items: [
      ...beyondItems(cuts),
      ...layerItems(layout, plane, {
        zero,
        whole,
        printed: new Set(printedParts.map(({ owner }) => owner)),
      }),
      ...cuts.filter((cut) => !isOfComponent(cut)).flatMap(printedItems),
      ...railItems(layout, zero),
      // Seen from the right: what stands further right hides what is behind it.
      ...plane.components
        .toSorted((a, b) => a.at.x - b.at.x)
        .flatMap((component) => componentItems(component, zero)),
      ...cuts.filter(isOfComponent).flatMap(printedItems),
      ...dimensions.flatMap(({ items }) => items),
      ...thicknesses.items,
      ...names.items,
      ...labels.flatMap(({ items }) => items),
    ],
    box,
  };
};

const silhouetteOf = (component: PlacedComponent, zero: number): Silhouette => {
  const { x, y } = { x: zero, y: component.at.y };
  const box = component.bodies
    .map((body) => bodyBox(body, zero))
    .reduce(joinedExtent, extent(x, y, x, y));
  return { id: component.id, proud: zero - box.minX, depth: box.maxX - zero, axis: y, box };
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
    ...bodies.flatMap((body) => bodyItems(body, component.part.family, zero)),
    stroked([axis], { ink: "dimension", width: HAIR, dashed: true }),
  ];
};

/** A rail lies behind the last sheet, hidden by what stands between the rails; how deep it goes is the console's. */
const RAIL_DEPTH = 10;

const railItems = (layout: PanelLayout, zero: number): readonly DrawingItem[] => {
  const [rail] = layout.rails;
  const last = layout.layers.findLast(({ kind }) => kind === "sheet");
  if (rail === undefined || last === undefined) return [];
  const from = zero - last.rear;
  const shape = rectangle(extent(from, rail.minY, from + RAIL_DEPTH, rail.maxY));
  return [outlined([shape], { ink: "line", width: THIN, dashed: true })];
};

const depthDimensions = (
  face: Face | null,
  layout: PanelLayout,
  at: {
    readonly plane: SectionPlane;
    readonly zero: number;
    readonly room: number | null;
    readonly foot: number;
    readonly silhouettes: readonly Silhouette[];
    readonly parts: readonly PrintedPart[];
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
    ...deepestPrint(at.parts, stack),
    ...(at.room === null ? [] : [{ from: 0, to: at.room, before: "depth there is ", after: "" }]),
  ];
  const front = furthest(at.silhouettes, "proud", at.plane).map((each) =>
    dimension(
      face,
      { axis: "across", from: at.zero - each.reach, to: at.zero, ...line(0) },
      { before: `${each.id}, proud `, after: "" },
    ),
  );
  return [
    ...front,
    ...spans.map(({ from, to, before, after }, index) =>
      dimension(
        face,
        { axis: "across", from: at.zero + from, to: at.zero + to, ...line(index + 1) },
        { before, after },
      ),
    ),
  ];
};

/** A tray reaches behind its layer's room as far as its boards need. */
const deepestPrint = (
  parts: readonly PrintedPart[],
  stack: number,
): readonly {
  readonly from: number;
  readonly to: number;
  readonly before: string;
  readonly after: string;
}[] => {
  const [deepest] = parts
    .filter(({ role }) => role === "tray" || role === "spacer")
    .map(({ owner, bodies }) => ({
      owner,
      to: -Math.min(...bodies.map(({ solid }) => recipeExtent(solid).minZ)),
    }))
    .toSorted((a, b) => b.to - a.to);
  if (deepest === undefined || deepest.to <= stack + samePlace) return [];
  return [{ from: 0, to: deepest.to, before: `${deepest.owner} `, after: "" }];
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

const NAME_HEIGHT = 1.6;

/** Behind the rearmost body, a line's pitch apart; components that hide each other share a line. */
const componentNames = (
  face: Face | null,
  silhouettes: readonly Silhouette[],
  printed: readonly Contour[],
): readonly Words[] => {
  const levels = new Map<number, Silhouette[]>();
  for (const each of silhouettes.toSorted((a, b) => a.axis - b.axis)) {
    const level = levels.get(each.axis);
    if (level === undefined) levels.set(each.axis, [each]);
    else level.push(each);
  }
  const lines = [...levels];
  const places = spread(
    lines.map(([axis]) => axis),
    NAME_HEIGHT * 1.4,
  );
  return lines.map(([, hidden], index) => {
    const y = places[index]!;
    const beside = silhouettes.filter(
      ({ box }) => box.minY < y + NAME_HEIGHT && box.maxY > y - NAME_HEIGHT,
    );
    const x = Math.max(...[...hidden, ...beside].map(({ box }) => box.maxX)) + 2.6;
    const names = hidden.map(({ id }) => id).join(", ");
    const at = (left: number): Words =>
      words(face, names, point(left, y - NAME_HEIGHT / 2), {
        capHeight: NAME_HEIGHT,
        align: "start",
        ink: "dimension",
      });
    const room = rectangle(grownExtent(at(x).box, 1));
    const struck = printed.filter((one) => contoursOverlap(one, room));
    return at(Math.max(x, ...struck.map((one) => contourExtent(one).maxX + 2.6)));
  });
};
