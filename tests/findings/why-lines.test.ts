// The few lines that `why` shows for a code give that code, put into a small panel: keys, parts and sheets in them are real.

import { describe, expect, test } from "vitest";
import { CHECK_CODES } from "../../src/checks/judge.ts";
import { findingsOf } from "./example.ts";

/** Top-level keys of a panel that says nothing of its own; what the lines say takes their place. */
const PANEL: Readonly<Record<string, string>> = {
  consolewright: " 1",
  kind: " panel",
  name: " why",
  workshop: " own.yaml",
  mount: " corner-screws",
  width: " 120 mm",
  height: " 80 mm",
  stack:
    "\n  - { layer: face, sheet: black-acrylic-3 }\n  - { layer: backing, sheet: aluminium-2 }",
  components: "\n  lamp: { part: led-5, at: { x: 90 mm, y: 60 mm }, legend: PUMP }",
};

const WORKSHOP: Readonly<Record<string, string>> = {
  consolewright: " 1",
  kind: " workshop",
  name: " own",
};

const ROUTER = `machines:
  router: { type: router, bed: [700, 500], tools: [{ diameter: 3.175 mm }] }
use: { default: router }`;

/** `key: value` blocks by key; comments left out. */
const blocksOf = (lines: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    lines
      .split(/\n(?=[a-z-]+:)/)
      .map((block) => /^([a-z-]+):([\s\S]*)$/.exec(block.replace(/^#.*\n/, "")))
      .filter((found) => found !== null)
      .map(([, key = "", value = ""]) => [key, value]),
  );

const textOf = (blocks: Readonly<Record<string, string>>): string =>
  Object.entries(blocks)
    .map(([key, value]) => `${key}:${value}\n`)
    .join("");

const filesFor = (example: string): ReadonlyMap<string, string> => {
  const isWorkshop = example.startsWith("# in the workshop");
  const own = blocksOf(example);
  const stack = /panel's stack is (.*)/.exec(example)?.[1];
  const panel: Record<string, string> = { ...PANEL, ...(isWorkshop ? {} : own) };
  if (stack !== undefined) panel["stack"] = ` ${stack}`;
  if (panel["mount"]?.trim() === "console-rail") {
    delete panel["width"];
    if (own["height"] === undefined) panel["height"] = " 10 modules";
  }
  const machine = example.includes("cut by a router") ? blocksOf(ROUTER) : {};
  const needsUse = isWorkshop && own["use"] === undefined;
  const use = needsUse ? { use: ` { default: ${/^ {2}(\S+):/m.exec(example)?.[1]} }` } : {};
  const workshop = { ...WORKSHOP, ...machine, ...(isWorkshop ? own : {}), ...use };
  return new Map([
    ["panel.yaml", textOf(panel)],
    ["own.yaml", textOf(workshop)],
  ]);
};

describe.each(CHECK_CODES.map(({ code, example }) => [code, example] as const))(
  "%s",
  (code, example) => {
    test("is given by the lines that explain it", () => {
      const found = findingsOf(filesFor(example)).map((one) => one.code);
      expect(found).toContain(code);
      expect(found.filter((one) => /^(design|layout)\/(?!fixing-places)/.test(one))).toEqual([]);
    });
  },
);
