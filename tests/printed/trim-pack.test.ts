// From a design's text to its pack: what lies in printed parts is cut, measured, listed and explained like everything else.

import { expect, test } from "vitest";
import { PRINTED_CODES } from "../../src/parts/printed/codes.ts";
import { isTrimPart } from "../../src/parts/printed/trim-facts.ts";
import { compile, packOfProject } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const HEAD: Readonly<Record<string, string>> = {
  consolewright: " 1",
  kind: " panel",
  name: " alarms",
  mount: " console-rail",
  height: " 12 modules",
  stack:
    "\n  - { layer: face, sheet: opal-acrylic-3 }\n  - { layer: backing, sheet: aluminium-2 }\n  - { layer: spacer, print: black-petg, depth: 18 mm }",
};

const textOf = (keys: Readonly<Record<string, string>>): string =>
  Object.entries(keys)
    .map(([key, value]) => `${key}:${value}\n`)
    .join("");

const projectOf = (text: string) =>
  compile({ entry: "panel.yaml", files: new Map([["panel.yaml", text]]) }, testLibrary());

test("a display and an annunciator give filter, diffusers and film, each measured", () => {
  const project = projectOf(
    textOf({
      ...HEAD,
      components: `
  depth:
    part: seven-segment-4-056
    at: { x: centre, top: 24 mm }
    trim: { filter: smoke-acrylic-2 }
  window:
    grid: { part: lamp-window-18x12, columns: 2, rows: 2, pitch: 24 mm, row-pitch: 14.4 mm }
    at: { x: centre, bottom: 50 mm }
    legends: [{ text: FIRE, alert: warning }, OIL, GEAR, NAV]
    lamp-box: { leds: 2 }`,
    }),
  );
  const [panel] = project.panels;
  expect(panel!.printedParts.map(({ role }) => role)).toEqual(
    expect.arrayContaining(["spacer", "trim", "lamp-box", "lamp-box-lid"]),
  );
  const trim = panel!.printedParts.find(isTrimPart)!;
  expect(trim.trim.seat).toMatchObject({ filter: "smoke-acrylic-2" });
  const pack = packOfProject(project, panel!, { only: "everything", card: false });
  const paths = pack.files.map(({ path }) => path);
  for (const part of ["alarms-depth-filter", "alarms-window-diffusers"])
    expect(paths.filter((path) => path.startsWith(`cut/${part}-1-cut`))).toHaveLength(3);
  expect(paths).toContain("film/alarms-window-film.svg");
  expect(pack.inspection.filter(({ passed }) => !passed)).toEqual([]);
  expect(pack.inspection.some(({ file }) => file.includes("alarms-depth-filter"))).toBe(true);
  const readme = new TextDecoder().decode(
    pack.files.find(({ path }) => /readme/i.test(path))!.bytes,
  );
  expect(readme).toContain("Print the files of film/");
  expect(readme).toContain("smoke-acrylic-2 on");
});

const OWN = PRINTED_CODES.filter(({ code }) =>
  /\/(trim-|unknown-fitted-stock|lamp-box-|angled-box-)/.test(code),
);

/** `key: value` blocks by key. */
const blocksOf = (lines: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    lines
      .split(/\n(?=[a-z-]+:)/)
      .map((block) => /^([a-z-]+):([\s\S]*)$/.exec(block))
      .filter((found) => found !== null)
      .map(([, key = "", value = ""]) => [key, value]),
  );

test.each(OWN.map(({ code, severity, example }) => [code, severity, example] as const))(
  "%s is given by the lines that explain it, and nothing of its floor beside it",
  (code, severity, example) => {
    const own = blocksOf(example);
    const stack =
      own["mount"] === undefined ? {} : { stack: "\n  - { layer: face, sheet: aluminium-2 }" };
    const findings = projectOf(textOf({ ...HEAD, ...stack, ...own })).panels.flatMap(
      (panel) => panel.findings,
    );
    const ofFloor = findings.filter((found) => found.code.startsWith("parts/"));
    expect(ofFloor.map((found) => [found.code, found.severity])).toEqual([[code, severity]]);
    expect(findings.filter((found) => /^design\//.test(found.code))).toEqual([]);
  },
);

test("eight codes of trims, lamp boxes and angled boxes are in the table", () => {
  expect(OWN).toHaveLength(8);
});
