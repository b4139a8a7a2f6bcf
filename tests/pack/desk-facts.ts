// Facts of fit for the tests of the report, made by hand: one of each kind, so that no other floor has to be right for them.

import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { FitFacts } from "../../src/fit/fit-facts.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { vector } from "../../src/geometry/space/vector.ts";

const span = { file: "console.yaml", start: 0, end: 10 };

/** `bodies`: some of the console's own, three or more. */
export const deskFacts = (bodies: readonly ConsoleBody[], name = "main"): FitFacts => {
  const [a, b, c] = bodies;
  if (a === undefined || b === undefined || c === undefined) throw new Error("three bodies");
  const found = { a, b, c, name };
  return { bodies, ...bodyFacts(found), ...serviceFacts(found), ...operatorFacts(found) };
};

interface Found {
  readonly a: ConsoleBody;
  readonly b: ConsoleBody;
  readonly c: ConsoleBody;
  readonly name: string;
}

const at = vector(100, -20, 690);

const bodyFacts = ({
  a,
  b,
  c,
}: Found): Pick<FitFacts, "pairs" | "outside" | "latches" | "depths" | "tolerances"> => ({
  pairs: [
    {
      a,
      b: c,
      relation: { kind: "clash", volume: 12.5, depth: mm(1.25), at, isWithin: false },
    },
    { a, b, relation: { kind: "apart", gap: mm(3.75), at } },
    { a: b, b: c, relation: { kind: "touching", at } },
  ],
  outside: [{ body: a, of: "envelope", volume: 40, depth: mm(2), at }],
  latches: [],
  tolerances: [
    {
      bay: "level",
      free: mm(76.2),
      worstCase: mm(0.5),
      rootSumSquare: mm(0.3),
      shares: [
        { what: "one", plusMinus: mm(0.25), by: "general" },
        { what: "two", plusMinus: mm(0.25), by: "general" },
      ],
    },
  ],
  depths: [{ panel: "one", bay: "level", has: mm(120), takes: mm(45.5), body: a }],
});

const serviceFacts = ({
  a,
  b,
  name,
}: Found): Pick<FitFacts, "lifts" | "drivers" | "loops" | "hands"> => ({
  lifts: [
    { panel: "one", way: { kind: "straight" }, blockers: [] },
    { panel: "two", way: { kind: "tilted", first: "low-end", tilt: degrees(20) }, blockers: [b] },
    { panel: "three", way: null, blockers: [a, b] },
  ],
  drivers: [
    {
      panel: "one",
      fastener: "stud 1",
      at,
      needs: { diameter: mm(8), length: mm(100) },
      met: { blocker: b, side: "length", free: mm(40) },
    },
  ],
  loops: [
    { panel: "one", has: mm(300), needs: mm(262), onto: "two", plug: null },
    { panel: "two", has: null, needs: mm(250), onto: null, plug: b },
  ],
  hands: [
    {
      a: { panel: "one", component: name, hand: "toggle", span },
      b: { panel: "two", component: "speed", hand: "knob", span },
      gap: mm(17),
      needs: mm(19),
      source: "NUREG-0700 Rev 3 Table 11.5",
    },
  ],
});

const operatorFacts = ({
  a,
  b,
  c,
  name,
}: Found): Pick<FitFacts, "reaches" | "sights" | "knees" | "frontEdges"> => ({
  reaches: [
    {
      panel: "one",
      component: name,
      isImportant: true,
      distance: mm(640.25),
      functional: mm(677),
      extended: mm(735),
      at,
      span,
    },
  ],
  sights: [
    {
      panel: "one",
      marking: `${name}/legend`,
      owner: name,
      isImportant: false,
      isAlerting: true,
      capHeight: mm(3.5),
      distance: mm(650),
      obliquity: degrees(31),
      arcMinutes: 15.9,
      eye: "large",
      hiddenBy: b,
      span,
    },
  ],
  knees: {
    width: { has: mm(560), by: [] },
    depthAtKnee: { has: mm(430), by: [c] },
    depthAtFoot: { has: mm(600), by: [] },
    height: { has: mm(650), by: [a, b] },
  },
  frontEdges: [
    { panel: "one", component: name, isImportant: true, distance: mm(88), further: 0, span },
  ],
});
