// How long a loom must be to lay a panel on its face beside its place: turned half round about the edge that it shares with
// a neighbour, knobs lying on knobs.
//
// From the bay's tie (or from beneath the middle of the panel, at the bay's depth) over the shared edge to the plug where it
// comes to lie, the shortest way: the two stretches on either side of the edge folded flat. Then the slack.

import { extentCentre } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { pointIn } from "../../geometry/space/frame.ts";
import { boxCorners, boxRound } from "../../geometry/space/space-box.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import type { ConsoleLayout, PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { LoopFact } from "../fit-facts.ts";
import { oneEdge } from "../fit-tolerance.ts";
import { runFrameOf } from "./run-frame.ts";
import type { ServiceFigures } from "./service-figures.ts";

export const loopFacts = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
  figures: ServiceFigures,
): readonly LoopFact[] =>
  layout.panels.flatMap((panel) => {
    const ends = loomEnds(panel, bodies);
    if (ends.length === 0) return [];
    const turn = turnOf(panel, layout.panels);
    const tie = tieOf(panel, layout);
    const needed = ends.map(({ at, plug }) => ({
      plug,
      needs: mm(overTheEdge({ tie, at, turn }) + figures.loopSlack),
    }));
    const longest = needed.reduce((most, one) => (one.needs > most.needs ? one : most));
    return [
      {
        panel: panel.name,
        has: panel.use.loop,
        needs: longest.needs,
        onto: turn.onto,
        plug: longest.plug,
      },
    ];
  });

interface LoomEnd {
  /** In the frame of its run. */
  readonly at: Vector;
  readonly plug: ConsoleBody | null;
}

/** Its plugs behind; the middle of its rear where it has wires and no plug; none where nothing of it is wired. */
const loomEnds = (panel: PlacedPanel, bodies: readonly ConsoleBody[]): readonly LoomEnd[] => {
  const plugs = bodies
    .filter((body) => body.panel === panel.name && body.role === "plug")
    .map((plug) => ({ at: middleWithin(plug, panel), plug }))
    .filter(({ at }) => at.z < 0);
  if (plugs.length > 0) return plugs;
  const isWired = panel.layout.components.some(({ part }) => part.contacts.length > 0);
  const { x, y } = extentCentre(runFrameOf(panel).nominal);
  return isWired ? [{ at: vector(x, y, panel.seat), plug: null }] : [];
};

const middleWithin = (body: ConsoleBody, panel: PlacedPanel): Vector => {
  const { frame } = runFrameOf(panel);
  const box = boxRound(boxCorners(body.box).map((corner) => pointIn(frame, corner)));
  return vector((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2, (box.minZ + box.maxZ) / 2);
};

const tieOf = (panel: PlacedPanel, layout: ConsoleLayout): Vector => {
  const { place } = panel;
  const { frame, nominal } = runFrameOf(panel);
  const bay = place.kind === "bay" ? layout.bays.find(({ id }) => id === place.bay) : undefined;
  const loom = bay?.design.loom ?? null;
  if (loom !== null) return pointIn(frame, vector(...loom));
  const { x, y } = extentCentre(nominal);
  return vector(x, y, panel.seat - (bay?.depth ?? 0));
};

interface Turn {
  readonly onto: string | null;
  /** y of the edge that it turns about, a line along x. */
  readonly edge: Mm;
  /** From face to face, once it lies there. */
  readonly apart: Mm;
}

/** Onto the panel after it; where it is the last, onto the one before it; where it is alone, onto what is beside it. */
const turnOf = (panel: PlacedPanel, panels: readonly PlacedPanel[]): Turn => {
  const { place } = panel;
  const { nominal } = runFrameOf(panel);
  const next = panels.find((other) => isBeside(other, place, "after"));
  const previous = panels.find((other) => isBeside(other, place, "before"));
  const neighbour = next ?? previous;
  return {
    onto: neighbour?.name ?? null,
    edge: next === undefined && previous !== undefined ? nominal.minY : nominal.maxY,
    apart: mm(proud(panel) + (neighbour === undefined ? 0 : proud(neighbour))),
  };
};

const isBeside = (
  { place: other }: PlacedPanel,
  place: PlacedPanel["place"],
  side: "after" | "before",
): boolean =>
  place.kind === "bay" &&
  other.kind === "bay" &&
  place.bay === other.bay &&
  Math.abs(side === "after" ? other.from - place.to : place.from - other.to) < oneEdge;

/** How far the tallest thing stands before its face. */
const proud = ({ layout }: PlacedPanel): Mm =>
  mm(
    layout.components.reduce(
      (most, { bodies }) => bodies.reduce((top, { high }) => Math.max(top, high), most),
      0,
    ),
  );

/** Half round about the edge, `apart` higher: a point y before it and z behind the face lies y beyond it, z + apart above. */
const overTheEdge = (of: {
  readonly tie: Vector;
  readonly at: Vector;
  readonly turn: Turn;
}): Mm => {
  const { tie, at, turn } = of;
  const below = size(turn.edge - tie.y, tie.z);
  const above = size(turn.edge - at.y, -at.z + turn.apart);
  return mm(size(at.x - tie.x, below + above));
};

const size = (a: number, b: number): number => Math.sqrt(a * a + b * b);
