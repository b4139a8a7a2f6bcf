// A step of a drag against the same question asked of every pair, one by one, without boxes and without an order; and against
// the full verdict of the console laid out anew with the panel where it was dropped.

import { expect, test } from "vitest";
import { bodyGroups } from "../../src/fit/body-groups.ts";
import { isLyingOn } from "../../src/fit/by-design.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { type DragFact, dragStep } from "../../src/fit/drag-step.ts";
import { searchLength, touchDepth } from "../../src/fit/fit-tolerance.ts";
import { hullRelation } from "../../src/fit/hull-relation.ts";
import { hasLatch } from "../../src/fit/latch-facts.ts";
import { railScene } from "../../src/fit/rail-scene.ts";
import { prepareBodies, verdict } from "../../src/fit/verdict.ts";
import { movedFrame } from "../../src/geometry/space/frame.ts";
import { scaled } from "../../src/geometry/space/vector.ts";
import { openKernel } from "../support/kernel.ts";
import { consoleOf, type TestConsole } from "./console-of.ts";

/** A bay that rises and is canted, so that nothing in it is square in the console; a shelf beside it that is. */
const desk = (module: number): TestConsole =>
  consoleOf(
    `bays:
  aft: { mount: console-rail, at: [0, 0, 700], along: [1, 0.2, 0.3], length: 60 modules, depth: 150 mm }
panels:
  - { file: one.yaml, as: one, bay: aft, module: 0 }
  - { file: two.yaml, as: two, bay: aft, module: ${module} }
  - { file: three.yaml, as: three, bay: aft, module: 36 }
obstacles:
  - { name: shelf, box: [200, 200, 10], at: [260, 0, 690] }
`,
    {
      one: "components:\n  a: { part: toggle-6, at: { x: centre, top: 14 mm } }\n",
      two: "components:\n  b: { part: toggle-6, at: { x: centre, bottom: 14 mm } }\n  c: { part: push-button-16, at: { x: centre, y: centre } }\n",
      three: "components:\n  d: { part: pot-16, knob: knob-22-skirt, at: centre }\n",
    },
  );

const PITCH = 9.525;
const STANDS = 14;

const stepOf = ({ layout, bodies }: TestConsole, by: number): readonly DragFact[] =>
  dragStep(railScene(bodyGroups(bodies), layout.bays[0]!.frame), { panel: "two", by });

const told = (facts: readonly Pick<DragFact, "a" | "b" | "relation">[]): readonly string[] =>
  facts
    .map(({ a, b, relation }) => {
      const gap = relation.kind === "apart" ? ` ${relation.gap.toFixed(6)}` : "";
      return `${a.id} and ${b.id}: ${relation.kind}${gap}`;
    })
    .sort();

const asked = ({ layout, bodies }: TestConsole, by: number): readonly string[] => {
  const along = scaled(layout.bays[0]!.frame.y, by);
  const own = bodies
    .filter(({ panel }) => panel === "two")
    .map((body): ConsoleBody => ({ ...body, frame: movedFrame(body.frame, along) }));
  return told(
    bodies
      .filter(({ panel }) => panel !== "two")
      .flatMap((other) => own.map((body) => (body.id < other.id ? [body, other] : [other, body])))
      .flatMap(([a, b]) => {
        if (a === undefined || b === undefined || hasLatch({ a, b })) return [];
        const relation = hullRelation(a, b, searchLength);
        return relation === null || (relation.kind !== "meet" && isLyingOn(a, b))
          ? []
          : [{ a, b, relation }];
      }),
  );
};

test.each([0, 1, 3, 8, 12, 16, -1, -2, -4, -9])(
  "a panel moved by %i modules meets what every pair asked by itself says",
  (modules) => {
    const console = desk(STANDS);
    const found = told(stepOf(console, modules * PITCH));
    expect(found).toEqual(asked(console, modules * PITCH));
  },
);

test("some of these steps clash, some touch nothing", () => {
  const kinds = (modules: number): ReadonlySet<string> =>
    new Set(stepOf(desk(STANDS), modules * PITCH).map(({ relation }) => relation.kind));
  expect(kinds(-9)).toContain("meet");
  expect(kinds(0)).not.toContain("meet");
  expect(kinds(-4)).toContain("apart");
});

test("nothing of the console itself is moved or written over", () => {
  const console = desk(STANDS);
  const before = JSON.stringify(console.bodies.map(({ id, frame, box }) => ({ id, frame, box })));
  stepOf(console, -9 * PITCH);
  expect(JSON.stringify(console.bodies.map(({ id, frame, box }) => ({ id, frame, box })))).toBe(
    before,
  );
});

// What a drop writes is laid out and judged anew: whatever the drag left out must not have been a clash or a nearer gap.
test.each([-4, 12])(
  "dropped %i modules on, the verdict finds no clash and no nearer gap than the drag did",
  async (modules) => {
    const dropped = desk(STANDS + modules);
    const prepared = prepareBodies(dropped.bodies, await openKernel());
    const settled = verdict(prepared, dropped.layout).pairs.filter(
      ({ a, b }) => a.panel === "two" || b.panel === "two",
    );
    prepared.delete();
    const dragged = new Map(
      stepOf(desk(STANDS), modules * PITCH).map((fact) => [`${fact.a.id} ${fact.b.id}`, fact]),
    );
    expect(settled.length).toBeGreaterThan(0);
    for (const { a, b, relation } of settled) {
      const coarse = dragged.get(`${a.id} ${b.id}`)?.relation;
      if (coarse === undefined) throw new Error(`the drag does not know ${a.id} and ${b.id}`);
      if (relation.kind === "clash") expect(coarse.kind).toBe("meet");
      if (relation.kind !== "apart" || coarse.kind !== "apart") continue;
      expect(coarse.gap).toBeLessThanOrEqual(relation.gap + touchDepth);
    }
  },
);
