// One cause, one finding: a hole off the panel also lies in the rail's strip, and a person mends both at once. The table
// says which findings follow from which; a follower is held back and counted with the one that leads it.

import { entryName } from "../design/entry-name.ts";
import type { Finding, Severity } from "../diagnostics/finding.ts";

interface Follower {
  readonly code: string;
  /** Codes that have said it already, the likeliest cause first. */
  readonly after: readonly string[];
  /** What both must speak of: all of the follower's things, or its first. */
  readonly sharing: "all" | "first";
}

const OFF_PANEL = ["checks/instrument-fit", "checks/off-panel"];
const TOO_CLOSE = ["checks/cut-outs-overlap", "checks/bodies-collide"];

/** What a measured size that can't be makes of its component. */
const FROM_A_SLIP = [
  "checks/hole-too-small",
  "checks/hole-uncovered",
  "checks/thread-too-short",
  "checks/grip",
  "checks/below-face",
  "checks/too-deep",
  "checks/fouls-layer",
  "checks/knob-bore",
];

/** In the order in which they are settled: a follower may lead others. */
const FOLLOWERS: readonly Follower[] = [
  ...FROM_A_SLIP.map(
    (code): Follower => ({
      code,
      after: ["checks/measured-impossible"],
      sharing: "first",
    }),
  ),
  { code: "checks/off-panel", after: ["checks/instrument-fit"], sharing: "first" },
  { code: "checks/rail-strip", after: OFF_PANEL, sharing: "first" },
  { code: "checks/over-fixing", after: [...OFF_PANEL, "checks/rail-strip"], sharing: "first" },
  {
    code: "checks/edge-distance",
    after: [...OFF_PANEL, "checks/over-fixing", "checks/rail-strip"],
    sharing: "first",
  },
  { code: "checks/cut-outs-overlap", after: OFF_PANEL, sharing: "first" },
  { code: "checks/bodies-collide", after: ["checks/cut-outs-overlap"], sharing: "all" },
  { code: "checks/web", after: [...TOO_CLOSE, "checks/over-fixing"], sharing: "all" },
  { code: "checks/web", after: [...OFF_PANEL, "checks/rail-strip"], sharing: "first" },
  { code: "checks/hands", after: TOO_CLOSE, sharing: "all" },
  { code: "checks/out-of-reach", after: TOO_CLOSE, sharing: "all" },
  { code: "checks/print-collides", after: TOO_CLOSE, sharing: "all" },
  { code: "checks/marking-off-panel", after: OFF_PANEL, sharing: "first" },
  { code: "checks/marking-over-cut-out", after: TOO_CLOSE, sharing: "all" },
  { code: "checks/marking-covered", after: [...TOO_CLOSE, "checks/hands"], sharing: "all" },
  {
    code: "checks/marking-covered",
    after: ["checks/marking-over-cut-out"],
    sharing: "first",
  },
  { code: "checks/markings-overlap", after: TOO_CLOSE, sharing: "all" },
  { code: "checks/over-fixing", after: ["checks/mount-web"], sharing: "first" },
  { code: "checks/grip", after: ["checks/thread-too-short"], sharing: "first" },
  { code: "checks/fouls-layer", after: ["checks/grip"], sharing: "first" },
  {
    code: "checks/unmeasured-sheet",
    after: ["checks/thread-too-short", "checks/grip", "checks/below-face", "checks/too-deep"],
    sharing: "first",
  },
  { code: "checks/kerf-assumed", after: ["checks/stock-by-machine"], sharing: "first" },
  { code: "checks/fit-unmeasured", after: ["checks/stock-by-machine"], sharing: "first" },
  { code: "checks/corner-by-hand", after: ["checks/hole-below-machine"], sharing: "first" },
  { code: "checks/inside-corner", after: ["checks/hole-below-machine"], sharing: "first" },
  { code: "checks/sharp-corner", after: ["checks/inside-corner"], sharing: "first" },
  { code: "checks/stroke-too-thin", after: ["checks/stroke-below-tool"], sharing: "first" },
];

/** Codes that follow nothing come through as they are, in their order. */
export const oneCauseOneFinding = (found: readonly Finding[]): readonly Finding[] => {
  const kept = new Map<number, Finding>(found.entries());
  for (const follower of FOLLOWERS) {
    const isPresent = found.some(({ code }) => code === follower.code);
    if (isPresent) settle(follower, kept);
  }
  return [...kept.values()];
};

const settle = (follower: Follower, kept: Map<number, Finding>): void => {
  const leaders = [...kept].filter(([, { code }]) => follower.after.includes(code));
  if (leaders.length === 0) return;
  for (const [index, one] of [...kept]) {
    if (one.code !== follower.code) continue;
    const leader = leaders.find(([, other]) => isLed(one, other, follower.sharing));
    if (leader === undefined) continue;
    const [at, first] = leader;
    kept.delete(index);
    const counted = kept.get(at) ?? first;
    kept.set(at, { ...counted, suppressed: counted.suppressed + one.suppressed + 1 });
  }
};

const GRAVITY: Readonly<Record<Severity, number>> = { fault: 2, query: 1, note: 0 };

/** A graver finding is never hidden behind a lighter one. */
const isLed = (one: Finding, leader: Finding, sharing: Follower["sharing"]): boolean => {
  if (GRAVITY[leader.severity] < GRAVITY[one.severity]) return false;
  const things = leader.subjects.map(entryName);
  const own = one.subjects.map(entryName);
  return sharing === "all"
    ? own.every((name) => things.includes(name))
    : own[0] !== undefined && things.includes(own[0]);
};
