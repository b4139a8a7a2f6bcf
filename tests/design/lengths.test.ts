// Lengths, sizes, angles: exact from any spelling, against sizes that standards give in inches and millimetres.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Field } from "../../src/design/field.ts";
import { length } from "../../src/design/length-fields.ts";
import { usualUnit } from "../../src/design/length-text.ts";
import { angle, count, number } from "../../src/design/number-fields.ts";
import { numberText } from "../../src/design/number-text.ts";
import { size } from "../../src/design/size-fields.ts";
import { source } from "../../src/design/source.ts";
import { readPanel } from "./reading.ts";

const readingOf = <Value>(field: Field<Value>, text: string): ReturnType<Field<Value>["read"]> => {
  const from = source("f.yaml", text);
  const span = { file: "f.yaml", start: 0, end: text.length };
  return field.read({ kind: "scalar", text, style: "plain", span, path: "a", eaten: null }, from);
};

const LENGTH = length("a length");

const lengthOf = (text: string): number | string => {
  const reading = readingOf(LENGTH, text);
  return reading.kind === "read" ? reading.value.mm : (reading.findings[0]?.code ?? "");
};

describe("a length", () => {
  // MS25212 and MIL-F-25173A (console panels: width 5.750 in, pitch 3/8 in, stud columns 5 3/8 in);
  // IEC 60297-3-100 (19 in, unit of 1.75 in); instrument holes of 2 1/4 and 3 1/8 in: common practice.
  test.each([
    ["5 3/4 in", 146.05],
    ["5.75 in", 146.05],
    ['5.750"', 146.05],
    ['5-3/4"', 146.05],
    ["3/8 in", 9.525],
    ["5 3/8 in", 136.525],
    ["2 1/4 in", 57.15],
    ["3 1/8 in", 79.375],
    ["19 in", 482.6],
    ["1.75 in", 44.45],
  ])("of %s is that of the standard in millimetres", (text, millimetres) => {
    expect(lengthOf(text)).toBe(millimetres);
    expect(lengthOf(`${millimetres} mm`)).toBe(millimetres);
    expect(lengthOf(`${millimetres}`)).toBe(millimetres);
    expect(lengthOf(`-${text}`)).toBe(-millimetres);
  });

  test.each([
    ["12.5", 12.5],
    ["12.5mm", 12.5],
    ["+12.5 mm", 12.5],
    [".5 mm", 0.5],
    ["1.2 cm", 12],
    ["0.65 m", 650],
    ["3/8 mm", 0.375],
    ["0.001 in", 0.0254],
    ["-0", 0],
    // A third of an inch is 8.4666..., rounded once to a nanometre.
    ["1/3 in", 8.466667],
    ["0.0000005 mm", 0.000001],
    ["0.00000049 mm", 0],
  ])("of %s is %d mm", (text, millimetres) => expect(lengthOf(text)).toBe(millimetres));

  test("is the same number from every spelling of a whole number of 64ths of an inch", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 * 60 }), (sixtyFourths) => {
        const whole = Math.floor(sixtyFourths / 64);
        const fraction = lengthOf(`${whole} ${sixtyFourths % 64}/64 in`);
        // 64ths end after six decimals, and so do their millimetres: 25.4 / 64 = 0.396875.
        expect(fraction).toBe(lengthOf(`${(sixtyFourths / 64).toFixed(6)} in`));
        expect(fraction).toBe(lengthOf(`${((sixtyFourths * 396875) / 1e6).toFixed(6)} mm`));
      }),
    );
  });

  test("of whole nanometres is the double nearest to its decimal text", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e11, max: 1e11 }), (nanometres) => {
        const sign = nanometres < 0 ? "-" : "";
        const digits = String(Math.abs(nanometres)).padStart(7, "0");
        const text = `${sign}${digits.slice(0, -6)}.${digits.slice(-6)}`;
        expect(lengthOf(text)).toBe(Number(text) + 0);
      }),
    );
  });
});

describe("a length written", () => {
  test.each([
    ["1e1 mm", "10 mm"],
    ["-1.25e1", "-12.5"],
    ["2.50E+3 mm", "2500 mm"],
    [".5e2", "50"],
    ["12e-1 cm", "1.2 cm"],
    // JavaScript's own numbers would be written with an exponent here, and with fewer figures below.
    ["25e-7 m", "0.0000025 m"],
    ["1.23456789012345678e1 mm", "12.3456789012345678 mm"],
  ])("with an exponent, %s, is offered %s", (text, plain) => {
    const [found] = readingOf(LENGTH, text).findings;
    expect(found?.code).toBe("design/exponent");
    expect(found?.message).toContain(`write ${plain}`);
    expect(found?.remedies.map(({ edits }) => edits.map((edit) => edit.text))).toEqual([[plain]]);
    expect(lengthOf(plain)).toEqual(expect.any(Number));
  });

  test.each([
    ["1 000", "1000"],
    ["1,250.5", "1250.5"],
    ["1.250,5 mm", "1250.5 mm"],
    ["12'000 mm", "12000 mm"],
    ["1_000_000 mm", "1000000 mm"],
    ["1,000,000.25 mm", "1000000.25 mm"],
    ["-1 234 mm", "-1234 mm"],
  ])("with its thousands apart, %s, is offered %s", (text, plain) => {
    const [found] = readingOf(LENGTH, text).findings;
    expect(found?.message).toContain(`are parted; write ${plain}`);
    expect(found?.remedies.map(({ edits }) => edits.map((edit) => edit.text))).toEqual([[plain]]);
    expect(numberText(plain.replace(/ mm$/, "")).kind).toBe("number");
  });

  test.each(["1/0 in", "NaN", "12..5", "1e309 mm", "1".repeat(60), "0x10", "1,2,3", "1 00 mm"])(
    "as nothing that is a number, %s, is told how one is written",
    (text) => {
      const [found] = readingOf(LENGTH, text).findings;
      expect(found?.message).toContain("like 12.5 mm or 3/8 in");
      expect(found?.remedies).toEqual([]);
    },
  );

  test.each([
    ["1e9 mm", "must be at most 100000 mm"],
    ["1e22 mm", "must be at most 100000 mm"],
    ["1e309 mm", "write its figures out"],
  ])("that no plain number would make right, %s, is offered none", (text, said) => {
    const [found] = readingOf(LENGTH, text).findings;
    expect(found?.message).toContain(said);
    expect(found?.remedies).toEqual([]);
  });
});

// By hand: a foot is 12 in (305 mm less 0.2), a thousandth of an inch 0.0254 mm, a micrometre 0.001 mm.
test.each([
  ["3 ft", "36 in", 914.4],
  ["1/2'", "6 in", 152.4],
  ["50 thou", "0.05 in", 1.27],
  ["80 µm", "0.08 mm", 0.08],
  ["3/8 inch", "3/8 in", 9.525],
  ["12 MM", "12 mm", 12],
])("the length %s is offered %s, which is as long", (text, meant, mm) => {
  const [found] = readingOf(LENGTH, text).findings;
  expect(found?.code).toBe("design/unknown-unit");
  expect(found?.message).toContain(`: write ${meant}`);
  expect(lengthOf(meant)).toBeCloseTo(mm, 9);
});

describe("what is no length", () => {
  test.each([
    ["3/8", "design/fraction-without-unit"],
    ["5 3/4", "design/fraction-without-unit"],
    ["12,5 mm", "design/comma-in-number"],
    ["1,250.5", "design/not-a-length"],
    ["1e3", "design/exponent"],
    ["1e309 mm", "design/exponent"],
    ["NaN", "design/not-finite"],
    [".nan", "design/not-finite"],
    ["inf", "design/not-finite"],
    ["-Infinity", "design/not-finite"],
    ["1/0 in", "design/not-finite"],
    ["50 thou", "design/unknown-unit"],
    ["3 ft", "design/unknown-unit"],
    ["3'", "design/unknown-unit"],
    ["12 MM", "design/unknown-unit"],
    ["wide", "design/not-a-length"],
    ["12 mm 5", "design/not-a-length"],
    ["0x10", "design/not-a-length"],
    ["1_000", "design/not-a-length"],
    ["1.", "design/not-a-length"],
    ["--1", "design/not-a-length"],
    ["mm", "design/not-a-length"],
    ["\u22125 mm", "design/look-alike"],
    ["5\u00be in", "design/look-alike"],
    ["5\u00a03/4 in", "design/look-alike"],
    ["5\u201d", "design/look-alike"],
    ["100001", "design/out-of-range"],
    ["9".repeat(50), "design/out-of-range"],
  ])("is %s", (text, code) => expect(lengthOf(text)).toBe(code));

  test("because it is a bare fraction offers both readings", () => {
    const reading = readingOf(LENGTH, "3/8");
    expect(reading.findings[0]?.message).toContain("0.375 mm or 3/8 in");
    expect(reading.findings[0]?.remedies.map((remedy) => remedy.edits[0]?.text)).toEqual([
      "0.375 mm",
      "3/8 in",
    ]);
  });

  test("because it is out of bounds says which", () => {
    const some = length("a length", { above: 0 });
    expect(readingOf(some, "0").findings[0]?.code).toBe("design/out-of-range");
    expect(readingOf(some, "-3 mm").findings[0]?.message).toContain("must be more than 0 mm");
    expect(readingOf(some, "0.000001").kind).toBe("read");
  });
});

describe("a size", () => {
  test.each([
    ["11 modules", { kind: "pitches", count: 11, unit: "modules" }],
    ["1 module", { kind: "pitches", count: 1, unit: "modules" }],
    ["3 U", { kind: "pitches", count: 3, unit: "U" }],
    ["42HP", { kind: "pitches", count: 42, unit: "HP" }],
    ["2 1/4 in", { kind: "length", mm: 57.15, unit: "in" }],
    ["57.15", { kind: "length", mm: 57.15, unit: "mm" }],
  ])("of %s is kept as it was meant", (text, value) => {
    expect(readingOf(size("a size"), text)).toMatchObject({ kind: "read", value });
  });

  test("of a panel, beyond any length, is told the most that a panel has", () => {
    // 20 m are a length: the panel's layout says that they are too many.
    expect(readPanel("width: 20 m").findings).toEqual([]);
    for (const text of ["200 m", "1e6 mm"])
      expect(readPanel(`width: ${text}`).findings.map(({ message }) => message)).toEqual([
        `width: \`${text}\` must be at most 10000 mm`,
      ]);
  });

  test.each([
    ["11.5 modules", "design/not-a-count"],
    ["0 modules", "design/out-of-range"],
    ["5000 U", "design/out-of-range"],
    ["-3 mm", "design/out-of-range"],
    ["3 u", "design/unknown-unit"],
    ["tall", "design/not-a-size"],
    ["3/8", "design/fraction-without-unit"],
  ])("is not %s", (text, code) => {
    expect(readingOf(size("a size"), text).findings[0]?.code).toBe(code);
  });
});

describe("an angle", () => {
  test.each(["15", "15 deg", "15deg", "15°", "15 °", "+15"])("of %s is 15 degrees", (text) => {
    expect(readingOf(angle("an angle"), text)).toMatchObject({ kind: "read", value: 15 });
  });

  test.each([
    ["15º", "design/look-alike"],
    ["15˚", "design/look-alike"],
    ["0.2 rad", "design/unknown-unit"],
    ["400", "design/out-of-range"],
    ["quarter", "design/not-an-angle"],
    ["1,5°", "design/comma-in-number"],
  ])("is not %s", (text, code) => {
    expect(readingOf(angle("an angle"), text).findings[0]?.code).toBe(code);
  });
});

describe("bare numbers and counts", () => {
  test("are decimal and whole", () => {
    expect(readingOf(number("a number"), "-0.25")).toMatchObject({ value: -0.25 });
    expect(readingOf(count("a count"), "12")).toMatchObject({ value: 12 });
    expect(readingOf(count("a count"), "007")).toMatchObject({ value: 7 });
  });

  test.each([
    ["1/2", "read"],
    ["12 mm", "design/not-a-number"],
    ["1e2", "design/exponent"],
    ["true", "design/not-a-number"],
  ])("number %s", (text, outcome) => {
    const reading = readingOf(number("a number"), text);
    expect(reading.findings[0]?.code ?? reading.kind).toBe(outcome);
  });

  test.each([
    ["1e1", ["10"]],
    ["4.0", ["4"]],
    ["4,0", ["4"]],
    ["1 000", ["1000"]],
    ["2.5", ["2", "3"]],
    ["9999.5", ["9999"]],
    ["-0.5", ["0"]],
    ["2e9", []],
    ["two", []],
    ["0x4", []],
  ])("count %s is told the whole numbers %j", (text, meant) => {
    const [found] = readingOf(count("a count"), text).findings;
    expect(found?.code).toBe("design/not-a-count");
    expect(found?.message).toContain(
      meant.length === 0 ? "write it like 4" : `write ${meant.join(" or ")}`,
    );
    expect(found?.remedies.map(({ edits }) => edits[0]?.text)).toEqual(meant);
  });

  test.each([
    ["1e1 modules", ["10 modules"]],
    ["11.0 modules", ["11 modules"]],
    ["2.5 U", ["2 U", "3 U"]],
    ["0.5 HP", ["1 HP"]],
    ["-2 modules", []],
    ["many modules", []],
  ])("size %s is told the whole numbers %j", (text, meant) => {
    const [found] = readingOf(size("a size"), text).findings;
    expect(found?.code).toBe("design/not-a-count");
    expect(found?.message).toContain("from 1 to 1000; write ");
    expect(found?.remedies.map(({ edits }) => edits[0]?.text)).toEqual(meant);
  });

  test("a count is offered one that stands within its bounds", () => {
    const [found] = readingOf(count("a count", { least: 8, most: 99 }), "x").findings;
    expect(found?.message).toContain("write it like 8");
  });

  test.each(["2.5", "two", "-1", "99999999999", ""])("count %s is refused", (text) => {
    expect(readingOf(count("a count"), text).kind).toBe("unread");
  });
});

test("a file is in the unit that most of its lengths carry, whatever its legends end with", () => {
  const legends = ['"PUMP 2"', "'FLAP 15\"'", '"RANGE 3"', '"BAY 4"']
    .map((legend, index) => `  l${index}: { part: toggle-6, legend: ${legend} }\n`)
    .join("");
  expect(usualUnit(`width: 420 mm # 3 in\n${legends}`)).toBe("mm");
  expect(usualUnit('a: { x: 3/8 in, y: 5 3/4" }\nwidth: 146.05 mm\n')).toBe("in");
  expect(usualUnit("size: [4 in, 3 in]\nheight: 3 modules\n")).toBe("in");
});

test("lengths with a remark behind them, and those of a list a line each, count for a file's unit", () => {
  expect(usualUnit("width: 5 3/4 in # the usual one\nheight: 3 in # high\n")).toBe("in");
  expect(usualUnit("pitches:\n  - 3/8 in\n  - 5.75 in\nwidth: 146.05 mm\n")).toBe("in");
  expect(usualUnit("width: 3 in\nheight: 40 mm # 1.5 in\ndepth: 20 mm # here\n")).toBe("mm");
  // What stands in the remark is no length of the file.
  expect(usualUnit("height: 40 mm # was: 3 in, 4 in\n")).toBe("mm");
});
