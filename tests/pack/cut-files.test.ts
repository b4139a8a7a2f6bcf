import { expect, test, vi } from "vitest";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { cutFilesOf, setUpName } from "../../src/pack/cut-files.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { platePart } from "./plate-part.ts";

const sabotage = vi.hoisted(() => ({ change: (text: string): string => text }));

// The writer of SVG files, with a hand on what it writes.
vi.mock(import("../../src/export/svg-cut-file.ts"), async (original) => {
  const real = await original();
  return {
    ...real,
    svgCutFile: (...args: Parameters<typeof real.svgCutFile>) =>
      sabotage.change(real.svgCutFile(...args)),
  };
});

const options = {
  folder: "cut",
  colours: DEFAULT_COLOURS,
  title: "Towing winch",
  span: { file: "panel.yaml", start: 0, end: 0 },
} as const;

test("each set-up has three formats, the kerf in their names, and every measurement is right", () => {
  sabotage.change = (text) => text;
  const { files, inspection, findings } = cutFilesOf(platePart({}), options);
  expect(files.map(({ path, kind, part }) => [path, kind, part])).toEqual([
    ["cut/winch-face-1-cut.kerf-0.20.svg", "cut-svg", "winch-face"],
    ["cut/winch-face-1-cut.kerf-0.20.dxf", "cut-dxf", "winch-face"],
    ["cut/winch-face-1-cut.kerf-0.20.r12.dxf", "cut-dxf-r12", "winch-face"],
  ]);
  expect(findings).toEqual([]);
  expect(new Set(inspection.map(({ file }) => file)).size).toBe(3);
  expect(inspection.filter(({ passed }) => !passed)).toEqual([]);
});

test.each([
  [0.2, "kerf-0.20"],
  [0.235, "kerf-0.235"],
])("a kerf of %s is called %s", (kerf, name) => {
  const part = platePart({ kerf });
  const [setUp] = part.setUps;
  if (setUp === undefined) throw new Error("the plate has a set-up");
  expect(setUpName(part, setUp)).toBe(`winch-face-1-cut.${name}`);
  const nominal = { ...setUp, kerf: { kind: "left-to-cutter" } as const };
  expect(setUpName(part, nominal)).toBe("winch-face-1-cut.nominal");
});

// Half a millimetre is five times what a cutter holds: a file that is wrong by it must never leave the house.
test.each([
  [
    "a hole that has moved",
    / d="M[\d.]+/,
    (found: string) => found.replace(/[\d.]+$/, (x) => String(Number(x) + 0.5)),
  ],
  ["a file in another scale", /width="80mm"/, () => 'width="81mm"'],
  ["a line that is missing", /<path id="hole"[^>]*>/, () => ""],
])("%s is a fault", (_, pattern, change) => {
  sabotage.change = (text) => {
    expect(text).toMatch(pattern);
    return text.replace(pattern, change);
  };
  const { findings } = cutFilesOf(platePart({}), options);
  expect(findings.map(({ code, severity }) => [code, severity])[0]).toEqual([
    "pack/inspection-mismatch",
    "fault",
  ]);
});

test("a kerf wider than a hole is refused instead of written without it", () => {
  sabotage.change = (text) => text;
  const { files, findings } = cutFilesOf(platePart({ kerf: 7 }), options);
  expect(files).toEqual([]);
  expect(findings[0]).toMatchObject({ code: "pack/refused-set-up", subjects: ["hole"] });
});

// The figures of a cutting bureau's guide: an opening is drawn smaller by the kerf and a piece larger,
// so that a 6.4 hole at a kerf of 0.2 is a circle of 6.2 in the file.
test("the kerf is in the file once", () => {
  sabotage.change = (text) => text;
  const { files } = cutFilesOf(platePart({ hole: 6.4, kerf: 0.2 }), options);
  expect(utf8Text(files[0]?.bytes ?? new Uint8Array())).toMatch(/A3\.1 3\.1/);
});
