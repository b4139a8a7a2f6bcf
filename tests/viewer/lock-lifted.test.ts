// A file that may not be written and then may: what is said of it goes as soon as that is known, by the watch or by a save.
// The store is the test's; the design is read by nobody.

import { beforeEach, expect, test } from "vitest";
import { benchStore } from "../support/bench-store.ts";
import "../support/still-worker.ts";

const { edit, refusedStep, undo } = await import("../../viewer/desk.ts");
const { said, say } = await import("../../viewer/panel/board.ts");
const { locks } = await import("../../viewer/locks.ts");
const { openStore, save } = await import("../../viewer/files/saving.ts");
const { fileNews } = await import("../../viewer/files/stored-state.ts");
const { textHash } = await import("../../src/diagnostics/text-edit.ts");

const PANEL = "panel.yaml";
const TEXT = "kind: panel\n";
const WHY = "panel.yaml is read-only on the disk";
const { store, files, locked, tell } = benchStore();

beforeEach(async () => {
  locked.clear();
  files.set(PANEL, TEXT);
  await openStore(store);
  edit(
    [{ file: PANEL, start: 0, end: 0, text: "# mine\n", baseHash: textHash(TEXT) }],
    "write a word",
  );
  locked.set(PANEL, WHY);
  await save();
});

test("a save that is refused says so, and what is locked is known from then on", () => {
  expect(fileNews.value?.words).toMatch(/^Not saved: panel.yaml is read-only on the disk/);
  expect([...locks.value.files.keys()]).toEqual(["panel.yaml"]);
});

test("made writable again it is said to be so in place of the refusal, once the watch tells", async () => {
  locked.clear();
  tell();
  await expect.poll(() => fileNews.value?.words).toBe("panel.yaml can be written again.");
  expect(locks.value.files.size).toBe(0);
});

test("made writable again it is saved by the next save, and no lock is left", async () => {
  locked.clear();
  await save();
  expect(fileNews.value?.words).toBe("Saved: panel.yaml");
  expect(locks.value.files.size).toBe(0);
});

test("a step that was refused for a lock, and what the panel's room says of it, are no news once it is gone", async () => {
  undo();
  say(`Not done: ${WHY}.`);
  expect(refusedStep.value).toBe(WHY);
  locked.clear();
  tell();
  await expect.poll(() => refusedStep.value).toBeNull();
  expect(said.value).toBe("");
});

test("a step that was refused is no news behind the next edit", () => {
  undo();
  expect(refusedStep.value).toBe(WHY);
  locks.value = { design: null, files: new Map() };
  const text = `# mine\n${TEXT}`;
  edit([{ file: PANEL, start: 0, end: 0, text: "# more\n", baseHash: textHash(text) }], "write");
  expect(refusedStep.value).toBeNull();
});
