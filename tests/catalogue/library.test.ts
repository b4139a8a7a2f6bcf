import { expect, test } from "vitest";
import { buildLibrary } from "../../scripts/build-library.ts";
import { catalogueWith, openLibrary, partAsMeasured } from "../../src/catalogue/library.ts";
import { lintRecord } from "../../src/catalogue/lint.ts";
import type { Part } from "../../src/catalogue/part.ts";
import { recordsById } from "../../src/catalogue/record.ts";
import { machineVerdict } from "../../src/catalogue/verdict.ts";
import type { MeasuredDesign } from "../../src/design/panel-design.ts";
import { type Mm, mm } from "../../src/geometry/quantity.ts";
import { testLibrary } from "../support/test-library.ts";

const library = testLibrary();
const { catalogue } = library;
const part = (id: string): Part => catalogue.parts.get(id)!;
const span = { file: "", start: 0, end: 0 };

const measured = (values: Readonly<Record<string, number>>): MeasuredDesign => ({
  values: Object.fromEntries(
    Object.entries(values).map(([path, value]): [string, Mm] => [path, mm(value)]),
  ),
  dated: "2026-10-02",
  written: { span, keys: {} },
});

test("the same sources give the same bytes, and the version changes with them", () => {
  const again = buildLibrary();
  expect(JSON.stringify(again)).toBe(JSON.stringify(buildLibrary()));
  expect(again.version).toBe(library.version);
});

test("every map is in the order of its names, and nothing is lost on the way", () => {
  const data = buildLibrary();
  expect(recordsById(catalogue).size).toBe(data.records.length);
  for (const records of Object.values(catalogue)) {
    const names = [...records.keys()];
    expect(names).toEqual(names.toSorted());
  }
});

test("the fonts of the library are there, each with its licence", () => {
  const data = buildLibrary();
  expect([...library.lettering.faces.keys()].toSorted()).toEqual(data.fonts.map(({ id }) => id));
  for (const font of data.fonts) expect(font.licence, font.id).toMatch(/Open Font License/i);
});

test("what no build wrote is refused", () => {
  for (const foreign of [
    null,
    1,
    "library",
    {},
    { format: "consolewright-library-0", records: [] },
  ])
    expect(() => openLibrary(foreign)).toThrow();
});

test("a record of one's own goes over the built-in one, and into its order", () => {
  const mine: Part = { ...part("toggle-12"), title: "The toggle in my drawer" };
  const other: Part = { ...part("toggle-12"), id: "aaa-toggle" };
  const joined = catalogueWith(catalogue, [mine, other]);
  expect(joined.parts.get("toggle-12")?.title).toBe("The toggle in my drawer");
  expect([...joined.parts.keys()][0]).toBe("aaa-toggle");
  expect(catalogue.parts.get("toggle-12")?.title).not.toBe("The toggle in my drawer");
});

test("a measured thread moves the bush, and is no longer asked for", () => {
  const before = part("toggle-12");
  const after = partAsMeasured(before, measured({ "hold.length": 9.2 }));
  expect(after.hold).toMatchObject({ length: 9.2 });
  expect(after.bodies.find(({ role }) => role === "bush")).toMatchObject({ from: 0, to: 9.2 });
  expect(after.bodies.find(({ role }) => role === "lever")?.from).toBe(9.2);
  expect(after.figures.exceptions["hold.length"]).toEqual({
    source: "measured 2026-10-02",
    kind: "measured",
  });
  expect(before.figures.measureFirst).toContain("hold.length");
  expect(after.figures.measureFirst).not.toContain("hold.length");
  expect(before.hold).toMatchObject({ length: 10.9 });
});

test("a measured bush is what has to enter the hole", () => {
  const after = partAsMeasured(part("toggle-12"), measured({ "hold.diameter": 11.85 }));
  expect(after.openings.passes).toEqual({ kind: "round", diameter: 11.85 });
  expect(after.bodies.find(({ role }) => role === "bush")?.shape).toEqual(after.openings.passes);
});

test("bodies are named by role, screw holes by number, keys in the text's spelling", () => {
  const servo = partAsMeasured(
    part("servo-9g-needle"),
    measured({ "hold.stand-off": 8.1, "hold.holes.0.at.y": 8.4, "bodies.needle.to": 18 }),
  );
  expect(servo.hold).toMatchObject({ standOff: 8.1, holes: [{ at: { x: 0, y: 8.4 } }, {}] });
  expect(servo.bodies.find(({ role }) => role === "needle")?.to).toBe(18);
});

test("a path that leads to no number changes nothing", () => {
  const { figures: _figures, ...before } = part("toggle-12");
  const { figures: _other, ...after } = partAsMeasured(
    part("toggle-12"),
    measured({ "hold.thread": 3, "hold.colour": 3, nothing: 3 }),
  );
  expect(after).toEqual(before);
});

test("a part measured as its record says is still the same sound part", () => {
  const before = part("pot-16");
  const after = partAsMeasured(before, measured({ "hold.length": 8, "shaft.length": 20 }));
  expect(after.bodies).toEqual(before.bodies);
  expect(lintRecord(after, catalogue)).toEqual([]);
});

// A blue diode laser passes through clear acrylic: common practice of every owner of one.
test("what light does in a stock decides what a diode laser does to it", () => {
  const verdict = (stock: string, machine: "diode-laser" | "co2-laser") =>
    machineVerdict(catalogue.stock.get(stock)!, machine, catalogue)?.verdict;
  expect(verdict("clear-acrylic-3", "diode-laser")).toBe("cannot");
  expect(verdict("black-acrylic-3", "diode-laser")).toBe("try");
  expect(verdict("clear-acrylic-3", "co2-laser")).toBe("can");
  expect(verdict("aluminium-2", "co2-laser")).toBe("cannot");
});
