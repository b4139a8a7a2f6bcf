// The strips that close the top of a section: behind its first bay, between two bays, and before its front. Takes the section
// and the boards that stand already; gives the strips, and what stays open.

import { type Point, point } from "../../geometry/contour.ts";
import { type Board, boardRun, boardSection } from "./board.ts";
import { closingPlace } from "./closing-place.ts";
import { plainBoard } from "./end-boards.ts";
import { type FrameBay, inBay } from "./frame-bay.ts";
import { noLonger } from "./frame-tolerance.ts";
import type { PlanScene } from "./plan-options.ts";
import { isAskew, stepRuns, straightRun } from "./steps.ts";
import { isClosed, type Strip, stripBetween } from "./strips.ts";

export interface TopStrips {
  readonly boards: readonly Board[];
  /** Between each bay and the next: null where there is none. */
  readonly between: readonly (Board | null)[];
  /** Lengths of the gaps that no strip closes. */
  readonly open: readonly number[];
  readonly beside: readonly OpenBeside[];
}

/** What stays open at the end of a strip that gives way to the room of a bay. */
export interface OpenBeside {
  /** The strip's id. */
  readonly strip: string;
  readonly gap: number;
}

export const withoutStrips = (bays: readonly FrameBay[]): TopStrips => ({
  boards: [],
  between: bays.slice(1).map(() => null),
  open: [],
  beside: [],
});

type Run = readonly [Point, Point];

export const topStrips = (scene: PlanScene, boards: readonly Board[]): TopStrips => {
  const { bays, inner, hulls, thickness, design } = scene;
  const first = bays[0]!;
  const end = closingPlace(bays.at(-1)!, thickness);
  const between = bays.slice(1).map((bay, index): readonly Run[] => {
    const before = bays[index]!;
    if (isClosed(inBay(before, before.length, 0), bay.start))
      return [[inBay(before, before.length, 0), bay.start]];
    const straight = straightRun(before, bay, scene);
    const steps = stepRuns(before, bay, { design, thickness });
    // Away from the end of rails that come down askew, so that a cheek stands beyond it and not over them.
    return [before, bay].some(isAskew) ? [...steps, straight] : [straight, ...steps];
  });
  const room = {
    thickness,
    rooms: hulls,
    boards: boards
      .filter(({ role }) => role !== "rib")
      .map((board) => boardSection(board, boardRun(board), { thickness })),
  };
  const strips = [
    [[point(inner.from, first.start.y), first.start] as const],
    ...between,
    [[end, point(inner.to, end.y)] as const],
  ].map((runs) => bestOf(runs.map(([from, to]) => stripBetween(from, to, room))));
  const made = strips.map((strip, index) => {
    if (strip.kind !== "strip") return null;
    const number = strips.slice(0, index + 1).filter(({ kind }) => kind === "strip").length;
    return plainBoard(scene, {
      ...strip.run,
      id: `top-${number}${scene.suffix}`,
      role: "strip",
      title: "Top strip",
      faces: "left",
    });
  });
  return {
    boards: made.flatMap((board) => board ?? []),
    between: made.slice(1, -1),
    open: strips.flatMap((strip) => (strip.kind === "open" ? [strip.gap] : [])),
    beside: strips.flatMap((strip, index) =>
      strip.kind === "strip"
        ? strip.beside.map((gap) => ({ strip: made[index]?.id ?? "", gap }))
        : [],
    ),
  };
};

/** The longest; of two that are as long the one that is asked for first. */
const bestOf = (strips: readonly Strip[]): Strip =>
  strips.reduce((best, strip) => (lengthOf(strip) > lengthOf(best) + noLonger ? strip : best));

const lengthOf = (strip: Strip): number => (strip.kind === "strip" ? strip.run.length : 0);
