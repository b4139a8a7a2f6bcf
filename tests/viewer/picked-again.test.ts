// What is picked when a deed that picks something else is taken back and done again.

import { beforeEach, expect, test } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import "../support/still-worker.ts";

const { edit, openDesign, redo, selection, texts, undo } = await import("../../viewer/desk.ts");
const { said } = await import("../../viewer/panel/board.ts");
const { pickByLastStep } = await import("../../viewer/panel/picked-again.ts");
const { take } = await import("../../viewer/panel/told-edit.ts");

const FILE = "a.yaml";

/** A deed that writes one word behind all others and picks it. */
function copied(name: string): void {
  const text = texts.value.get(FILE) ?? "";
  const at = { file: FILE, baseHash: textHash(text), start: text.length, end: text.length };
  edit([{ ...at, text: ` ${name}` }], `copy ${name}`);
  pickByLastStep([name]);
}

beforeEach(() => {
  void openDesign("a design", { texts: new Map([[FILE, "pump"]]), binaries: new Map() });
  selection.value = ["pump"];
});

test("after two copies are taken back, what was picked before the first one is picked again", () => {
  copied("pump-2");
  copied("pump-3");
  undo();
  expect(selection.value).toEqual(["pump-2"]);
  undo();
  expect(selection.value).toEqual(["pump"]);
  redo();
  expect(selection.value).toEqual(["pump-2"]);
});

test("what was picked since then stays picked", () => {
  copied("pump-2");
  selection.value = ["lamp"];
  undo();
  expect(selection.value).toEqual(["lamp"]);
});

test("a step that has picked nothing leaves the picks alone", () => {
  copied("pump-2");
  const text = texts.value.get(FILE) ?? "";
  edit([{ file: FILE, baseHash: textHash(text), start: 0, end: 4, text: "fan" }], "rename");
  undo();
  expect(selection.value).toEqual(["pump-2"]);
});

test("a deed that changes nothing leaves the step before it what that one has picked", () => {
  copied("pump-2");
  const text = texts.value.get(FILE) ?? "";
  const same = { file: FILE, baseHash: textHash(text), start: 0, end: 4, text: "pump" };
  if (take([same], "rename pump to pump")) pickByLastStep(["lamp"]);
  undo();
  expect(selection.value).toEqual(["pump"]);
});

test("however a step is taken back or done again, it is said under the sheet", () => {
  copied("pump-2");
  said.value = "Copied as pump-2.";
  undo();
  expect(said.value).toBe("Taken back: copy pump-2.");
  redo();
  expect(said.value).toBe("Done again: copy pump-2.");
});
