// What is put on or fastened when a panel is assembled, each with its tool and the way to it: a column from where the tool
// bites to the open side. Layers have no tool: they are laid on.

import type { Catalogue } from "../catalogue/record.ts";
import { type Contour, circle } from "../geometry/contour.ts";
import { type Extent, joinedExtent } from "../geometry/extent.ts";
import { madeOnce, madeOnceAs } from "../geometry/made-once.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { Mm } from "../geometry/quantity.ts";
import { type Slab, slabsOf } from "../geometry/solid/solid-slabs.ts";
import { shapeOf } from "../layout/component-shape.ts";
import type {
  LayerLayout,
  PanelLayout,
  PlacedBody,
  PlacedComponent,
} from "../layout/panel-layout.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import { ISO_4762 } from "../standards/metric-fasteners.ts";
import type { Tool } from "./tool.ts";

export type ServiceKind = "knob" | "plug" | "stack-screw" | "layer" | "screw" | "nut" | "strip";

export interface ServiceItem extends BareItem {
  /** Round all its columns; null where it needs none. */
  readonly room: Extent | null;
  /** Round its bodies; null where it has none, or where one of them is a sheet or a print, which may lie anywhere. */
  readonly things: Extent | null;
}

interface BareItem {
  /** `pump/nut`: unique in the panel. */
  readonly id: string;
  readonly kind: ServiceKind;
  /** Component, fixing, layer or printed part. */
  readonly owner: string;
  readonly tool: Tool | null;
  readonly side: "front" | "rear";
  /** What the tool needs free; empty where nothing can stand in the way. */
  readonly columns: readonly Column[];
  /** What it holds down, or what it is: solid as long as the item is in its place. */
  readonly bodies: readonly Obstacle[];
}

/** From a height on toward the item's open side. */
export interface Column {
  readonly contour: Contour;
  readonly from: Mm;
}

export type Obstacle =
  | { readonly kind: "body"; readonly owner: string; readonly body: PlacedBody }
  | { readonly kind: "sheet"; readonly owner: string; readonly layer: LayerLayout }
  | { readonly kind: "print"; readonly owner: string; readonly slabs: readonly Slab[] };

export interface ServiceScene {
  readonly layout: PanelLayout;
  readonly printedParts: readonly PrintedPart[];
  readonly catalogue: Catalogue;
}

/** In the order in which a panel is taken apart, where nothing stands in the way. */
export const serviceItems = (scene: ServiceScene): readonly ServiceItem[] => {
  const { layout } = scene;
  return [
    ...layout.components.flatMap(knobItem),
    ...layout.components.flatMap(plugItem),
    ...[...stackScrews(layout), ...layerItems(scene), ...stripItems(scene)].map(boxed),
    ...layout.components.map((component) => heldItem(component, holdersOf(component, scene))),
  ];
};

const boxed = (item: BareItem): ServiceItem => {
  const bodies = item.bodies.flatMap((one) => (one.kind === "body" ? [one.body.footprint] : []));
  return {
    ...item,
    room: boxOf(item.columns.map(({ contour }) => contour)),
    things: bodies.length < item.bodies.length ? null : boxOf(bodies),
  };
};

const boxOf = (contours: readonly Contour[]): Extent | null => {
  const [first, ...others] = contours.map(contourExtent);
  return first === undefined ? null : others.reduce(joinedExtent, first);
};

const obstacle = (body: PlacedBody): Obstacle => ({ kind: "body", owner: body.owner, body });

/** Knobs and caps come off by hand before anything else. */
const isPulled = ({ role }: PlacedBody): boolean => role === "knob" || role === "cap";
const isMated = ({ role }: PlacedBody): boolean => role === "plug" || role === "cable";
/** Room for a spanner is no thing. */
const isThing = ({ role, low, high }: PlacedBody): boolean => role !== "spanner" && high > low;

const knobItem = madeOnce(({ id, bodies }: PlacedComponent): readonly ServiceItem[] => {
  const pulled = bodies.filter(isPulled);
  return pulled.length === 0
    ? []
    : [
        boxed({
          id: `${id}/knob`,
          kind: "knob",
          owner: id,
          tool: { kind: "fingers" },
          side: "front",
          columns: [],
          bodies: pulled.map(obstacle),
        }),
      ];
}, shapeOf);

/** From the mouth of its socket straight on: behind the panel, or in front of it. */
const plugItem = madeOnce(({ id, bodies }: PlacedComponent): readonly ServiceItem[] => {
  const mated = bodies.filter(isMated);
  const [first] = mated;
  if (first === undefined) return [];
  const side = first.low >= 0 ? "front" : "rear";
  return [
    boxed({
      id: `${id}/plug`,
      kind: "plug",
      owner: id,
      tool: { kind: "fingers" },
      side,
      columns: mated.map(({ footprint, low, high }) => ({
        contour: footprint,
        from: side === "front" ? high : low,
      })),
      bodies: mated.map(obstacle),
    }),
  ];
}, shapeOf);

/** Heads lie on the face: the thread is in the printed part behind, or in a nut that is held by hand. */
const stackScrews = ({ fixings, design, layers }: PanelLayout): readonly BareItem[] => {
  const thread = design.fixings?.screws;
  const head = thread === undefined ? undefined : ISO_4762[thread];
  const face = layers[0]?.front;
  if (face === undefined) return [];
  return fixings
    .filter(({ kind }) => kind === "screw")
    .map(({ id, at, diameter }) => {
      const size = head?.diameter ?? diameter;
      return {
        id,
        kind: "stack-screw",
        owner: id,
        tool: { kind: "driver", diameter: size },
        side: "front",
        columns: [{ contour: circle(at, size / 2), from: face }],
        bodies: [],
      };
    });
};

/** What lies behind comes off first, the rearmost before the others; then the sheets from the front. */
const layerItems = (scene: ServiceScene): readonly BareItem[] => {
  const items = everyLayer(scene);
  const behind = items.filter(({ side }) => side === "rear").toReversed();
  return [...behind, ...items.filter(({ side }) => side === "front")];
};

/** Sheets, and what is printed for the stack; a component's own washer or trim comes with the component. */
const everyLayer = ({ layout, printedParts }: ServiceScene): readonly BareItem[] =>
  layout.layers.flatMap((layer) => {
    const parts = printedParts.filter(({ owner }) => owner === layer.id);
    const printed = parts.map(
      (part): Obstacle => ({
        kind: "print",
        owner: part.id,
        slabs: part.bodies.flatMap(({ solid }) => slabsOf(solid)),
      }),
    );
    const own: readonly Obstacle[] =
      layer.kind === "sheet" ? [{ kind: "sheet", owner: layer.id, layer }] : printed;
    return own.length === 0
      ? []
      : [
          {
            id: layer.id,
            kind: "layer" as const,
            owner: layer.id,
            tool: null,
            side: layer.index <= lastSheet(layout) ? ("front" as const) : ("rear" as const),
            columns: [],
            bodies: own,
          },
        ];
  });

const lastSheet = ({ layers }: PanelLayout): number =>
  layers.findLastIndex(({ kind }) => kind === "sheet");

/** Strips lie in the printed part and are reached from its open side, the front. */
const stripItems = ({ printedParts }: ServiceScene): readonly BareItem[] =>
  printedParts
    .filter(({ facts }) => facts.channels.length > 0)
    .map(({ id, owner }) => ({
      id: `${id}/strips`,
      kind: "strip",
      owner,
      tool: { kind: "fingers" },
      side: "front",
      columns: [],
      bodies: [],
    }));

/** What of the panel says how a component is held. */
interface Holders {
  /** Printed for it alone. */
  readonly prints: readonly PrintedPart[];
  /** The foremost sheet that its screws clamp. */
  readonly screwed: LayerLayout | null;
}

/** Of most components none: nothing but the component itself then says how it is held. */
const holdersOf = ({ id, part, clamped }: PlacedComponent, scene: ServiceScene): Holders => {
  const prints = scene.printedParts.filter(({ owner }) => owner === id);
  const screwed = part.hold.kind === "screws" ? scene.layout.layers[clamped.first] : undefined;
  return { prints: prints.length === 0 ? NONE : prints, screwed: screwed ?? null };
};

const NONE: readonly PrintedPart[] = [];

/** What holds a component: its nut, its screws, or the sheet itself. With it gone the component is out. */
const heldItem = madeOnceAs(
  shapeOf,
  (component: PlacedComponent, holders: Holders): ServiceItem =>
    boxed(holdingItem(component, holders)),
);

const holdingItem = (component: PlacedComponent, { prints, screwed }: Holders): BareItem => {
  const { id, part, bodies } = component;
  const own: readonly Obstacle[] = [
    ...bodies.filter((body) => isThing(body) && !isPulled(body) && !isMated(body)).map(obstacle),
    ...prints.map(
      (printed): Obstacle => ({
        kind: "print",
        owner: printed.id,
        slabs: printed.bodies.flatMap(({ solid }) => slabsOf(solid)),
      }),
    ),
  ];
  const base = { owner: id, bodies: own };
  switch (part.hold.kind) {
    case "bush": {
      const side = part.hold.seat === "behind" ? "front" : "rear";
      const tool = { kind: "socket", diameter: part.hold.spanner } as const;
      return { ...base, id: `${id}/nut`, kind: "nut", tool, side, columns: nutColumn(component) };
    }
    case "screws": {
      const head = part.hold.holes[0]?.head;
      const tool: Tool =
        head === undefined ? { kind: "fingers" } : { kind: "driver", diameter: head };
      const columns = screwed === null ? [] : screwColumns(component, screwed);
      return { ...base, id: `${id}/screws`, kind: "screw", tool, side: "front", columns };
    }
    case "snap":
    case "behind":
      return { ...base, id: `${id}/part`, kind: "screw", tool: null, side: "rear", columns: [] };
  }
};

const nutColumn = ({ at, part, bodies }: PlacedComponent): readonly Column[] => {
  const { hold } = part;
  const nut = bodies.find(({ role }) => role === "nut");
  if (hold.kind !== "bush" || nut === undefined) return [];
  const from = hold.seat === "behind" ? nut.low : nut.high;
  return [{ contour: circle(at, hold.spanner / 2), from }];
};

/** Over the screws' own holes in the foremost sheet that they clamp. */
const screwColumns = ({ id, part }: PlacedComponent, layer: LayerLayout): readonly Column[] => {
  const { hold } = part;
  if (hold.kind !== "screws") return [];
  return layer.cutOuts
    .filter(({ owner, purpose }) => owner === id && purpose === "screw")
    .map(({ centre }, index) => ({
      contour: circle(centre, (hold.holes[index]?.head ?? 0) / 2),
      from: layer.front,
    }));
};
