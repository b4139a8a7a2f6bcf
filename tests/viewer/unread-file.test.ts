// A file of the store that stands there and can't be read for the moment: the page keeps the text as it last was, says so, and
// takes over what stands there as soon as it can be read. The store is the test's.

import { beforeEach, expect, test } from "vitest";
import { benchStore } from "../support/bench-store.ts";
import "../support/still-worker.ts";

const { canUndo, edit, texts } = await import("../../viewer/desk.ts");
const { openStore, save } = await import("../../viewer/files/saving.ts");
const { conflicts, fileNews, gone, unreadNow, unsaved } = await import(
  "../../viewer/files/stored-state.ts"
);
const { textHash } = await import("../../src/diagnostics/text-edit.ts");

const [PANEL, SHED] = ["panel.yaml", "shed.yaml"];
const [TEXT, SHED_TEXT] = ["kind: panel\n", "kind: workshop\n"];
const WHY = "shed.yaml is not UTF-8 text";
const { store, files, unread, tell } = benchStore();

const words = (): string => fileNews.value?.words ?? "";

beforeEach(async () => {
  unread.clear();
  files.set(PANEL, TEXT).set(SHED, SHED_TEXT);
  await openStore(store);
});

test("it stays as it last was, is not said to be deleted, and leaves no step", async () => {
  unread.set(SHED, WHY);
  tell();
  await expect.poll(words).toBe(`Can't be read now, and shown as it last stood: ${SHED}`);
  expect(texts.value.get(SHED)).toBe(SHED_TEXT);
  expect([canUndo.value, gone.value, unsaved.value]).toEqual([false, [], []]);
  expect([...unreadNow.value]).toEqual([SHED]);
  files.set(SHED, `${SHED_TEXT}# dry\n`);
  unread.clear();
  tell();
  await expect.poll(words).toBe(`Changed outside and taken over: ${SHED}`);
  expect(texts.value.get(SHED)).toBe(`${SHED_TEXT}# dry\n`);
  expect([...unreadNow.value]).toEqual([]);
});

test("unchanged when it comes back it is said to be read again", async () => {
  unread.set(SHED, WHY);
  tell();
  await expect.poll(words).toMatch(/^Can't be read now/);
  unread.clear();
  tell();
  await expect.poll(words).toBe(`Can be read again: ${SHED}`);
});

test("edits of it are kept and not saved, and said to be so; what was refused is no news once it can be read", async () => {
  unread.set(SHED, WHY);
  tell();
  await expect.poll(words).toMatch(/^Can't be read now/);
  const at = { file: SHED, start: 0, end: 0, baseHash: textHash(SHED_TEXT) };
  edit([{ ...at, text: "# mine\n" }], "write a word");
  await save();
  expect(words()).toBe(`Not saved: ${WHY}. Nothing is lost: the edits are still here.`);
  files.set(SHED, `${SHED_TEXT}name: shed\n# dry\n`);
  unread.clear();
  tell();
  await expect.poll(words).toBe(`Changed here and outside, joined: ${SHED}`);
  expect(texts.value.get(SHED)).toBe(`# mine\n${SHED_TEXT}name: shed\n# dry\n`);
  expect(conflicts.value).toEqual([]);
});
