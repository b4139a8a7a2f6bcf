import { expect, test } from "vitest";
import { recordText } from "../../scripts/build-library.ts";
import { CATALOGUE_CODES } from "../../src/catalogue/codes.ts";
import { figureSource } from "../../src/catalogue/figure-source.ts";
import { readOwnRecords } from "../../src/catalogue/own-records.ts";
import { readRecords, recordsSchema } from "../../src/catalogue/read-records.ts";
import { testLibrary } from "../support/test-library.ts";

const { catalogue } = testLibrary();

const LAMP = `consolewright: 1
kind: parts
name: mine

parts:
  lamp-14:
    title: Lamp from the drawer
    family: lamp
    hand: none
    hold:
      by: bush
      seat: front
      thread: M14x1
      diameter: 14
      length: 12
      grip: [1, 8]
      nut: nut-m14
      washers: []
      spanner: 25
    openings: { clamp: { round: 14.2 }, covered: 15.8 }
    bodies:
      - { role: flange, round: 16.5, from: 0, to: 2 }
      - { role: tails, round: 6, from: -20, to: -12 }
    face: [{ round: 16.5 }]
    figures: { source: measured with calipers, kind: measured }

nuts:
  nut-m14:
    title: Nut of that lamp
    thread: M14x1
    across-flats: 17
    across-corners: 19.63
    thickness: 2.5
    figures: { source: measured with calipers, kind: measured }
`;

const read = (text: string) => readOwnRecords("my-parts.yaml", text, catalogue);
const lineOf = (text: string, offset: number) => text.slice(0, offset).split("\n").length;

test("a sound file of one's own: a part, and the nut that only it has", () => {
  const { records, findings } = read(LAMP);
  expect(findings).toEqual([]);
  expect(records.map(({ kind, id }) => `${kind} ${id}`)).toEqual(["part lamp-14", "nut nut-m14"]);
});

test("lengths may carry their unit, and inches are exact", () => {
  const inches = LAMP.replace("length: 12\n", "length: 1/2 in\n");
  const [lamp] = read(inches).records;
  expect(lamp?.kind === "part" && lamp.hold.kind === "bush" && lamp.hold.length).toBe(12.7);
});

test("a record that contradicts itself is left out, with the field and the place", () => {
  const text = LAMP.replace("grip: [1, 8]", "grip: [1, 11]");
  const { records, findings } = read(text);
  expect(records.map(({ id }) => id)).toEqual(["nut-m14"]);
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ code: "catalogue/record-fault", severity: "fault" });
  expect(findings[0]?.message).toContain("lamp-14: hold.grip: the thread leaves 9.5");
  expect(lineOf(text, findings[0]!.span.start)).toBe(6);
});

test("a shape that can't be drawn is a finding, not a crash", () => {
  const { records, findings } = read(
    LAMP.replace("{ round: 14.2 }", "{ flat: 14.2, to-flat: 9, clock: 0 }"),
  );
  expect(records).toHaveLength(1);
  expect(findings[0]?.message).toContain("openings.clamp: the flat lies outside its circle");
});

test("a misspelt key is named with its place, and the other records stand", () => {
  const text = LAMP.replace("thickness: 2.5", "thicknes: 2.5");
  const { findings } = read(text);
  const unknown = findings.find(({ code }) => code === "design/unknown-key");
  expect(unknown?.message).toContain("thickness");
  expect(lineOf(text, unknown!.span.start)).toBe(33);
});

test("a key that no shape and no body knows is refused once", () => {
  const text = LAMP.replace("round: 16.5, from: 0", "round: 16.5, form: 0, from: 0");
  const codes = readRecords("my-parts.yaml", text).findings.map(({ code }) => code);
  expect(codes).toEqual(["design/unknown-key"]);
});

test("a record under a built-in name takes its place, and says so", () => {
  const { findings } = read(LAMP.replaceAll("lamp-14", "lamp-10"));
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ code: "catalogue/record-replaces", severity: "note" });
});

test("a file of another kind, and no file at all, give findings and no records", () => {
  for (const text of [
    "",
    "kind: parts",
    "- 1",
    "\t",
    "{".repeat(5000),
    LAMP.replace("name: mine", ""),
    LAMP.replace("kind: parts", "kind: workshop"),
  ]) {
    const { records, findings } = read(text);
    expect(records).toEqual([]);
    expect(findings.length).toBeGreaterThan(0);
  }
});

test("the built-in files are read the same way as one's own", () => {
  const { findings } = readOwnRecords("x.yaml", recordText("parts/toggles.yaml"), catalogue);
  expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(["catalogue/record-replaces"]));
});

test("an exception covers what lies below its path", () => {
  const { figures } = catalogue.parts.get("toggle-6")!;
  expect(figureSource(figures, "hold.diameter").kind).toBe("datasheet");
  expect(figureSource(figures, "hold.length").kind).toBe("memory");
  expect(figureSource(figures, "lever.length").kind).toBe("memory");
});

test("the schema for editors knows every section, and a body's own keys", () => {
  const schema = JSON.stringify(recordsSchema());
  for (const key of ["parts", "receptacles", "mounts", "materials", "double-flat", "measure-first"])
    expect(schema).toContain(`"${key}"`);
});

test("every code explains itself", () => {
  for (const entry of CATALOGUE_CODES) {
    expect(entry.code).toMatch(/^catalogue\/[a-z-]+$/);
    for (const words of [entry.title, entry.why, entry.example])
      expect(words.length).toBeGreaterThan(10);
  }
});
