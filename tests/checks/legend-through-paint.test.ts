// Legends cut through a paint that is as light as the sheet below it. By hand, from #efede6, #c6cace and #23262a: luminances 0.846,
// 0.587 and 0.019, each with 0.05 of stray light (WCAG 2.2, relative luminance): white on aluminium 0.896 / 0.637 = 1.41, white on
// black 0.896 / 0.069 = 13, aluminium on black 0.637 / 0.069 = 9.2.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const shed = (finishes: string): string => `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, colour: bare aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  opal: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
finishes:
${finishes}`;

const panel = (sheet: string): string => `consolewright: 1
kind: panel
name: p
workshop: shed.yaml
mount: corner-screws
width: 120 mm
height: 80 mm
stack:
  - { layer: face, sheet: ${sheet}, finish: mine }
components:
  a: { part: led-5, at: centre, legend: PUMP }
`;

const faint = (texts: ReadonlyMap<string, string>): readonly Finding[] =>
  (compile({ entry: "panel.yaml", files: texts }, testLibrary()).panels[0]?.findings ?? []).filter(
    ({ code }) => code === "checks/legend-faint",
  );

const textsOf = (finishes: string, sheet = "plate"): ReadonlyMap<string, string> =>
  new Map([
    ["panel.yaml", panel(sheet)],
    ["shed.yaml", shed(finishes)],
  ]);

const finish = (coats: string, order = "cut-paint-engrave", name = "mine"): string =>
  `  ${name}: { coats: [${coats}], thickness: 0.08 mm, dated: 2026-01-31, order: ${order} }\n`;

test.each(["cut-paint-engrave", "paint-then-cut"])(
  "white paint on bare aluminium, %s, is told with both ratios and an edit that works",
  (order) => {
    const texts = textsOf(finish("white", order) + finish("black", order, "dark"));
    const [found] = faint(texts);
    expect(found?.message).toMatch(
      /^Legends cut through white paint show aluminium and stand out from it by 1\.4 to 1 in face; 4\.5 to 1 is wanted, 3\.1 more\./,
    );
    expect(found?.measured?.value).toBeCloseTo(0.896 / 0.637, 2);
    const [remedy] = found?.remedies ?? [];
    const mended = applyEdits(panel("plate"), remedy?.edits ?? []);
    expect(mended.kind).toBe("edited");
    if (mended.kind === "refused") return;
    expect(faint(new Map([...texts, ["panel.yaml", mended.text]]))).toEqual([]);
  },
);

test("a coat below the last that is read, or dark paint, is told nothing", () => {
  for (const coats of ["black, white", "white, black", "black"])
    expect(faint(textsOf(finish(coats)))).toEqual([]);
});

test("through a sheet that passes light a legend glows, and is told nothing", () => {
  expect(faint(textsOf(finish("white"), "opal"))).toEqual([]);
});

test("a colour that is not known is no ground for a word", () => {
  expect(faint(textsOf(finish("mauve")))).toEqual([]);
  expect(faint(textsOf(finish("mauve, white")))).toEqual([]);
});
