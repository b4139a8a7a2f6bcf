// A console on paper: plan, side, front, and sections across each bay, where its text asks for them or across its middle, each
// on its own sheet at a standard scale, named and dimensioned. Plain engineering drawing: what is hidden is not drawn, and
// neither is what lies in front of the cut.
// `consoleSheets` also gives what the dimensions say, so that they can be held against the layout.

import type { Finding } from "../diagnostics/finding.ts";
import type { Point } from "../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { boxCorners } from "../geometry/space/space-box.ts";
import { plus, scaled } from "../geometry/space/vector.ts";
import { arithmeticNoise } from "../geometry/tolerance.ts";
import type { BayLayout } from "../layout/console/console-layout.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { SEATED_PERSON } from "../standards/reach.ts";
import { placesBox, seenBodies } from "./console-bodies-view.ts";
import { solidCut } from "./console-cut.ts";
import { viewDimensions } from "./console-dimensions.ts";
import { consoleFoot } from "./console-foot.ts";
import { type LabelledThing, labelColumn, numberTags } from "./console-labels.ts";
import { operatorBox, operatorView, panelsMiddle, seatBox } from "./console-operator.ts";
import { isFitting, type PaperRoom, possibleScales } from "./console-scale.ts";
import type { ConsoleScene } from "./console-scene.ts";
import { type BayCut, cutBodies, placeOfCut } from "./console-section.ts";
import { solidSilhouette } from "./console-silhouette.ts";
import { type ConsoleView, FRONT, onSheet, PLAN, SIDE, sectionAcross } from "./console-view.ts";
import type { Drawing, DrawingItem } from "./drawing.ts";
import { HAIR, outlined, segment, stroked, THIN } from "./items.ts";
import { paperFace } from "./words.ts";

export interface ConsoleSheet {
  /** `plan`, `section-aft`: the bay's id as written, no file name. */
  readonly id: string;
  readonly drawing: Drawing;
  readonly scale: number;
  readonly said: readonly { readonly what: string; readonly value: number }[];
}

export interface ConsoleSheetOptions {
  readonly findings: readonly Finding[];
  readonly lettering: Lettering;
  /** What a page of the workshop's paper can show, upright. */
  readonly room: PaperRoom;
}

const MARGIN = 4;

export const consoleSheets = (
  scene: ConsoleScene,
  options: ConsoleSheetOptions,
): readonly ConsoleSheet[] => {
  const views = [PLAN, SIDE, FRONT].map((view) => ({ id: view.kind, view, cut: null }));
  const sections = scene.layout.bays.flatMap((bay) =>
    sectionPlaces(bay).map(({ id, at }) => ({ id, view: sectionAcross(bay), cut: { bay, at } })),
  );
  return [...views, ...sections].map(({ id, ...of }) => ({
    id,
    ...largestSheet(scene, of, options),
  }));
};

/** A place that is written twice is drawn once; beyond the bay's end, where checks tell of it, nothing is. */
const sectionPlaces = ({
  id,
  design,
  length,
}: BayLayout): readonly { readonly id: string; readonly at: number }[] =>
  design.sections.length === 0
    ? [{ id: `section-${id}`, at: length / 2 }]
    : [...new Set(design.sections)]
        .filter((at) => at <= length + arithmeticNoise)
        .map((at) => ({ id: `section-${id}-${decimal(at, 2)}`, at }));

interface SheetView {
  readonly view: ConsoleView;
  /** What a section cuts; null where the console is seen from outside. */
  readonly cut: BayCut | null;
}

/** At the largest scale at which the whole sheet fits a page; where none does, the largest at which the view alone would. */
const largestSheet = (
  scene: ConsoleScene,
  { view, cut }: SheetView,
  options: ConsoleSheetOptions,
): Omit<ConsoleSheet, "id"> => {
  const [first = 500, ...smaller] = possibleScales(viewSize(scene, { view, cut }), options.room);
  const sheetAt = (scale: number): Omit<ConsoleSheet, "id"> => ({
    scale,
    ...sheetOf(scene, { view: { ...view, scale }, cut }, options),
  });
  const largest = sheetAt(first);
  let tried = largest;
  for (const scale of smaller) {
    if (isOnePage(tried.drawing.box, options.room)) return tried;
    tried = sheetAt(scale);
  }
  return isOnePage(tried.drawing.box, options.room) ? tried : largest;
};

const isOnePage = (box: Extent, room: PaperRoom): boolean =>
  isFitting({ width: extentWidth(box), height: extentHeight(box) }, room);

/** Of a section only what is cut counts. */
const viewSize = (scene: ConsoleScene, { view, cut }: SheetView): PaperRoom => {
  const box =
    cut === null ? boxOfBodies(scene, view) : placesBox(cutBodies(scene, cut, view).places);
  const whole = joined(box, operatorBox(scene.layout, view));
  return whole === null
    ? { width: 0, height: 0 }
    : { width: extentWidth(whole), height: extentHeight(whole) };
};

const boxOfBodies = ({ bodies }: ConsoleScene, view: ConsoleView): Extent | null =>
  bodies
    .flatMap(({ box }) => boxCorners(box).map((corner) => onSheet(view, corner)))
    .map(({ x, y }) => extent(x, y, x, y))
    .reduce<Extent | null>(joined, null);

const joined = (a: Extent | null, b: Extent | null): Extent | null =>
  a === null ? b : b === null ? a : joinedExtent(a, b);

const sheetOf = (
  scene: ConsoleScene,
  of: SheetView,
  options: ConsoleSheetOptions,
): Pick<ConsoleSheet, "drawing" | "said"> => {
  const { view, cut } = of;
  const { layout } = scene;
  const face = paperFace(options.lettering);
  const seen =
    cut === null ? { ...seenBodies(scene, view), open: [] } : cutBodies(scene, cut, view);
  const drawn = placesBox(seen.places);
  const person = operatorView(face, layout, view);
  const inside = envelopeView(layout, view, cut);
  const round = [person?.box ?? null, inside?.box ?? null].reduce<Extent>(
    (box, each) => joined(box, each) ?? box,
    drawn,
  );
  const clear = joined(drawn, seatBox(layout, view)) ?? drawn;
  const dimensions = viewDimensions(face, layout, { view, drawn, round, cut, clear });
  const beside = joinedExtent(dimensions.box, round);
  const labels = labelColumn(face, labelsOf(scene, { view, cut }, seen.anchors), beside);
  const whole = joinedExtent(beside, labels.box);
  const foot = consoleFoot(face, layout, {
    view,
    above: whole,
    findings: options.findings,
    notes: [...notesOf(scene, view, cut), ...openNotes(seen.open)],
  });
  return {
    said: dimensions.said,
    drawing: {
      title: `${layout.design.title}, ${view.title}`,
      box: grownExtent(joinedExtent(whole, foot.box), MARGIN),
      items: [
        ...(cut === null ? floorItems(view, round) : []),
        ...(inside?.items ?? []),
        ...seen.items,
        ...(person?.items ?? []),
        ...dimensions.items,
        ...numberTags(face, boardTags(scene, seen.anchors)),
        ...labels.items,
        ...foot.items,
      ],
    },
  };
};

/** The floor, where the view stands upright on it. */
const floorItems = (view: ConsoleView, drawn: Extent): readonly DrawingItem[] =>
  Math.abs(view.up.z - 1) > UPRIGHT
    ? []
    : [stroked([segment(drawn.minX, 0, drawn.maxX, 0)], { ink: "line", width: THIN })];

/** Less than this off the vertical nobody sees: a micrometre in a metre. */
const UPRIGHT = 1e-6;

const boardTags = (
  { frame }: ConsoleScene,
  anchors: ReadonlyMap<string, Point>,
): readonly LabelledThing[] =>
  (frame?.parts ?? []).flatMap(({ id, number }) => {
    const at = anchors.get(id);
    return at === undefined ? [] : [{ text: String(number), at }];
  });

const labelsOf = (
  { layout }: ConsoleScene,
  { view, cut }: SheetView,
  anchors: ReadonlyMap<string, Point>,
): readonly LabelledThing[] => {
  const placed = (name: string, text: string): readonly LabelledThing[] => {
    const at = anchors.get(name);
    return at === undefined ? [] : [{ text, at }];
  };
  const turned = layout.bays.filter(({ id }) => view.kind === "side" || id === cut?.bay.id);
  return [
    ...turned.map((each) => ({ text: bayWords(each), at: bayEnd(each, view) })),
    ...layout.panels.flatMap(({ name }) => placed(name, name)),
    ...layout.obstacles
      .filter(({ role }) => role === "obstacle" || view.kind !== "plan")
      .flatMap(({ name, role }) => placed(`${role} ${name}`, name)),
  ];
};

const bayWords = ({ id, design }: BayLayout): string =>
  `bay ${id}: slope ${decimal(design.slope, 2)} deg, cant ${decimal(design.cant, 2)} deg`;

/** Where no panel's name points to. */
const bayEnd = ({ frame, length }: BayLayout, view: ConsoleView): Point =>
  onSheet(view, plus(frame.origin, scaled(frame.y, length)));

/** The inside of the console as a broken line; seen from outside its silhouette, in a section the cut. */
const envelopeView = (
  { envelope }: ConsoleScene["layout"],
  view: ConsoleView,
  cut: BayCut | null,
): { readonly items: readonly DrawingItem[]; readonly box: Extent } | null => {
  if (envelope === null) return null;
  const { solid, frame } = envelope;
  const regions =
    cut === null
      ? solidSilhouette(solid, frame, view)
      : solidCut(solid, frame, { view, through: placeOfCut(cut) });
  const outlines = regions.map(({ outline }) => outline);
  if (outlines.length === 0) return null;
  return {
    items: [outlined(outlines, { ink: "dimension", width: HAIR, dashed: true })],
    box: outlines.map(contourExtent).reduce(joinedExtent),
  };
};

const notesOf = (
  { layout, frame }: ConsoleScene,
  view: ConsoleView,
  cut: BayCut | null,
): readonly string[] => [
  ...(cut === null
    ? ["Seen from outside, outlines simplified; what is hidden is not drawn."]
    : [
        `Cut across ${cut.bay.id} at ${decimal(cut.at, 2)} mm from its beginning. Only what is cut is drawn; broken lines: room that things move or bend in.`,
      ]),
  ...(frame === null ? [] : ["Numbers in rings: boards of the frame, by the list of its parts."]),
  ...(view.kind === "side" && frame !== null
    ? ["Seen through the cheeks: their outlines are broken lines."]
    : []),
  ...operatorNotes(layout, view),
];

const openNotes = (open: readonly string[]): readonly string[] =>
  open.length === 0
    ? []
    : [`Lines in place of areas, for their surface is open: ${open.join(", ")}.`];

const operatorNotes = (layout: ConsoleScene["layout"], view: ConsoleView): readonly string[] => {
  const { operator } = layout;
  if (view.kind === "section") return [];
  if (operator === null) return ["No operator is written: reach and sight are not drawn."];
  const [functional, extended] = [operator.functionalReach.small, operator.extendedReach.small];
  const arcs = `Arcs ${arcPlace(layout, view)}: reach of a 5th-percentile woman from the shoulder of the ${operator.hand} hand, functional ${decimal(functional, 1)} mm, extended ${decimal(extended, 1)} mm (broken). ${SEATED_PERSON.source}.`;
  const sight = "Green broken lines: from the eyes to the middle of each bay.";
  return view.kind === "front" ? [sight] : [arcs, sight];
};

/** Reach is a ball: in a view it is drawn as large as it is where the panels are. */
const arcPlace = (layout: ConsoleScene["layout"], view: ConsoleView): string => {
  const middle = panelsMiddle(layout);
  if (middle === null) return "at the shoulder";
  if (view.kind === "plan") return `at the panels' mean height, ${decimal(middle.z, 1)} mm`;
  const side = middle.y < 0 ? "right" : "left";
  return `where the panels are on the mean, ${decimal(Math.abs(middle.y), 1)} mm to the ${side}`;
};
