// How near two things of a console may come, by what they are: one table, each row with its source or the house rule
// that sets it.

import type { WorkshopDesign } from "../../design/workshop-design.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import type { ConsoleBody, ConsoleBodyRole } from "../../fit/console-body.ts";
import { searchLength } from "../../fit/fit-tolerance.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";

export interface NearLimit {
  readonly room: Mm;
  readonly source: LimitSource;
}

/** The panels' mounts, and whose house rules count. */
export interface NearFacts {
  readonly layout: ConsoleLayout;
  readonly workshop: WorkshopDesign | null;
}

/** null: nothing is asked of the two but that they don't touch. */
export const nearLimit = (a: ConsoleBody, b: ConsoleBody, facts: NearFacts): NearLimit | null => {
  const row = ROWS.find(
    ({ one, other }) =>
      (one.has(a.role) && other.has(b.role)) || (one.has(b.role) && other.has(a.role)),
  );
  if (row === undefined) return null;
  const { rule } = row;
  if (rule === "undersize")
    return { room: mm(undersizes([a, b], facts.layout)), source: UNDERSIZE };
  const { limit, source } = houseLimit(facts, rule);
  return { room: limit, source };
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
  readonly rule: HouseRule | "undersize";
}

const UNDERSIZE: LimitSource = {
  kind: "geometry",
  name: "what the mount cuts its panels under nominal",
};

const SWEEP_ROOM: HouseRule = {
  key: "sweep-room",
  usual: 3,
  name: "3 mm from a lever or a knob to what stands beside it (common practice)",
};

const BUILT_IN_ROOM: HouseRule = {
  key: "built-in-room",
  usual: 2,
  name: "2 mm from a body to wood and to what is built in (common practice)",
};

const NEIGHBOUR_ROOM: HouseRule = {
  key: "neighbour-room",
  usual: 1,
  name: "1 mm from a body to a neighbour's and to a rail (common practice)",
};

/** The first that fits counts. Plugs and cables stand in none: their room is judged by `fit/plug-room`. */
const ROWS: readonly Row[] = [
  { one: SWEEP, other: ANY, rule: SWEEP_ROOM },
  { one: SHEET, other: new Set([...SHEET, ...CONSOLE]), rule: "undersize" },
  { one: BODY, other: CONSOLE, rule: BUILT_IN_ROOM },
  { one: BODY, other: new Set([...BODY, ...SHEET, ...RAIL]), rule: NEIGHBOUR_ROOM },
];

/** How far gaps are searched for: as far as anything of this console is asked to stay away, and never less than usual. */
export const searchedWithin = (facts: NearFacts): Mm => {
  const [largest = 0, next = 0] = facts.layout.panels
    .map(({ layout }) => layout.mount.undersize)
    .toSorted((a, b) => b - a);
  const rules = ROWS.flatMap(({ rule }) =>
    rule === "undersize" ? [] : [houseLimit(facts, rule).limit],
  );
  return mm(Math.max(searchLength, largest + next, ...rules));
};

const undersizes = (bodies: readonly ConsoleBody[], { panels }: ConsoleLayout): number =>
  bodies.reduce(
    (sum, { panel }) =>
      sum + (panels.find(({ name }) => name === panel)?.layout.mount.undersize ?? 0),
    0,
  );
