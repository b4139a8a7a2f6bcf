// What waits for a reading is in the texts before they are kept, unless the reading is given up.

import { beforeEach, expect, test } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import { answer, asked } from "../support/asked-worker.ts";

const { edit, giveUpReading, openDesign, texts } = await import("../../viewer/desk.ts");
const { handsEmpty, whenCurrent } = await import("../../viewer/when-current.ts");

const FILE = "a.yaml";
const text = (): string => texts.value.get(FILE) ?? "";
const write = (word: string): void => {
  const [baseHash, end] = [textHash(text()), text().length];
  edit([{ file: FILE, baseHash, start: end, end, text: ` ${word}` }], `write ${word}`);
};

const turn = (): Promise<void> => new Promise((done) => setTimeout(done));

const reply = async (): Promise<void> => {
  const { number } = asked.shift()!;
  answer({ kind: "read", number, panels: [], console: null, findings: [] });
  await turn();
};

beforeEach(async () => {
  void openDesign("words", { texts: new Map([[FILE, "one"]]), binaries: new Map() });
  await reply();
});

test("two deeds that wait for their readings are both in the texts that are kept", async () => {
  write("two");
  whenCurrent(() => write("three"));
  whenCurrent(() => write("four"));
  const kept = handsEmpty().then(text);
  await reply();
  await reply();
  expect(await kept).toBe("one two three four");
});

test("a reading that is given up keeps nobody from saving", async () => {
  write("two");
  whenCurrent(() => write("three"));
  const kept = handsEmpty().then(text);
  giveUpReading();
  expect(await kept).toBe("one two");
});
