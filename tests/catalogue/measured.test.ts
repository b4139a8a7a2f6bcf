// Readings from the bench: `measured:` in a file of parts, and over a component of a panel.

import { expect, test } from "vitest";
import { numberPaths, pathOf } from "../../src/catalogue/field-path.ts";
import { catalogueWith, partAsMeasured } from "../../src/catalogue/library.ts";
import { readOwnRecords, unknownPaths } from "../../src/catalogue/own-records.ts";
import type { Part } from "../../src/catalogue/part.ts";
import { type CatalogueRecord, recordsById } from "../../src/catalogue/record.ts";
import { measurablePaths, recordAsMeasured } from "../../src/catalogue/record-as-measured.ts";
import type { MeasuredDesign } from "../../src/design/panel-design.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { testLibrary } from "../support/test-library.ts";

const { catalogue } = testLibrary();
const part = (id: string): Part => catalogue.parts.get(id)!;
const read = (measured: string) =>
  readOwnRecords(
    "my-parts.yaml",
    `consolewright: 1\nkind: parts\nname: mine\n\nmeasured:\n${measured}\n`,
    catalogue,
  );
const one = (measured: string): CatalogueRecord => {
  const { records, findings } = read(measured);
  expect(findings).toEqual([]);
  expect(records).toHaveLength(1);
  return records[0]!;
};

const reading = (path: string, value: number): MeasuredDesign => ({
  values: { [path]: mm(value) },
  dated: "2026-10-02",
  written: { span: { file: "", start: 0, end: 0 }, keys: {} },
});

test("a reading takes the figure's place, says when, and is no longer asked for", () => {
  const toggle = one(
    "  toggle-12: { hold.length: 9.2 mm, bodies.case.from: -26.1 mm, dated: 2026-10-02 }",
  );
  expect(toggle).toMatchObject({ id: "toggle-12", hold: { length: 9.2 } });
  expect(toggle.kind === "part" && toggle.bodies.find(({ role }) => role === "case")?.from).toBe(
    -26.1,
  );
  expect(toggle.figures.exceptions["bodies.case.from"]).toEqual({
    source: "measured 2026-10-02",
    kind: "measured",
  });
  expect(toggle.figures.measureFirst).toEqual(["hold.diameter"]);
});

test("inches, zero and what lies behind the seat may be read off a caliper", () => {
  const jack = one(
    "  xlr-3: { hold.holes.0.at.x: -3/8 in, hold.holes.1.at.y: 0 mm, bodies.case.from: -22.4, dated: 2026-10-02 }",
  );
  expect(jack).toMatchObject({ hold: { holes: [{ at: { x: -9.525 } }, { at: { y: 0 } }] } });
});

test("what is measured once holds for every panel, over the built-in record", () => {
  const { records } = read("  toggle-12: { hold.length: 9.2 mm, dated: 2026-10-02 }");
  const joined = catalogueWith(catalogue, records);
  expect(joined.parts.get("toggle-12")?.hold).toMatchObject({ length: 9.2 });
  expect(joined.parts.size).toBe(catalogue.parts.size);
});

test("knobs, mounts, boards and inserts are measured as parts are", () => {
  const { records, findings } = read(`  knob-16: { bore-depth: 11.4 mm, dated: 2026-10-02 }
  console-rail: { seat: 9.8 mm, clear-width: 126.4 mm, dated: 2026-10-02 }
  avr-328-68x53: { connectors.usb.overhang: 6.1 mm, dated: 2026-10-02 }
  insert-m3: { outside: 4.7 mm, dated: 2026-10-02 }`);
  expect(findings).toEqual([]);
  const joined = catalogueWith(catalogue, records);
  expect(joined.hardware.get("knob-16")).toMatchObject({ boreDepth: 11.4 });
  expect(joined.mounts.get("console-rail")).toMatchObject({ seat: 9.8, clearWidth: 126.4 });
  expect(joined.mounts.get("console-rail")?.figures.measureFirst).toEqual(["holes.first"]);
  expect(joined.boards.get("avr-328-68x53")?.connectors[0]?.overhang).toBe(6.1);
  expect(joined.boards.get("avr-328-68x53")?.figures.measureFirst).toEqual(["head-limit"]);
  expect(joined.inserts.get("insert-m3")?.outside).toBe(4.7);
});

test("a strip is measured over its cuts, and its pitch follows", () => {
  const strip = one("  strip-60-12v: { cut-every: 50.4 mm, dated: 2026-10-02 }");
  expect(strip).toMatchObject({ cutEvery: 50.4 });
  expect(strip.kind === "strip" && strip.pitch).toBeCloseTo(16.8, 9);
  const { findings } = read("  strip-60-12v: { pitch: 16.8 mm, dated: 2026-10-02 }");
  expect(findings.map(({ code }) => code)).toEqual(["catalogue/measured-unknown"]);
});

test("a reading on a record of the same file goes over that record", () => {
  const { records, findings } = readOwnRecords(
    "my-parts.yaml",
    `consolewright: 1
kind: parts
name: mine
caps:
  cap-8-round:
    title: Cap from the drawer
    shape: { round: 8 }
    height: 4
    figures: { source: "from memory, unverified", kind: memory }
measured:
  cap-8-round: { shape.diameter: 7.9 mm, dated: 2026-10-02 }
`,
    catalogue,
  );
  expect(findings).toEqual([]);
  expect(catalogueWith(catalogue, records).hardware.get("cap-8-round")).toMatchObject({
    shape: { diameter: 7.9 },
  });
});

test("a reading for nothing, and one at no size, are findings with their place and the nearest names", () => {
  const { records, findings } = read(`  toggle-21: { hold.length: 9.2 mm, dated: 2026-10-02 }
  toggle-12: { hold.lenght: 9.2 mm, hold.diameter: 11.8 mm, dated: 2026-10-02 }`);
  expect(findings.map(({ code, severity }) => `${severity} ${code}`)).toEqual([
    "fault catalogue/measured-unknown",
    "fault catalogue/measured-unknown",
  ]);
  expect(findings[0]?.message).toContain("toggle-12");
  expect(findings[1]?.message).toContain("hold.length");
  expect(records).toHaveLength(1);
  expect(records[0]).toMatchObject({ id: "toggle-12", hold: { diameter: 11.8, length: 10.9 } });
});

test("a reading without a date is asked for it", () => {
  const { records, findings } = read("  toggle-12: { hold.length: 9.2 mm }");
  expect(findings).toHaveLength(1);
  expect(findings[0]?.message).toContain("dated");
  expect(records[0]?.figures.exceptions["hold.length"]?.source).toBe("measured");
});

test("what is worked out from other figures takes no reading of its own", () => {
  const toggle = part("toggle-12");
  for (const path of ["bodies.bush.to", "bodies.lever.from", "bodies.4.to"])
    expect(unknownPaths(toggle, reading(path, 9)), path).toHaveLength(1);
  expect(measurablePaths(toggle)).toContain("bodies.case.from");
});

test("spellings of one path mean one figure", () => {
  const servo = part("servo-9g-needle");
  expect(pathOf(servo, "hold.standOff")).toBe("hold.stand-off");
  expect(pathOf(servo, "bodies.3.to")).toBe("bodies.needle.to");
  expect(pathOf(servo, "bodies.1.to")).toBe("bodies.1.to");
  expect(pathOf(servo, "no.such.thing")).toBe("no.such.thing");
  for (const path of ["hold.standOff", "hold.stand-off"]) {
    expect(unknownPaths(servo, reading(path, 8)), path).toEqual([]);
    const measured = partAsMeasured(servo, reading(path, 8));
    expect(measured.hold, path).toMatchObject({ standOff: 8 });
    expect(measured.figures.measureFirst, path).not.toContain("hold.stand-off");
  }
});

test("every figure of every record that is to be measured first takes a reading, and only it", () => {
  let count = 0;
  for (const record of recordsById(catalogue).values())
    for (const path of record.figures.measureFirst) {
      count += 1;
      expect(measurablePaths(record), `${record.id} ${path}`).toContain(pathOf(record, path));
      for (const value of [5.125, -5.125]) {
        const measured = recordAsMeasured(record, reading(path, value));
        expect(valueAt(measured, path), `${record.id} ${path}`).toBe(value);
        expect(measured.figures.measureFirst).not.toContain(path);
      }
    }
  expect(count).toBeGreaterThan(100);
});

/** The number at a path by way of the list of all of them, without the lookup that put it there. */
const valueAt = (record: CatalogueRecord, path: string): number | undefined => {
  const index = numberPaths(record).indexOf(pathOf(record, path));
  return numbersIn(record)[index];
};

const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};
