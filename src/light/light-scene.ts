// The assembled stack as light meets it: opaque sheets, paint on faces and edges, printed walls, bodies of components, and
// whatever fills the holes of fasteners. Lamps are what its channels hold and what the panel holds itself.

import { type Contour, circle } from "../geometry/contour.ts";
import { madeOnce } from "../geometry/made-once.ts";
import { type Slab, slabsOf } from "../geometry/solid/solid-slabs.ts";
import type { LayerLayout, MountHole, PanelLayout, PlacedBody } from "../layout/panel-layout.ts";
import type { PrintedPart, PrintedRole } from "../parts/printed/printed-part.ts";
import { type Blocker, bodyBlocker, filmBlocker, skinBlocker } from "./blocker.ts";
import { componentLamps, type Lamp, lensOwner, stripLamps } from "./lamp.ts";
import { hasPaintedEdges, hasPaintedFront, isSeeThrough, sheetRegion } from "./sheet-light.ts";

export interface LightScene {
  readonly layout: PanelLayout;
  readonly printedParts: readonly PrintedPart[];
  /** What lights legends: strips and boards. */
  readonly lamps: readonly Lamp[];
  /** Lamps of their own, whose lens is meant to be seen and nothing else of them. */
  readonly componentLamps: readonly Lamp[];
  readonly blockers: readonly Blocker[];
  /** The slabs of each opaque printed part, by its id. */
  readonly slabs: ReadonlyMap<string, readonly Slab[]>;
}

/** Kept by identity: several judgements ask for the same panel. */
export const lightScene = (
  layout: PanelLayout,
  printedParts: readonly PrintedPart[],
): LightScene => {
  const known = kept.get(printedParts);
  if (known !== undefined && known.layout === layout) return known;
  const slabs = new Map(
    printedParts.filter(isOpaque).map((part) => [part.id, opaqueSlabs(part)] as const),
  );
  const scene = {
    layout,
    printedParts,
    lamps: stripLamps(printedParts),
    componentLamps: componentLamps(layout),
    blockers: [
      ...printedBlockers(slabs),
      ...layout.layers.flatMap(sheetBlockers),
      ...layout.components.flatMap(({ bodies }) => componentBlockers(bodies)),
      ...layout.layers.flatMap((layer) => filledHoles(layer, layout)),
    ],
    slabs,
  };
  kept.set(printedParts, scene);
  return scene;
};

const kept = new WeakMap<readonly PrintedPart[], LightScene>();

const CLEAR_ROLES: readonly PrintedRole[] = ["liner", "diffuser", "test-piece"];

const isOpaque = ({ role, stock }: PrintedPart): boolean =>
  !CLEAR_ROLES.includes(role) && stock.light === "opaque";

/** In pieces where there are several: a joint is then as open as it is made. White insides stop nothing by themselves. */
const opaqueSlabs = ({ bodies, pieces }: PrintedPart): readonly Slab[] => {
  const whole = bodies[0]?.name;
  const made = pieces.length > 1 ? pieces.flatMap((piece) => piece.bodies) : bodies;
  return made.filter(({ name }) => name === whole).flatMap(({ solid }) => slabsOf(solid));
};

const printedBlockers = (slabs: LightScene["slabs"]): readonly Blocker[] =>
  [...slabs].flatMap(([id, own]) =>
    own
      .filter(({ regions }) => regions.length > 0)
      .map(({ from, to, regions }) => bodyBlocker(id, { low: from, high: to }, regions)),
  );

const sheetBlockers = (layer: LayerLayout): readonly Blocker[] => {
  if (layer.kind !== "sheet") return [];
  const heights = { low: layer.rear, high: layer.front };
  const region = sheetRegion(layer);
  if (!isSeeThrough(layer)) return [bodyBlocker(layer.id, heights, [region])];
  const front = hasPaintedFront(layer) ? [filmBlocker(layer.id, layer.front, [region])] : [];
  const edges = hasPaintedEdges(layer)
    ? [skinBlocker(layer.id, heights, [region.outline, ...region.holes])]
    : [];
  return [...front, ...edges];
};

/** What is only room, or thin, or glass stops no light. */
const STOPPING: readonly PlacedBody["role"][] = [
  "flange",
  "nut",
  "washer",
  "bush",
  "lever",
  "button",
  "shaft",
  "lens",
  "case",
  "board",
  "knob",
  "cap",
];

const componentBlockers = madeOnce((bodies: readonly PlacedBody[]): readonly Blocker[] =>
  bodies.flatMap(bodyBlockers),
);

const bodyBlockers = (body: PlacedBody): readonly Blocker[] =>
  STOPPING.includes(body.role) && body.high > body.low
    ? [bodyBlocker(blockerOwner(body), body, [{ outline: stopped(body), holes: [] }])]
    : [];

const blockerOwner = ({ owner, role }: PlacedBody): string =>
  role === "lens" ? lensOwner(owner) : owner;

/** A nut's body is drawn over its corners; what it surely covers is the circle inside its flats. */
const stopped = ({ role, footprint }: PlacedBody): Contour =>
  role === "nut" && footprint.kind === "circle"
    ? circle(footprint.centre, footprint.radius * FLATS_OVER_CORNERS)
    : footprint;

/** cos 30°, of a hexagon. */
const FLATS_OVER_CORNERS = Math.sqrt(3) / 2;

/** Screws and dowels fill the holes that are made for them, and so do studs; round their heads there is play. */
const filledHoles = (layer: LayerLayout, layout: PanelLayout): readonly Blocker[] => {
  if (layer.kind !== "sheet") return [];
  const filling = [
    ...layer.cutOuts
      .filter(({ purpose }) => purpose === "fixing" || purpose === "dowel")
      .map(({ owner, contour }) => ({ owner, contour })),
    ...layout.mountHoles.map((hole) => ({ owner: hole.id, contour: studIn(layer, hole, layout) })),
  ];
  return filling.flatMap(({ owner, contour }) => {
    const filled = contour === null ? [] : [{ outline: contour, holes: [] }];
    return filled.length === 0
      ? []
      : [bodyBlocker(owner, { low: layer.rear, high: layer.front }, filled)];
  });
};

/** The stud's body in the sheet that it clamps, its head in those before it. */
const studIn = (layer: LayerLayout, hole: MountHole, { mount }: PanelLayout): Contour | null => {
  const own = layer.cutOuts.find(({ owner }) => owner === hole.id)?.contour;
  const room = mount.headClearance / 2;
  const isHeadRoom =
    room > 0 && (own === undefined || (own.kind === "circle" && own.radius >= room));
  return isHeadRoom ? circle(hole.at, room - HEAD_ROOM) : (own ?? null);
};

/** Play of a stud's head in the room that the mount gives it, a side: common practice. */
const HEAD_ROOM = 0.5;
