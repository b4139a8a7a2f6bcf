// How near two things of a console may come, by what they are: one table, each row with its source.

import type { LimitSource } from "../../diagnostics/finding.ts";
import type { ConsoleBody, ConsoleBodyRole } from "../../fit/console-body.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";

export interface NearLimit {
  readonly room: Mm;
  readonly source: LimitSource;
}

/** null: nothing is asked of the two but that they don't touch. */
export const nearLimit = (
  a: ConsoleBody,
  b: ConsoleBody,
  layout: ConsoleLayout,
): NearLimit | null => {
  const row = ROWS.find(
    ({ one, other }) =>
      (one.has(a.role) && other.has(b.role)) || (one.has(b.role) && other.has(a.role)),
  );
  if (row === undefined) return null;
  const room = row.room === "undersize" ? undersizes([a, b], layout) : row.room;
  return { room: mm(room), source: row.source };
};

type Roles = ReadonlySet<ConsoleBodyRole>;

const roles = (...of: readonly ConsoleBodyRole[]): Roles => new Set(of);

const SWEEP = roles("sweep");
const SHEET = roles("layer", "print");
const BODY = roles("front", "rear", "tails");
const RAIL = roles("rail");
const CONSOLE = roles("frame", "rib", "wall", "obstacle");
const ANY = new Set([...SWEEP, ...SHEET, ...BODY, ...RAIL, ...CONSOLE]);

interface Row {
  readonly one: Roles;
  readonly other: Roles;
  /** `undersize`: what the mounts of the two panels are cut under nominal there, together. */
  readonly room: number | "undersize";
  readonly source: LimitSource;
}

/** The first that fits counts. Plugs and cables stand in none: their room is judged by `fit/plug-room`. */
const ROWS: readonly Row[] = [
  {
    one: SWEEP,
    other: ANY,
    room: 3,
    source: { kind: "practice", name: "a lever or a knob clears what stands beside it by 3 mm" },
  },
  {
    one: SHEET,
    other: SHEET,
    room: "undersize",
    source: { kind: "geometry", name: "what the mount cuts its panels under nominal" },
  },
  {
    one: SHEET,
    other: CONSOLE,
    room: "undersize",
    source: { kind: "geometry", name: "what the mount cuts its panels under nominal" },
  },
  {
    one: BODY,
    other: CONSOLE,
    room: 2,
    source: { kind: "practice", name: "2 mm from a body to wood and to what is built in" },
  },
  {
    one: BODY,
    other: new Set([...BODY, ...SHEET, ...RAIL]),
    room: 1,
    source: { kind: "practice", name: "1 mm from a body to a neighbour's and to a rail" },
  },
];

const undersizes = (bodies: readonly ConsoleBody[], { panels }: ConsoleLayout): number =>
  bodies.reduce(
    (sum, { panel }) =>
      sum + (panels.find(({ name }) => name === panel)?.layout.mount.undersize ?? 0),
    0,
  );
