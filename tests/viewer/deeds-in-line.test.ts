// What is asked for while the code of the deeds is on its way: done in the order in which it was asked for.

import { beforeEach, expect, test, vi } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import "../support/still-worker.ts";

let fetched: () => void = () => undefined;
const fetching = new Promise<void>((done) => {
  fetched = done;
});

vi.mock("../../viewer/panel/deeds-room.ts", async () => {
  await fetching;
  return { deeds: {} };
});

const { edit, history, openDesign, texts, undo } = await import("../../viewer/desk.ts");
const { withDeeds } = await import("../../viewer/panel/deeds-door.ts");
const { handsEmpty, inTurn } = await import("../../viewer/when-current.ts");

const FILE = "a.yaml";
const text = (): string => texts.value.get(FILE) ?? "";
const write = (word: string): void => {
  const [baseHash, end] = [textHash(text()), text().length];
  edit([{ file: FILE, baseHash, start: end, end, text: ` ${word}` }], `write ${word}`);
};

beforeEach(() => {
  void openDesign("words", { texts: new Map([[FILE, "one"]]), binaries: new Map() });
});

test("an undo takes back the drop before it, and not the one behind it; saving waits for both", async () => {
  write("two");
  withDeeds(() => write("three"));
  inTurn(undo);
  withDeeds(() => write("four"));
  const kept = handsEmpty().then(text);
  await Promise.resolve();
  expect(text()).toBe("one two");
  fetched();
  expect(await kept).toBe("one two four");
  expect(history.value.done.map(({ what }) => what)).toEqual(["write two", "write four"]);
  expect(history.value.undone).toEqual([]);
  await new Promise((done) => setTimeout(done));
  inTurn(undo);
  expect(text()).toBe("one two");
});
