// The frame of a console file: what holds where nothing is written, what is refused, and what its message offers instead.

import { expect, test } from "vitest";
import type { FrameDesign } from "../../src/design/frame-design.ts";
import { readDesign } from "../../src/design/read-design.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";

const read = (frame: string): { frame: FrameDesign | null; findings: readonly Finding[] } => {
  const text = `consolewright: 1\nkind: console\nname: stand\nframe: ${frame}\n`;
  const { design, findings } = readDesign("console.yaml", text);
  return { frame: design?.kind === "console" ? design.frame : null, findings };
};

test("type and sheet are enough", () => {
  const { frame, findings } = read("{ type: side-console, sheet: birch-ply-12 }");
  expect(findings).toEqual([]);
  expect(frame).toMatchObject({
    joints: "tab-and-slot",
    clearance: 0.2,
    doorway: null,
    toe: 60,
    beyond: null,
    ribs: { spacing: 300, web: 60 },
    rails: { width: 30, hole: null },
    knees: null,
    hatch: "right",
    cables: { diameter: 40, through: ["back"] },
    vents: { inlet: "back", outlet: "front" },
    panels: ["top", "front", "back", "floor"],
  });
});

test("what is written holds, in any unit, and leaves the rest usual", () => {
  const { frame } = read(
    "{ type: front-desk, sheet: mdf-18, joints: half-lap, clearance: 0.1 mm, toe: 2 1/2 in, ribs: { spacing: 1/4 m }, rails: { hole: 9 mm }, panels: [top, back] }",
  );
  expect(frame).toMatchObject({
    joints: "half-lap",
    clearance: 0.1,
    toe: 63.5,
    ribs: { spacing: 250, web: 60 },
    rails: { width: 30, hole: 9 },
    panels: ["top", "back"],
  });
});

test.each([
  ["{ type: side-consol, sheet: ply }", "side-console", "design/unknown-word"],
  [
    "{ type: front-desk, sheet: ply, joints: tabs-and-slots }",
    "tab-and-slot",
    "design/unknown-word",
  ],
  ["{ type: side-console, sheet: ply, hatch: rigth }", "right", "design/unknown-word"],
  ["{ type: side-console, sheet: ply, clearence: 0.2 }", "clearance", "design/unknown-key"],
  ["{ type: side-console }", "sheet", "design/missing-key"],
])("%s is answered with %s", (frame, word, code) => {
  const [found] = read(frame).findings;
  expect(found?.code).toBe(code);
  expect(found?.message).toContain(word);
});

test("a clearance in which a tab would rattle is refused with the most that is taken", () => {
  const [found] = read("{ type: side-console, sheet: ply, clearance: 2 mm }").findings;
  expect(found?.severity).toBe("fault");
  expect(found?.message).toMatch(/2.*1/);
});
