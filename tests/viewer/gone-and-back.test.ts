// A file that somebody deletes outside and brings back: no step takes away again what stands there. The store is the test's;
// the design is read by nobody.

import { beforeEach, expect, test } from "vitest";
import { benchStore } from "../support/bench-store.ts";
import "../support/still-worker.ts";

const { edit, nextRedo, nextUndo, redo, texts, undo } = await import("../../viewer/desk.ts");
const { openStore, save } = await import("../../viewer/files/saving.ts");
const { fileNews, gone, unsaved } = await import("../../viewer/files/stored-state.ts");
const { textHash } = await import("../../src/diagnostics/text-edit.ts");

const PANEL = "panel.yaml";
const SHED = "shed.yaml";
const TEXT = "kind: panel\n";
const MINE = `# mine\n${TEXT}`;
const { store, files: held, tell } = benchStore();

const write = (file: string, before: string, words: string): unknown =>
  edit(
    [{ file, start: 0, end: 0, text: `# ${words}\n`, baseHash: textHash(before) }],
    `write ${words}`,
  );

const outside = async (file: string, text: string | null): Promise<void> => {
  if (text === null) held.delete(file);
  else held.set(file, text);
  tell();
  await expect.poll(() => texts.value.get(file) ?? null).toBe(text);
};

beforeEach(async () => {
  held.clear();
  held.set(PANEL, TEXT);
  held.set(SHED, "kind: workshop\n");
  await openStore(store);
  write(PANEL, TEXT, "mine");
  await save();
});

test("while it is gone the step says what it did, and undo brings the text back", async () => {
  await outside(PANEL, null);
  expect(nextUndo.value).toBe(`take away ${PANEL}, deleted outside`);
  expect(gone.value).toEqual([PANEL]);
  undo();
  expect([texts.value.get(PANEL), unsaved.value]).toEqual([MINE, [PANEL]]);
});

test("gone and back as it was leaves no step, and undo goes on with what was edited before", async () => {
  await outside(PANEL, null);
  await outside(PANEL, MINE);
  expect(fileNews.value?.words).toBe(`There again: ${PANEL}`);
  expect([nextUndo.value, gone.value]).toEqual(["write mine", []]);
  undo();
  expect([...texts.value.keys()]).toContain(PANEL);
  expect(texts.value.get(PANEL)).toBe(TEXT);
  redo();
  expect(texts.value.get(PANEL)).toBe(MINE);
});

test("what was edited elsewhere meanwhile stays a step of its own", async () => {
  await outside(PANEL, null);
  write(SHED, "kind: workshop\n", "shed");
  await outside(PANEL, MINE);
  expect(nextUndo.value).toBe("write shed");
  undo();
  expect(nextUndo.value).toBe("write mine");
  undo();
  expect([texts.value.get(PANEL), nextUndo.value]).toEqual([TEXT, null]);
});

test("back with another text it is one change of that text", async () => {
  await outside(PANEL, null);
  await outside(PANEL, `${MINE}title: new\n`);
  expect(nextUndo.value).toBe(`take over ${PANEL}`);
  undo();
  expect([texts.value.get(PANEL), nextUndo.value]).toEqual([MINE, "write mine"]);
});

test("two that went at once come back one by one", async () => {
  held.clear();
  tell();
  await expect.poll(() => texts.value.size).toBe(0);
  await outside(PANEL, MINE);
  expect(nextUndo.value).toBe(`take away ${SHED}, deleted outside`);
  undo();
  expect([...texts.value.keys()].toSorted()).toEqual([PANEL, SHED]);
  expect(nextUndo.value).toBe("write mine");
});

test.each(["saved anew", "back outside"])(
  "brought back by undo and %s, it is not taken away by redo",
  async (how) => {
    await outside(PANEL, null);
    undo();
    if (how === "saved anew") await save();
    else {
      await outside(PANEL, MINE);
      await expect.poll(() => unsaved.value).toEqual([]);
    }
    expect([held.get(PANEL), nextRedo.value, gone.value]).toEqual([MINE, null, []]);
  },
);
