// The door of this floor: a panel as written becomes a panel in millimetres. What can't be looked up or placed is left
// out with one finding; everything else is laid out all the same, so that it can still be judged.

import type { Mount } from "../catalogue/mount.ts";
import type { PanelDesign, PlaceDesign } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { type Contour, circle, type Point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { THREAD_DIAMETER } from "../standards/metric-fasteners.ts";
import { partBodies } from "./bodies.ts";
import { FIXING_PLACES, NO_SHEET, UNKNOWN_MOUNT, WINDOW_CORNER } from "./codes.ts";
import { type LayoutContext, unknownName } from "./context.ts";
import { componentCutOuts } from "./cut-outs.ts";
import { placeFixings } from "./fixings.ts";
import { fixingCutOuts, layerOutline, mountCutOuts, windowCutOuts } from "./holes.ts";
import { type Entry, entriesOf } from "./instances.ts";
import { layoutMarkings } from "./markings/markings.ts";
import { type MountFrame, mountFrame } from "./mount-frame.ts";
import type {
  CutOut,
  LayerLayout,
  PanelLayout,
  PlacedComponent,
  PlacedFixing,
} from "./panel-layout.ts";
import { placeComponents } from "./place-components.ts";
import { blockPlace, type Landmark, placeEntries } from "./places.ts";
import { type BareLayer, resolveStack } from "./stack.ts";

export interface LaidOut {
  /** null where mount, size or stack leave nothing to lay out. */
  readonly layout: PanelLayout | null;
  readonly findings: readonly Finding[];
}

export const layoutPanel = (design: PanelDesign, context: LayoutContext): LaidOut => {
  const mount = context.catalogue.mounts.get(design.mount);
  if (mount === undefined) {
    const options = {
      span: spanOf(design.written, "mount"),
      known: context.catalogue.mounts.keys(),
    };
    return { layout: null, findings: [unknownName(UNKNOWN_MOUNT, design.mount, options)] };
  }
  const framed = mountFrame(design, mount);
  const stack = resolveStack(design.stack, context);
  const findings = [...framed.findings, ...stack.findings];
  const hasSheet = stack.layers.some((layer) => layer.kind === "sheet");
  if (!hasSheet && stack.findings.length === 0) findings.push(noSheet(design));
  if (framed.frame === null || !hasSheet) return { layout: null, findings };
  const base: Base = { design, context, mount, frame: framed.frame, layers: stack.layers };
  const laid = layOut(base);
  return { layout: laid.layout, findings: [...findings, ...laid.findings] };
};

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

const layOut = (
  base: Base,
): { readonly layout: PanelLayout; readonly findings: readonly Finding[] } => {
  const { design, context, mount, frame, layers } = base;
  const read = entriesOf(design.components, context);
  const placed = placeEntries(read.entries, {
    frame: placeFrame(base),
    reachOf: entryReach(context),
    lost: read.lost,
  });
  const { components, findings: clampFindings } = placeComponents(read.entries, {
    places: placed.places,
    layers,
    catalogue: context.catalogue,
  });
  const scene = { ...base, components, placeOf: placeFinder(base, components) };
  const windows = windowsOf(scene);
  const holes = [...mountHolesOf(base), ...windows.cutOuts, ...componentHoles(components, base)];
  const markings = layoutMarkings({ ...scene, holes, lost: placed.lost });
  const letters = markings.markings.map(({ box }) => rectangle(box));
  const heads = frame.holes.map(({ at }) => circle(at, mount.headClearance / 2));
  const fixings = fixingsOf(scene, [...holes.map(({ contour }) => contour), ...heads, ...letters]);
  const cutOuts = [...holes, ...fixingCutOuts(fixings, layers)];
  return {
    layout: {
      kind: "panel-layout",
      name: design.name,
      design,
      mount,
      nominal: frame.nominal,
      outline: frame.outline,
      layers: withCutOuts(base, cutOuts),
      components,
      markings: markings.markings,
      fixings,
      mountHoles: frame.holes,
      rails: frame.rails,
      lost: placed.lost,
    },
    findings: [
      ...read.findings,
      ...placed.findings,
      ...clampFindings,
      ...windows.findings,
      ...markings.findings,
      ...fixingNote(design, fixings),
    ],
  };
};

/** `x: left` keeps a component this far clear of rail or edge: common practice, one sheet thickness. */
const EDGE_MARGIN = 3;

const placeFrame = ({
  frame,
  mount,
}: Base): { readonly nominal: Extent; readonly edge: number } => ({
  nominal: frame.nominal,
  edge: mount.seat + EDGE_MARGIN,
});

/** How far one member reaches round its own centre on the face; worked out once an entry. */
const entryReach = (context: LayoutContext): ((entry: Entry) => Extent) => {
  const known = new Map<Entry, Extent>();
  return (entry) => {
    const found = known.get(entry);
    if (found !== undefined) return found;
    const { fitted } = entry;
    const made = partBodies(entry.part, { fitted, catalogue: context.catalogue, gripped: mm(0) });
    const at = placement(0, 0, entry.common.turn);
    const boxes = made.face.map((contour) => contourExtent(placedContour(contour, at)));
    const reach = boxes.length === 0 ? extent(0, 0, 0, 0) : boxes.reduce(joinedExtent);
    known.set(entry, reach);
    return reach;
  };
};

export interface LayoutScene extends Base {
  readonly components: readonly PlacedComponent[];
  readonly placeOf: (place: PlaceDesign) => Point | null;
}

/** Places of windows, markings and fixings: they may lean on components, not on each other. */
const placeFinder = (
  base: Base,
  components: readonly PlacedComponent[],
): ((place: PlaceDesign) => Point | null) => {
  const landmarks = new Map<string, Landmark>();
  for (const component of components) {
    const boxes = component.face.map(contourExtent);
    const at = component.at;
    const own = boxes.length === 0 ? extent(at.x, at.y, at.x, at.y) : boxes.reduce(joinedExtent);
    landmarks.set(component.id, { at, reach: own });
    const group = landmarks.get(component.entry);
    if (component.entry !== component.id)
      landmarks.set(component.entry, {
        at: group?.at ?? at,
        reach: joinedExtent(group?.reach ?? own, own),
      });
  }
  const nothing = extent(0, 0, 0, 0);
  const frame = placeFrame(base);
  return (place) =>
    blockPlace(
      { id: "", subject: "", place, centres: nothing, reach: nothing },
      { frame, landmarks },
    );
};

const windowsOf = (
  scene: LayoutScene,
): { readonly cutOuts: readonly CutOut[]; readonly findings: readonly Finding[] } => {
  const cutOuts: CutOut[] = [];
  const findings: Finding[] = [];
  for (const marking of scene.design.markings) {
    if (marking.kind !== "window") continue;
    const at = scene.placeOf(marking.at);
    const most = Math.min(marking.width, marking.height) / 2;
    if (marking.corner > most) findings.push(windowCorner(marking, most));
    else if (at !== null) cutOuts.push(...windowCutOuts(marking, at, scene.layers));
  }
  return { cutOuts, findings };
};

const windowCorner = (window: WindowDesign, most: number): Finding =>
  finding(WINDOW_CORNER, {
    message: `${window.id}: a corner of ${decimal(window.corner, 3)} mm on a window whose shorter side takes ${decimal(most, 3)} mm. corner: ${decimal(most, 3)} mm rounds it fully.`,
    span: spanOf(window.written, "corner"),
    subjects: [window.id],
    measured: { value: window.corner, unit: "mm" },
    limit: { value: most, unit: "mm" },
    source: { kind: "geometry", name: "half the shorter side" },
  });

type WindowDesign = PanelDesign["markings"][number] & { readonly kind: "window" };

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

const componentHoles = (components: readonly PlacedComponent[], base: Base): readonly CutOut[] =>
  components.flatMap((component) =>
    componentCutOuts(
      {
        id: component.id,
        part: component.part,
        at: placement(component.at.x, component.at.y, component.turn),
        clamped: component.clamped,
        holeAsCut: component.common.holeAsCut,
        span: component.span,
      },
      base.layers,
      base.context.catalogue,
    ),
  );

/** Fixings keep clear of every hole, letter and body. */
const fixingsOf = (scene: LayoutScene, taken: readonly Contour[]): readonly PlacedFixing[] => {
  const { design, frame, components, placeOf } = scene;
  if (design.fixings === null) return [];
  const bodies = components.flatMap((component) => component.bodies.map((body) => body.footprint));
  const obstacles = [...taken, ...bodies];
  return placeFixings(design.fixings, { frame, obstacles, placeOf });
};

/** Places that the program chose are said, so that nobody takes them for the builder's own. */
const fixingNote = (design: PanelDesign, fixings: readonly PlacedFixing[]): readonly Finding[] => {
  if (design.fixings === null || design.fixings.at !== null) return [];
  const places = fixings.map(({ id, at }) => `${id} (${decimal(at.x, 3)}, ${decimal(at.y, 3)})`);
  return [
    finding(FIXING_PLACES, {
      message: `No places are given for the fixings; they were set at ${places.join(", ")} mm.`,
      span: design.fixings.written.span,
    }),
  ];
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
