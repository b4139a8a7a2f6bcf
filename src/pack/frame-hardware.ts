// What a frame is put together with, counted by the holes and joints that are cut for it: screws of hatches, dowels or screws of
// butt joints, bolts between sections and units, glue. Takes the frame; gives rows in the order of the work.

import { decimal } from "../geometry/number.ts";
import type { ConsoleFrame, FramePart } from "../parts/frame/frame-part.ts";
import { dowelDiameter, SCREW } from "../parts/frame/frame-practice.ts";

export interface HardwareRow {
  /** null: as much as it takes. */
  readonly count: number | null;
  readonly what: string;
  readonly use: string;
}

export const frameHardware = (frame: ConsoleFrame): readonly HardwareRow[] =>
  [
    ...jointRows(frame, "dowel"),
    ...jointRows(frame, "screws"),
    ...hatchRows(frame),
    ...boltRows(frame),
    ...glueRows(frame),
  ].filter(({ count }) => count !== 0);

/** Through the one board, and as deep in the other's edge as that is drilled. */
const jointRows = (
  { joints, parts }: ConsoleFrame,
  kind: "dowel" | "screws",
): readonly HardwareRow[] =>
  byThickness(parts, (part) =>
    joints.filter((each) => each.kind === kind && each.into === part.id),
  ).map(({ thickness, count }) => {
    const longest = thickness + SCREW.deep;
    return kind === "dowel"
      ? {
          count,
          what: `dowel, ${decimal(dowelDiameter(thickness), 1)} mm, ${decimal(soldUpTo(longest, DOWELS), 1)} mm long`,
          use: "joints, with glue",
        }
      : { count, what: woodScrew(longest), use: "joints" };
  });

/** Its hatch's cover, and no farther than through the board that carries it: as thick as the cover, of the same sheet. */
const hatchRows = ({ parts }: ConsoleFrame): readonly HardwareRow[] =>
  byThickness(parts, ({ holes }) =>
    holes.filter(({ feature }) => feature.startsWith("hatch-screw.")),
  ).map(({ thickness, count }) => ({ count, what: woodScrew(2 * thickness), use: "hatch" }));

/** Each goes through two boards. */
const boltRows = ({ parts }: ConsoleFrame): readonly HardwareRow[] =>
  byThickness(parts, ({ holes }) =>
    holes.filter(({ feature }) => feature.startsWith("bolt.")),
  ).flatMap(({ thickness, count }) => {
    const bolts = count / 2;
    const least = 2 * thickness + 2 * M8.washer + M8.nut + M8.beyond;
    const length = `at least ${decimal(least, 1)} mm long and what the spacer of its step in frame-assembly.md is long`;
    const use = "sections and units";
    return [
      { count: bolts, what: `bolt M8, ${length}`, use },
      { count: 2 * bolts, what: "washer, M8", use },
      { count: bolts, what: "nut, M8", use },
      { count: bolts, what: "spacer for M8, where the step names one", use },
    ];
  });

const glueRows = ({ joints }: ConsoleFrame): readonly HardwareRow[] =>
  joints.some(({ kind }) => kind !== "screws")
    ? [{ count: null, what: "wood glue", use: "joints, after a dry run" }]
    : [];

const byThickness = (
  parts: readonly FramePart[],
  of: (part: FramePart) => readonly unknown[],
): readonly { readonly thickness: number; readonly count: number }[] => {
  const counts = new Map<number, number>();
  for (const part of parts)
    counts.set(part.thickness, (counts.get(part.thickness) ?? 0) + of(part).length);
  return [...counts]
    .map(([thickness, count]) => ({ thickness, count }))
    .filter(({ count }) => count > 0)
    .toSorted((a, b) => a.thickness - b.thickness);
};

const woodScrew = (longest: number): string =>
  `wood screw, ${WOOD_SCREW} x ${decimal(soldUpTo(longest, SCREWS), 1)} mm`;

/** The longest that is sold and does not come out; the shortest where all would. */
const soldUpTo = (most: number, sold: readonly number[]): number =>
  sold.findLast((length) => length <= most) ?? sold[0]!;

/** For the clearance and pilot holes that are cut. */
const WOOD_SCREW = 4;

/** Usual stock of wood screws and of fluted dowels, mm: common practice. */
const SCREWS = [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70];
const DOWELS = [25, 30, 35, 40, 50, 60];

/** Washer and nut by ISO 7089 and ISO 4032; a turn and a half of thread beyond it (common practice). */
const M8 = { washer: 1.6, nut: 6.8, beyond: 2 } as const;
