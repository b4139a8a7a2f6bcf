// Texts that are nearly designs: sound ones, torn. Pieces that have hurt readers before are thrown in.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { panelText } from "../layout/bench-panel.ts";

const EXAMPLES = join(import.meta.dirname, "../../examples");

/** The panels of the examples, and one that uses nearly every key. */
export const SOUND_TEXTS: readonly string[] = [
  panelText({
    stack: [
      "{ layer: face, sheet: opal, finish: painted, worked-from: front }",
      "{ layer: diffuser, sheet: frosted }",
      "{ layer: backing, sheet: black, worked-from: rear }",
      "{ layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-12v, circuit: night } }",
      "{ layer: tray, behind: 18 mm, boards: [avr-328-45x18] }",
    ],
    fixings:
      "{ screws: m3, dowels: 3 mm, at: [{ left: 15 mm, bottom: 6 mm }], dowels-at: [{ left: 16 mm, y: centre }, { right: 16 mm, top: 20 mm }] }",
    components: [
      "brake: { part: toggle-12-locking, clamps: backing, at: { left: 34 mm, top: 30 mm }, legend: BRAKE, positions: { up: HELD, down: FREE } }",
      "speed: { part: pot-16, knob: knob-22-skirt, at: { right-of: brake, centres: 38 mm }, scale: { from: 0, to: 10, major: 2, minor: 1, legend: HAUL SPEED } }",
      "range: { part: rotary-12, clamps: [diffuser, backing], at: { right-of: speed, gap: 12 mm }, positions: { 1: OFF, 2: LOW }, turn: 15 deg }",
      "fuse: { part: fuse-holder-5x20, hole: 12.1 mm, at: { x: centre, y: bottom }, measured: { hold.length: 9.2 mm, dated: 2026-01-31 } }",
      "tension: { part: servo-9g-needle, at: { x: right, y: top }, dial: { sweep: 120 deg, from: 0, to: 80, major: 20, minor: 10, unit: kN } }",
      'warn: { row: { part: led-5-bezel, count: 4, pitch: 15 mm, left: 24 mm, bottom: 20 mm }, legends: [PAY OUT, HAUL, SLIP, ""] }',
      "keys: { grid: { part: tactile-12-cap, columns: 3, rows: 2, pitch: 19 mm, row-pitch: 21 mm }, at: { in-line-with: brake, top: 60 mm } }",
      "lamps: { ring: { part: led-5-bezel, count: 5, radius: 20 mm, from: 30 deg, step: 45 deg, x: centre, y: centre } }",
      "port: { part: d-sub-9, at: { below: speed, centres: 40 mm }, hole: 20 mm }",
    ],
    markings: [
      "border: { name: drive, around: [brake, speed], gap: 4 mm, corner: 3 mm, legend: DRIVE }",
      "bracket: { name: lights, around: [warn], side: below, legend: { text: LIGHTS, height: 3 mm, turn: 10 deg } }",
      'legend: { name: note, text: "A\\nB", at: { right-of: warn.2, centres: 9 mm }, align: left, turn: 90 deg }',
      "arrow: { name: up, from: { x: 20 mm, y: 30 mm }, to: { above: brake, gap: 3 mm }, width: 0.6 mm }",
      "line: { name: rule, from: { x: 20 mm, y: 30 mm }, to: { x: 60 mm, y: 30 mm } }",
      "window: { name: slot, at: { x: centre, y: 12 mm }, width: 20 mm, height: 6 mm, corner: 1 mm, layers: [face, backing] }",
    ],
    more: [
      "lettering: { font: b612, height: 3.5 mm, gap: 1.5 mm }",
      "spare: { part: toggle-12, count: 1 }",
      "depth: 90 mm",
    ],
  }),
  ...["tug-trainer/panels", "rack-panel", "first-panel"].flatMap((folder) =>
    panelFiles(join(EXAMPLES, folder)),
  ),
];

function panelFiles(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => readFileSync(join(folder, name), "utf8").replaceAll("../", ""))
    .filter((text) => text.includes("kind: panel"));
}

/** Stand in for a value: the text stays readable, what it says does not stay sound. */
const VALUES: readonly string[] = [
  ..."0|-1|1|2|0 mm|-3 mm|3 mm|1e309|NaN|Infinity|-0|0.000001 mm|99999 mm|1e9 mm|100000 mm|50 m|3/8|3/0 in|5 3/4 in".split(
    "|",
  ),
  ..."9999|200|360 deg|361|-90|45 deg|1 deg|1 modules|0 modules|9000 modules|500 U|1 HP|40 mm|centre|left|right|top|bottom".split(
    "|",
  ),
  ..."above|below|on|face|backing|diffuser|spacer|rear|front|brake|speed|warn|warn.2|warn.9|keys|lamps|drive".split(
    "|",
  ),
  ..."toggle-6|toggle-12-guarded|d-sub-9|d-sub-25|rotary-12|meter-96|gauge-57|keypad-4x4|char-16x2|multi-pin-16|xlr-3|no-such".split(
    "|",
  ),
  ..."console-rail|rack-19|subrack-3u|corner-screws|box-lid|opal|raw-opal|black|metal|painted|painted-sheet|sprayed|filled".split(
    "|",
  ),
  ...'knob-32-pointer|guard-12|single-line|ems-readability|b612|saira-stencil-one|x|YES|OFF|""|{}|[]|[1, 2]|{ a: 1 }|later'.split(
    "|",
  ),
];

/** Stand anywhere, or take the place of anything: what texts are broken by. */
const BREAKERS: readonly string[] = [
  ..."&a |*a|!tag |<<: *a|%YAML 1.2|---|...|[|]|{|}|:|: |- |#|\"|'||>|?|~|null|__proto__|constructor|hasOwnProperty".split(
    "|",
  ),
  "|",
  "\t",
  "\r\n",
  "\r",
  "\uFEFF",
  "\u{1F600}",
  "\u202e",
  "\ud800",
  "\u0000",
  "\n",
  "\n\n",
  "  ",
  "../../x.yaml",
  "panel.yaml",
  "workshop.yaml",
  "a: b",
  "yes",
  "TRUE",
];

/** Keys that a component may carry, put where another key stands. */
const LINES: readonly string[] = [
  "hole: 0.1 mm",
  "hole: 3 mm",
  "hole: 900 mm",
  "turn: 33 deg",
  "clamps: [face, backing]",
  "width: 80 mm",
  "height: 3 U",
  "fitted: later",
  "measured: { openings.clamp.diameter: -3 mm, dated: 2026-01-31 }",
  "measured: { bodies.case.from: 9 mm, dated: 2026-01-31 }",
  "measured: { openings.front.corner: 50 mm, openings.passes.flat: 40 mm, dated: 2026-01-31 }",
  "positions: { 1: A, up: B, sideways: C }",
  "scale: { from: 0, to: 1, major: 0.001 }",
  "scale: { from: 10, to: -10, major: 3, minor: 0.7 }",
  "dial: { sweep: 360 deg, from: 0, to: 1e9, major: 1e8 }",
  'legend: { text: "A\\nB", side: left, turn: 45 deg, height: 0.01 mm }',
  "legend: { text: W, height: 9000 mm }",
  "gap: 9 mm",
  "knob: knob-9",
];

interface Edit {
  /** Ten thousandths of the text. */
  readonly at: number;
  readonly length: number;
  readonly put: string;
  readonly takes: "value" | "key" | "stretch";
}

const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.noBias(fc.nat(9999)),
  length: fc.oneof(
    { weight: 3, arbitrary: fc.constant(0) },
    { weight: 5, arbitrary: fc.integer({ min: 1, max: 12 }) },
    { weight: 1, arbitrary: fc.integer({ min: 13, max: 400 }) },
  ),
  put: fc.constant(""),
  takes: fc.constant("stretch" as const),
});

const valueEdit = edit.chain((so) =>
  fc.constantFrom(...VALUES).map((put): Edit => ({ ...so, put, takes: "value" })),
);
const lineEdit = edit.chain((so) =>
  fc.constantFrom(...LINES).map((put): Edit => ({ ...so, put, takes: "key" })),
);
const breakingEdit = edit.chain((so) =>
  fc
    .oneof(fc.constantFrom(...BREAKERS), fc.string({ maxLength: 8, unit: "binary" }))
    .map((put): Edit => ({ ...so, put })),
);

const applied = (text: string, { at, length, put, takes }: Edit): string => {
  const start = Math.floor((at / 10_000) * text.length);
  if (takes === "stretch") return text.slice(0, start) + put + text.slice(start + length);
  const wanted =
    takes === "value"
      ? /(?<=[:[,] )[\w.-]+(?: (?:mm|deg|modules|U|in))?/g
      : /(?<=[{,] )[a-z-]+: [\w. ]+(?=[,}])/g;
  wanted.lastIndex = start;
  const found = wanted.exec(text);
  return found === null
    ? text
    : text.slice(0, found.index) + put + text.slice(found.index + found[0].length);
};

const torn = (edits: fc.Arbitrary<Edit>, most: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...SOUND_TEXTS), fc.array(edits, { minLength: 1, maxLength: most }))
    .map(([text, list]) => list.reduce(applied, text));

/** A sound text with a few values and keys changed: mostly still read, and laid out. */
export const changedText: fc.Arbitrary<string> = torn(fc.oneof(valueEdit, lineEdit), 6);

/** A sound text after edits of any kind. */
export const tornText: fc.Arbitrary<string> = torn(
  fc.oneof(valueEdit, lineEdit, breakingEdit, edit),
  4,
);
