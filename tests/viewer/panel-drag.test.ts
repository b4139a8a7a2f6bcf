// A panel moved along its rail by an edit that the person is asked about first: it is not called written.

import { beforeEach, expect, test } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import "../support/still-worker.ts";

const { askBefore, openDesign, texts } = await import("../../viewer/desk.ts");
const { drag, offer, takeOption } = await import("../../viewer/console/panel-drag.ts");
const { said } = await import("../../viewer/console/console-state.ts");

const TEXT = "place: 1\n";
const option = {
  words: "to module 2",
  edit: { file: "desk.yaml", baseHash: textHash(TEXT), start: 7, end: 8, text: "2" },
};

beforeEach(() => {
  void openDesign("desk", { texts: new Map([["desk.yaml", TEXT]]), binaries: new Map() });
  drag.value = { panel: "winch", from: 1, module: 2, reading: null };
  offer.value = null;
});

test("where it is asked: put back, and said so", () => {
  askBefore(() => true);
  takeOption(option);
  expect(texts.value.get("desk.yaml")).toBe(TEXT);
  expect(said.value).toMatch(/^Not done yet/);
  expect(drag.value).toBeNull();
});

test("where it is not: written", () => {
  askBefore(() => false);
  takeOption(option);
  expect(texts.value.get("desk.yaml")).toBe("place: 2\n");
  expect(said.value).toMatch(/^Written/);
});
