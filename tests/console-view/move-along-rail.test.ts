// A panel moved along its rail: what it meets, with numbers that a rule would give, and what a drop writes into the text.

import { describe, expect, test } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { compile } from "../../src/project.ts";
import type { Settlement } from "../../viewer/console/console-messages.ts";
import { consoleScene } from "../../viewer/console/console-scene.ts";
import { dragReading, standingConsole } from "../../viewer/console/drag-reading.ts";
import { followersOf } from "../../viewer/console/followers.ts";
import { settlement } from "../../viewer/console/settlement.ts";
import { consoleOf, panelOf, type TestConsole } from "../fit/console-of.ts";
import { testLibrary } from "../support/test-library.ts";

const BAY = `bays:
  aft: { mount: console-rail, at: [0, 0, 700], along: [1, 0, 0], length: 60 modules, depth: 150 mm }
`;
const LINES = `${BAY}panels:
  - { file: one.yaml, as: one, bay: aft, module: 0 }  # stays
  - { file: two.yaml, as: two, bay: aft, module: 12 }
  - { file: three.yaml, as: three, bay: aft, after: two }
  - { file: four.yaml, as: four, bay: aft }
`;
const EMPTY = {
  one: "components: {}\n",
  two: "components: {}\n",
  three: "components: {}\n",
  four: "components: {}\n",
};

const desk = (): TestConsole => consoleOf(LINES, EMPTY);

const settled = (console: TestConsole, panel: string, module: number): Settlement =>
  settlement(console.layout, source("console.yaml", console.texts.get("console.yaml")!), {
    panel,
    module,
  });

describe("what follows", () => {
  test("a panel moves what is written after it, and what says no place of its own", () =>
    expect(followersOf(desk().layout, "two").map(({ name }) => name)).toEqual(["three", "four"]));
  test("a panel at a module of its own follows nobody", () =>
    expect(followersOf(desk().layout, "one")).toEqual([]));
});

describe("a step of a drag", () => {
  const at = (module: number) => {
    const { layout, bodies } = desk();
    const reading = dragReading(standingConsole(layout, bodies), { panel: "two", module });
    if (reading === null) throw new Error("two stands on a rail");
    return reading;
  };

  test("a panel brought into its neighbour clashes by what a rule would measure", () => {
    // 10 modules of 3/8 in each, less the undersize of both ends: MS25212, as the mount's record has it.
    const { mount, outline } = panelOf(desk(), "one").layout;
    const ends = outline.kind === "loop" ? outline.vertices.map(({ y }) => y) : [];
    const under = (10 * 9.525 - (Math.max(...ends) - Math.min(...ends))) / 2;
    expect(mount.id).toBe("console-rail");
    const [worst] = at(9).meetings;
    expect(worst).toMatchObject({ kind: "clash" });
    expect(worst?.length).toBeCloseTo(9.525 - 2 * under, 6);
    expect([worst?.a.group, worst?.b.group].sort()).toEqual(["one", "two"]);
  });

  test("a panel in free rails meets nothing, and takes its followers along", () => {
    const reading = at(14);
    expect(reading.meetings.filter(({ kind }) => kind === "clash")).toEqual([]);
    expect(reading.frames.map(({ panel }) => panel)).toEqual(["two", "three", "four"]);
    const moved = reading.frames[2]!.frame.origin.x - panelOf(desk(), "four").frame.origin.x;
    expect(moved).toBeCloseTo(2 * 9.525, 9);
  });

  test("over the end of the bay is told in modules: 12 + 30 + 20 are 2 more than 60", () =>
    expect(at(32).over).toBeCloseTo(2, 9));

  test("the gap to a neighbour is what a feeler gauge would find", () => {
    const [near] = at(10).meetings.filter(({ kind }) => kind === "near");
    expect(near?.length).toBeGreaterThan(0);
    expect(near?.length).toBeLessThan(1.5);
  });
});

describe("what a drop writes", () => {
  const written = (
    console: TestConsole,
    edit: Parameters<typeof applyEdits>[1][number],
  ): string => {
    const result = applyEdits(console.texts.get("console.yaml")!, [edit]);
    if (result.kind === "refused") throw new Error(result.why);
    return result.text;
  };

  test("one edit of the module where there is one, and nothing else of the text", () => {
    const console = desk();
    const outcome = settled(console, "two", 15);
    if (outcome.kind !== "edit") throw new Error(outcome.kind);
    expect(written(console, outcome.edit)).toBe(
      console.texts.get("console.yaml")!.replace("module: 12", "module: 15"),
    );
  });

  test("a module of its own for a panel that said none", () => {
    const console = desk();
    const outcome = settled(console, "four", 45);
    if (outcome.kind !== "edit") throw new Error(outcome.kind);
    const text = written(console, outcome.edit);
    expect(text).toContain("as: four, bay: aft, module: 45 }");
    const read = compile(
      { entry: "console.yaml", files: new Map([...console.texts, ["console.yaml", text]]) },
      testLibrary(),
    );
    const place = read.console?.layout.panels.find(({ name }) => name === "four")?.place;
    expect(place).toMatchObject({ module: 45 });
  });

  test("a choice for a panel that follows another, each of which does what it says", () => {
    const console = desk();
    const outcome = settled(console, "three", 10);
    if (outcome.kind !== "choice") throw new Error(outcome.kind);
    expect(outcome.options.map(({ words }) => words)).toEqual([
      "Stand behind one",
      "Set free at module 10",
    ]);
    for (const { edit } of outcome.options) {
      const files = new Map([...console.texts, ["console.yaml", written(console, edit)]]);
      const read = compile({ entry: "console.yaml", files }, testLibrary());
      const place = read.console?.layout.panels.find(({ name }) => name === "three")?.place;
      expect(place).toMatchObject({ module: 10 });
    }
  });

  test("nothing where it was put back, and a reason before the beginning of the rails", () => {
    expect(settled(desk(), "two", 12)).toEqual({ kind: "nothing" });
    expect(settled(desk(), "two", -1).kind).toBe("refused");
  });
});

describe("what the page is sent", () => {
  const sent = (console: TestConsole, before: ReadonlyMap<string, string> = new Map()) =>
    consoleScene(console.layout, console.bodies, { sent: before, trueShape: () => null });

  test("shapes once, and only frames for a panel that has moved", () => {
    const first = sent(desk());
    const moved = sent(consoleOf(LINES.replace("module: 12", "module: 20"), EMPTY), first.sent);
    expect(first.scene.groups.every(({ lots }) => lots !== null)).toBe(true);
    const lots = new Map(moved.scene.groups.map((group) => [group.key, group.lots]));
    for (const name of ["one", "two", "three", "four"]) expect(lots.get(name)).toBeNull();
    const frameOf = (made: typeof first): number =>
      made.scene.groups.find(({ key }) => key === "two")!.frame.origin.x;
    expect(frameOf(moved) - frameOf(first)).toBeCloseTo(8 * 9.525, 9);
  });

  test("a panel that has changed is sent again, and no other", () => {
    const first = sent(desk());
    const changed = consoleOf(LINES, {
      ...EMPTY,
      two: "components:\n  start: { part: push-button-16, at: centre }\n",
    });
    const again = sent(changed, first.sent).scene.groups.filter(({ lots }) => lots !== null);
    expect(again.map(({ key }) => key)).toEqual(["two"]);
    expect(again[0]?.bodies.map(({ what }) => what)).toContain("button");
  });
});
