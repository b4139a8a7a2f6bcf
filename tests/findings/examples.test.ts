// Every code of the floors that judge has an example that gives it, at its line, with its numbers, and nothing else; and
// every remedy that edits a text clears its finding without a new fault.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { BAY_CODES } from "../../src/checks/fit/bay-rules.ts";
import { FIT_CODES } from "../../src/checks/fit/rules.ts";
import { FRAME_RULE_CODES } from "../../src/checks/frame/rules.ts";
import { CHECK_CODES } from "../../src/checks/judge.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { LAYOUT_CODES } from "../../src/layout/codes.ts";
import { CONSOLE_LAYOUT_CODES } from "../../src/layout/console/codes-of-console.ts";
import { FRAME_CODES } from "../../src/parts/frame/codes.ts";
import { PARTS_CODES } from "../../src/parts/sheet-parts.ts";
import {
  expectedLines,
  findingsOf,
  foundLines,
  notesIn,
  readExample,
  type Texts,
} from "./example.ts";
import { faultsOf, isSame, remedied } from "./remedied.ts";

const FLOORS = ["checks", "fit", "layout", "parts"];

const examples = FLOORS.flatMap((floor) =>
  readdirSync(join(import.meta.dirname, floor))
    .filter((file) => file.endsWith(".yaml"))
    .sort()
    .map((file) => `${floor}/${file.slice(0, -".yaml".length)}`),
);

const textsOf = (code: string): Texts => readExample(join(import.meta.dirname, `${code}.yaml`));

test("every code has an example, and every example a code", () => {
  const codes = [
    ...CHECK_CODES,
    ...FRAME_RULE_CODES,
    ...BAY_CODES,
    ...FIT_CODES,
    ...LAYOUT_CODES,
    ...CONSOLE_LAYOUT_CODES,
    ...PARTS_CODES,
    ...FRAME_CODES,
  ].map(({ code }) => code);
  expect(examples.toSorted()).toEqual([...new Set(codes)].toSorted());
  expect(codes).toHaveLength(examples.length);
});

describe.each(examples)("%s", (code) => {
  const texts = textsOf(code);

  test("is found where the example says, and nothing else is", () => {
    const expected = expectedLines(texts);
    expect(expected.some((line) => line.includes(` ${code}`))).toBe(true);
    expect(foundLines(texts, notesIn(texts)).toSorted()).toEqual(expected.toSorted());
  });

  const all = findingsOf(texts);

  test("says no length, shortfall or place of less than nothing", () => {
    expect(all.map(said).filter((line) => LESS_THAN_NOTHING.test(line))).toEqual([]);
  });

  test("names who or what sets each limit, in words that go after `set by`", () => {
    const names = all.flatMap(({ source }) => (source === null ? [] : [source.name]));
    expect(names.filter((name) => SENTENCE.test(name))).toEqual([]);
  });

  const remedies = all.flatMap((found) =>
    found.remedies
      .filter(({ edits }) => edits.length > 0)
      .map((remedy) => ({ title: remedy.title, found, remedy })),
  );

  test.each(remedies)("goes with $title, and brings no fault", ({ found, remedy }) => {
    const mended = findingsOf(remedied(texts, remedy));
    expect(mended.filter((other) => isSame(found, other)).map(said)).toEqual([]);
    const before = faultsOf(findingsOf(texts));
    expect(faultsOf(mended).filter((fault) => !before.includes(fault))).toEqual([]);
  });
});

/** What a builder reads on a rule: places in brackets, keys with their values and runs from a place to another may be negative. */
const LESS_THAN_NOTHING =
  /(?<!at\.[xyz] |from )(?<=[ (])-\d[\d.]*(?: (?:mm|in|deg|modules|U|HP)|°)(?! to \d)/;

/** What does something without a `that` or an `as` before it is a sentence; what is longer is nobody. Why comes after a colon. */
const SENTENCE =
  /^(?!.*\b(?:that|which|what|where|as)\b)[^(:]*\b(?:lie|lies|stand|stands|needs|hides|covers|reaches|is|are|hold|come)\b|^(?:longer|shorter|from|not) /;

const said = ({ code, message }: Finding): string => `${code}: ${message}`;

test("codes whose finding a change of one value mends say so with an edit", () => {
  const mended = examples.filter((code) =>
    findingsOf(textsOf(code)).some(
      ({ code: found, remedies }) =>
        found === code && remedies.some(({ edits }) => edits.length > 0),
    ),
  );
  expect(mended).toEqual(MENDED);
});

const MENDED = [
  "checks/board-plug",
  "checks/bodies-collide",
  "checks/boss-room",
  "checks/cut-outs-overlap",
  "checks/edge-distance",
  "checks/frame-bed",
  "checks/frame-knees",
  "checks/frame-lap",
  "checks/frame-rail-fastener",
  "checks/frame-rail-hole",
  "checks/frame-rail-web",
  "checks/frame-ribs",
  "checks/frame-units",
  "checks/frame-web",
  "checks/frame-width",
  "checks/hands",
  "checks/hole-too-small",
  "checks/hole-uncovered",
  "checks/inside-corner",
  "checks/instrument-fit",
  "checks/knob-bore",
  "checks/legend-faint",
  "checks/legend-too-small",
  "checks/legend-unlit",
  "checks/light-leak",
  "checks/markings-overlap",
  "checks/mount-in-acrylic",
  "checks/nut-hole",
  "checks/off-panel",
  "checks/over-fixing",
  "checks/pocket-breaks",
  "checks/print-too-deep",
  "checks/rail-strip",
  "checks/scale-stops",
  "checks/sharp-corner",
  "checks/stack-loose",
  "checks/stroke-below-tool",
  "checks/too-deep",
  "checks/web",
  "checks/whole-modules",
  "fit/bay-overrun-by-tolerance",
  "fit/bay-overrun",
  "fit/clash",
  "fit/driver-room",
  "fit/free-modules",
  "fit/hands-across-panels",
  "fit/knee-room",
  "fit/latch-room",
  "fit/legend-small-at-eye",
  "fit/loop-too-short",
  "fit/out-of-reach",
  "fit/outside-envelope",
  "fit/panel-too-wide",
  "fit/panels-overlap",
  "fit/plug-room",
  "fit/too-deep",
  "fit/too-near",
  "fit/touching",
  "parts/frame-bay",
  "parts/frame-bays-cross",
];
