// The schema says what the readers do: documents as an editor sees them (YAML core schema) pass or fail alike.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { readDesign } from "../../src/design/read-design.ts";
import { designSchema } from "../../src/design/schema.ts";
import { FILE, panelText } from "./reading.ts";
import { isValid } from "./schema-check.ts";

const SCHEMA: unknown = JSON.parse(JSON.stringify(designSchema()));

const passes = (text: string): boolean => isValid(SCHEMA, parse(text));

describe("the schema", () => {
  test.each(["winch.yaml", "starboard.yaml", "shed.yaml"])("passes %s", (name) => {
    expect(passes(readFileSync(join(import.meta.dirname, "samples", name), "utf8"))).toBe(true);
  });

  const component = (text: string): string => panelText(`components:\n  a: ${text}`);

  test.each([
    panelText("title: 7"),
    panelText("title: on"),
    panelText("viewing-distance: 650"),
    panelText("viewing-distance: 2 ft"),
    panelText("viewing-distance: 3/8"),
    panelText('viewing-distance: "25 1/2 in"'),
    panelText("titel: Winch"),
    panelText("dated: 2. 10. 2026"),
    panelText("fixings: { screws: m3 }"),
    panelText("fixings: { screws: m3, dowels: 3 mm }"),
    component("{ part: led-5, at: centre }"),
    component("{ part: led-5, at: { x: centre, y: 12.5 mm } }"),
    component("{ part: led-5, at: { x: middle, y: 12.5 mm } }"),
    component("{ part: led-5, at: centre, turn: 15° }"),
    component("{ part: led-5, at: centre, turn: 15º }"),
    component("{ part: led-5, at: centre, turn: 400 }"),
    component("{ part: LED, at: centre }"),
    component("{ part: led-5, at: centre, important: yes }"),
    component("{ part: led-5, at: centre, important: often }"),
    component("{ part: led-5, at: centre, legend: { text: A, side: under } }"),
    component("{ part: led-5, at: centre, measured: { hold.length: 9.2, dated: 2026-10-02 } }"),
    component("[led-5]"),
    panelText("components:\n  A: { part: led-5, at: centre }"),
    panelText("markings:\n  - legend: { text: A, at: centre }"),
    panelText("markings:\n  - circle: { at: centre }"),
    panelText("markings:\n  - { line: {}, border: {} }"),
    "consolewright: 1\nkind: workshop\nname: shed\nmachines:\n  l: { type: router, bed: [1, 2], tools: [{ diameter: 3 }] }\n",
    "consolewright: 1\nkind: workshop\nname: shed\nmachines:\n  l: { type: router, bed: [1], tools: [{ diameter: 3 }] }\n",
    "consolewright: 1\nkind: workshop\nname: shed\nmachines:\n  l: { type: lathe, bed: [1, 2] }\n",
    "consolewright: 1\nkind: workshop\nname: shed\nhouse-rules: { web: 1.2 }\n",
    "consolewright: 2\nkind: workshop\nname: shed\n",
    "consolewright: 1\nkind: garage\nname: shed\n",
    "consolewright: 1\nkind: console\nname: c\npanels: [{ file: a.yaml, as: a }, { blanking: 4 modules }]\n",
    "consolewright: 1\nkind: console\nname: c\npanels: [{ file: a.yaml }]\n",
  ])("agrees with the reader on %j", (text) => {
    const hasFault = readDesign(FILE, text).findings.some(({ severity }) => severity === "fault");
    expect(passes(text)).toBe(!hasFault);
  });

  test("explains every key and names the usual values", () => {
    const keys = JSON.stringify(SCHEMA).match(/"description":"[^"]+"/g) ?? [];
    expect(keys.length).toBeGreaterThan(300);
    expect(JSON.stringify(SCHEMA)).toContain('"default":"700"');
  });
});
