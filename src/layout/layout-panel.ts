// The door of this floor: a panel as written becomes a panel in millimetres. What can't be looked up or placed is left
// out with one finding; everything else is laid out all the same, so that it can still be judged.

import type { Mount } from "../catalogue/mount.ts";
import type { PanelDesign } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { circle } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { madeOnceAs, madeOnceWith } from "../geometry/made-once.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { THREAD_DIAMETER } from "../standards/metric-fasteners.ts";
import type { PlaceFrame } from "./axis-place.ts";
import { partBodies } from "./bodies.ts";
import { NO_SHEET, TOO_MANY, UNKNOWN_MOUNT } from "./codes.ts";
import { shapeOf } from "./component-shape.ts";
import { type LayoutContext, unknownName } from "./context.ts";
import { crowdedComponents, crowdedMarkings } from "./crowding.ts";
import { componentCutOuts } from "./cut-outs.ts";
import { fixingFindings } from "./fixing-findings.ts";
import { placeFixings } from "./fixings.ts";
import { countedFollowers, followerCounts } from "./followers.ts";
import { fixingCutOuts, mountCutOuts } from "./holes.ts";
import { type Entry, entriesOf, memberCount } from "./instances.ts";
import { layerOutline } from "./layer-outline.ts";
import { legendWindows } from "./legend-windows.ts";
import { layoutMarkings } from "./markings/markings.ts";
import { type MountFrame, mountFrame, railWidth } from "./mount-frame.ts";
import { boxObstacle, contourObstacle, type Obstacle, regionObstacle } from "./obstacle.ts";
import { ownPlaces } from "./own-places.ts";
import type {
  CutOut,
  LayerLayout,
  PanelLayout,
  PlacedComponent,
  PlacedFixing,
  PlacedMarking,
} from "./panel-layout.ts";
import { placeComponents, type Stacked } from "./place-components.ts";
import { type PlaceFinder, placeFinder } from "./place-finder.ts";
import { placeEntries } from "./places.ts";
import { type BareLayer, resolveStack } from "./stack.ts";
import { trimFace } from "./trim-face.ts";
import type { WindowScene } from "./window-obstacles.ts";
import { windowsOf } from "./windows.ts";

export interface LaidOut {
  /** null where mount, size or stack leave nothing to lay out. */
  readonly layout: PanelLayout | null;
  readonly findings: readonly Finding[];
  /** How many things were left out because of a component that could not be read, by its id. */
  readonly heldBack: ReadonlyMap<string, number>;
}

export const layoutPanel = (design: PanelDesign, context: LayoutContext): LaidOut => {
  const mount = context.catalogue.mounts.get(design.mount);
  if (mount === undefined) {
    const options = {
      span: spanOf(design.written, "mount"),
      known: context.catalogue.mounts.keys(),
    };
    const findings = [unknownName(UNKNOWN_MOUNT, design.mount, options)];
    return { layout: null, findings, heldBack: new Map() };
  }
  const count = design.components.reduce((sum, entry) => sum + memberCount(entry), 0);
  if (count > MOST_COMPONENTS)
    return { layout: null, findings: [tooMany(design, count)], heldBack: new Map() };
  const framed = mountFrame(design, mount);
  const stack = resolveStack(design.stack, context);
  const findings = [...framed.findings, ...stack.findings];
  const hasSheet = stack.layers.some((layer) => layer.kind === "sheet");
  if (!hasSheet && stack.isWhole) findings.push(noSheet(design));
  // Without a sheet's thickness no depth is known: what would follow from it is not worth saying.
  if (framed.frame === null || !hasSheet || !stack.isWhole)
    return { layout: null, findings, heldBack: new Map() };
  const base: Base = { design, context, mount, frame: framed.frame, layers: stack.layers };
  const laid = layOut(base);
  return { ...laid, findings: [...findings, ...laid.findings] };
};

/** Twice what the fullest keypad or annunciator panel holds; every pair of them is looked at. */
const MOST_COMPONENTS = 600;

const tooMany = (design: PanelDesign, count: number): Finding =>
  finding(TOO_MANY, {
    message: `The panel has ${count} components, the members of rows and grids counted; ${MOST_COMPONENTS} are the most.`,
    span: spanOf(design.written, "components"),
    measured: { value: count, unit: "count" },
    limit: { value: MOST_COMPONENTS, unit: "count" },
    source: { kind: "geometry", name: "time to judge a panel" },
  });

const noSheet = (design: PanelDesign): Finding =>
  finding(NO_SHEET, {
    message:
      "The stack has no sheet. Give it at least one, front to back: - { layer: face, sheet: opal-acrylic-3 }.",
    span: spanOf(design.written, "stack"),
  });

interface Base {
  readonly design: PanelDesign;
  readonly context: LayoutContext;
  readonly mount: Mount;
  readonly frame: MountFrame;
  readonly layers: readonly BareLayer[];
}

const layOut = (base: Base): LaidOut => {
  const { design, context, mount, frame, layers } = base;
  const read = entriesOf(design.components, context);
  const placeFrame = placeFrameOf(base);
  const reachOf = (entry: Entry): Extent => entryReach(entry, context);
  const placed = placeEntries(read.entries, { frame: placeFrame, reachOf, lost: read.lost });
  const finder = placeFinder(placed, placeFrame);
  const stacked = { layers, catalogue: context.catalogue };
  const { components, findings: clampFindings } = placeComponents(read.entries, {
    ...stacked,
    places: placed.places,
  });
  const windows = windowsOf(design.markings, layers, finder.placesOf);
  const ownHoles = (component: PlacedComponent) => holesOf(component, stacked);
  const holes = [...mountHolesOf(base), ...windows.cutOuts, ...components.flatMap(ownHoles)];
  const stopped = (crowding: Finding): LaidOut => {
    const findings = [...read.findings, ...placed.findings, ...finder.findings, crowding];
    return { layout: null, findings, heldBack: new Map() };
  };
  const crowdedParts = crowdedComponents(components, holes);
  if (crowdedParts !== null) return stopped(crowdedParts);
  const markings = layoutMarkings({ ...base, holesOf: ownHoles, components, finder });
  const crowdedWords = crowdedMarkings(markings.markings);
  if (crowdedWords !== null) return stopped(crowdedWords);
  const fixings = fixingsOf(base, finder, { holes, components, markings: markings.markings });
  const cut = [...holes, ...fixingCutOuts(fixings.fixings, layers)];
  const opened = legendWindows(markings.markings, {
    ...windowSceneOf(base),
    components,
    cutOuts: cut,
    fixings: fixings.fixings,
  });
  const { findings, others } = countedFollowers(
    [
      ...read.findings,
      ...placed.findings,
      ...clampFindings,
      ...windows.findings,
      ...markings.findings,
      ...fixings.findings,
      ...finder.findings,
    ],
    followerCounts(placed.lost, finder.causes),
  );
  return {
    layout: {
      kind: "panel-layout",
      name: design.name,
      design,
      mount,
      nominal: frame.nominal,
      outline: frame.outline,
      layers: withCutOuts(base, [...cut, ...opened.cutOuts]),
      components,
      markings: markings.markings,
      fixings: fixings.fixings,
      ownPlaces: ownPlaces(design, finder.found, fixings.fixings),
      mountHoles: frame.holes,
      rails: frame.rails,
      closedWindows: opened.closed,
      lost: [...placed.lost.keys()],
    },
    findings,
    heldBack: others,
  };
};

/** `x: left` or `y: top` keeps a component this far clear of rail or edge: common practice, one sheet thickness. */
const EDGE_MARGIN = 3;

const placeFrameOf = ({ frame }: Base): PlaceFrame => {
  const rail = railWidth(frame.rails, frame.nominal);
  return {
    nominal: frame.nominal,
    edge: { x: rail.x + EDGE_MARGIN, y: rail.y + EDGE_MARGIN },
  };
};

/** How far one member reaches round its own centre on the face; worked out once an entry. */
const entryReach = madeOnceWith((entry: Entry, { catalogue }: LayoutContext): Extent => {
  const { fitted } = entry;
  const made = partBodies(entry.part, { fitted, catalogue, gripped: mm(0) });
  const at = placement(0, 0, entry.common.turn);
  const boxes = [...trimFace(entry), ...made.face].map((contour) =>
    contourExtent(placedContour(contour, at)),
  );
  return boxes.length === 0 ? extent(0, 0, 0, 0) : boxes.reduce(joinedExtent);
});

const mountHolesOf = ({ design, context, mount, frame, layers }: Base): readonly CutOut[] =>
  mountCutOuts(frame.holes, {
    mount,
    layers,
    outline: frame.outline,
    span: spanOf(design.written, "mount"),
    fastenerSize: fastenerSize(mount, context),
  });

/** The body of a stud, the thread of a screw. */
const fastenerSize = (mount: Mount, context: LayoutContext): Mm => {
  const fastener = context.catalogue.hardware.get(mount.fastener);
  if (fastener?.kind === "stud") return fastener.body;
  if (fastener?.kind !== "screw") return mm(0);
  const thread = Object.entries(THREAD_DIAMETER).find(([name]) => name === fastener.thread);
  return thread?.[1] ?? mm(0);
};

/** The same outlines as long as the component's shape is the same, with the words that ask for them. */
const holesOf = madeOnceWith((component: PlacedComponent, stacked: Stacked): readonly CutOut[] => {
  const { span } = component;
  const holes = shapedHoles(component, stacked);
  return holes.every((hole) => hole.span === span)
    ? holes
    : holes.map((hole) => ({ ...hole, span }));
});

const shapedHoles = madeOnceAs(
  shapeOf,
  (component: PlacedComponent, { layers, catalogue }: Stacked): readonly CutOut[] =>
    componentCutOuts(
      {
        id: component.id,
        part: component.part,
        at: placement(component.at.x, component.at.y, component.turn),
        clamped: component.clamped,
        holeAsCut: component.common.holeAsCut,
        trim: component.common.trim,
        span: component.span,
      },
      layers,
      catalogue,
    ),
);

/** Fixings keep clear of every hole, letter, line and body; within a border they may stand. */
const fixingsOf = (
  base: Base,
  finder: PlaceFinder,
  taken: {
    readonly holes: readonly CutOut[];
    readonly components: readonly PlacedComponent[];
    readonly markings: readonly PlacedMarking[];
  },
): { readonly fixings: readonly PlacedFixing[]; readonly findings: readonly Finding[] } => {
  const { design, frame, mount } = base;
  if (design.fixings === null) return { fixings: [], findings: [] };
  const heads = frame.holes.map(({ at }) => circle(at, mount.headClearance / 2));
  const solid = [...taken.holes.map(({ contour }) => contour), ...heads];
  const obstacles = [
    ...solid.map(contourObstacle),
    ...taken.components.flatMap(bodyObstacles),
    ...taken.markings.flatMap((marking) =>
      marking.kind === "border" ? marking.fills.map(regionObstacle) : [boxObstacle(marking.box)],
    ),
  ];
  const set = placeFixings(design.fixings, { frame, obstacles, finder });
  return { fixings: set.fixings, findings: fixingFindings(design.fixings, set) };
};

const bodyObstacles = ({ bodies }: PlacedComponent): readonly Obstacle[] =>
  bodies.map(({ footprint }) => contourObstacle(footprint));

const windowSceneOf = (base: Base): Omit<WindowScene, "components" | "cutOuts" | "fixings"> => {
  const { design, context, mount, frame, layers } = base;
  const of = { mount, layers, outline: frame.outline, nominal: frame.nominal };
  return {
    workshop: context.workshop,
    layers,
    screws: design.fixings?.screws ?? null,
    mount,
    mountHoles: frame.holes,
    rails: frame.rails,
    outlineOf: (layer) => layerOutline(layer, frame.holes, of),
  };
};

const withCutOuts = (base: Base, cutOuts: readonly CutOut[]): readonly LayerLayout[] => {
  const byLayer = new Map<string, CutOut[]>();
  for (const cutOut of cutOuts) {
    const own = byLayer.get(cutOut.layer) ?? [];
    own.push(cutOut);
    byLayer.set(cutOut.layer, own);
  }
  const { layers, mount, frame } = base;
  const of = { mount, layers, outline: frame.outline, nominal: frame.nominal };
  return layers.map((layer) => ({
    ...layer,
    outline: layerOutline(layer, frame.holes, of),
    cutOuts: byLayer.get(layer.id) ?? [],
  }));
};
