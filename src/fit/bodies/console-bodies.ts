// The door of this folder: everything solid in a console, at its place. A panel's own bodies are made once and kept with its
// layout, so that a panel that only moves brings the same recipes along.

import { WORLD } from "../../geometry/space/frame.ts";
import type { ConsoleLayout, PlacedPanel } from "../../layout/console/console-layout.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import type { ConsoleFrame } from "../../parts/frame/frame-part.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import type { ConsoleBody } from "../console-body.ts";
import { boardBodies } from "./board-bodies.ts";
import { componentBodies } from "./component-bodies.ts";
import { frameBodies } from "./frame-bodies.ts";
import { layerBodies } from "./layer-bodies.ts";
import { obstacleBodies } from "./obstacle-bodies.ts";
import { printBodies } from "./print-bodies.ts";
import { railBodies } from "./rail-bodies.ts";
import { numberedIds, type StandingBody, stoodBody } from "./standing-body.ts";

export interface BodySources {
  readonly layout: ConsoleLayout;
  /** By the panel's name in the console; a panel without an entry has nothing printed. */
  readonly printedParts: ReadonlyMap<string, readonly PrintedPart[]>;
  readonly frame: ConsoleFrame | null;
}

/** By panel in the order of the layout, then the console's own: rails or frame, ribs, walls, obstacles. */
export const consoleBodies = ({
  layout,
  printedParts,
  frame,
}: BodySources): readonly ConsoleBody[] => [
  ...layout.panels.flatMap((panel) => panelBodies(panel, printedParts.get(panel.name) ?? [])),
  ...ownBodies(layout, frame),
  ...obstacleBodies(layout.obstacles),
];

const panelBodies = (
  { name, layout, frame, place }: PlacedPanel,
  parts: readonly PrintedPart[],
): readonly ConsoleBody[] =>
  keptBodies(layout, parts).map((body) =>
    stoodBody(
      { ...body, id: `${name}/${body.id}` },
      { panel: name, bay: place.kind === "bay" ? place.bay : null, frame },
    ),
  );

interface Kept {
  readonly parts: readonly PrintedPart[];
  readonly bodies: readonly StandingBody[];
}

const KEPT = new WeakMap<PanelLayout, Kept>();

const keptBodies = (
  layout: PanelLayout,
  parts: readonly PrintedPart[],
): readonly StandingBody[] => {
  const known = KEPT.get(layout);
  if (known !== undefined && areSame(known.parts, parts)) return known.bodies;
  const bodies = numberedIds([
    ...layerBodies(layout),
    ...printBodies(parts),
    ...componentBodies(layout),
    ...boardBodies(layout, parts),
  ]);
  KEPT.set(layout, { parts, bodies });
  return bodies;
};

const areSame = (a: readonly PrintedPart[], b: readonly PrintedPart[]): boolean =>
  a.length === b.length && a.every((part, index) => part === b[index]);

const ownBodies = (
  { bays, design }: ConsoleLayout,
  frame: ConsoleFrame | null,
): readonly ConsoleBody[] =>
  frame === null
    ? bays.flatMap((bay) => railBodies(bay).map(stoodIn(bay.id)))
    : frameBodies(frame, design.frame?.written.span ?? design.written.span).map(stoodIn(null));

const stoodIn =
  (bay: string | null) =>
  (body: StandingBody): ConsoleBody =>
    stoodBody(body, { panel: null, bay, frame: WORLD });
