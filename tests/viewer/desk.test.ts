// The desk with a worker that the test answers for: steps of several edits, what is refused, and which questions reach the
// worker while it is at work.

import { beforeEach, describe, expect, test, vi } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import type { DesignTexts } from "../../viewer/core-messages.ts";

interface Asked {
  readonly number: number;
  readonly texts: DesignTexts;
}

/** Questions that have reached the worker, unanswered until the test answers. */
const asked: Asked[] = [];
/** How many questions had come when a worker was ended. */
const ended: number[] = [];
let answer: (data: object) => void = () => undefined;

vi.stubGlobal(
  "Worker",
  class {
    readonly postMessage = (question: Asked): void => void asked.push(question);
    readonly terminate = (): void => void ended.push(asked.length);
    readonly addEventListener = (name: string, listener: (event: object) => void): void => {
      if (name === "message") answer = (data) => listener({ data });
    };
  },
);

const {
  abandon,
  addBinary,
  begin,
  binaries,
  canRedo,
  canUndo,
  chooseConsole,
  choosePanel,
  commit,
  designName,
  edit,
  giveUpReading,
  isCurrent,
  isDrawn,
  isReading,
  keptHistory,
  nextUndo,
  openDesign,
  panel: openPanel,
  panels,
  progress,
  redo,
  refusedStep,
  selection,
  settleAll,
  settleWith,
  takeBinaries,
  texts,
  undo,
} = await import("../../viewer/desk.ts");
const { locks } = await import("../../viewer/locks.ts");

const FILE = "a.yaml";

const text = (): string => texts.value.get(FILE) ?? "";

const write = (from: string, to: string): ReturnType<typeof edit> => {
  const start = text().indexOf(from);
  const baseHash = textHash(text());
  return edit([{ file: FILE, baseHash, start, end: start + from.length, text: to }], `write ${to}`);
};

const settled = async (): Promise<void> => {
  for (let turn = 0; turn < 4; turn += 1) await Promise.resolve();
};

const reply = async (): Promise<void> => {
  const { number } = asked.shift()!;
  answer({ kind: "read", number, panels: [], console: null, findings: [] });
  await settled();
};

beforeEach(async () => {
  locks.value = { design: null, files: new Map() };
  refusedStep.value = null;
  while (asked.length > 0) await reply();
  void openDesign("pumps", { texts: new Map([[FILE, "one two three\n"]]), binaries: new Map() });
  await reply();
});

describe("a picture that comes before its findings", () => {
  const panel = (title: string): object => ({
    kind: "changed",
    panel: { name: "pumps", file: FILE, title },
    place: -1,
    content: { kind: "anew", value: { design: {}, layout: {} } },
    picture: null,
  });
  const titles = (): readonly string[] => panels.value.map(({ title }) => title);
  const answered = async (kind: "drawn" | "read", title: string): Promise<void> => {
    const { number } = kind === "drawn" ? asked[0]! : asked.shift()!;
    answer({ kind, number, panels: [panel(title)], console: null, findings: [] });
    await settled();
  };

  test("is shown at once, and nothing is said to have been judged", async () => {
    write("one", "1");
    await answered("read", "as it was");
    write("two", "2");
    expect([isDrawn.value, isCurrent.value]).toEqual([false, false]);
    await answered("drawn", "as it is");
    expect([titles(), isDrawn.value, isCurrent.value]).toEqual([["as it is"], true, false]);
    await answered("read", "as it is");
    expect([titles(), isDrawn.value, isCurrent.value]).toEqual([["as it is"], true, true]);
  });

  test("of the console that was looked at before is none of the one that is looked at now", async () => {
    const console = (name: string): string => `consolewright: 1\nkind: console\nname: ${name}\n`;
    const consoles = new Map([
      ["one.yaml", console("one")],
      ["two.yaml", console("two")],
    ]);
    void openDesign("both", { texts: consoles, binaries: new Map() });
    await reply();
    addBinary("case.stl", Uint8Array.of(1));
    chooseConsole("two.yaml");
    expect([isDrawn.value, isCurrent.value]).toEqual([false, false]);
    await answered("drawn", "of the first");
    expect([titles(), isDrawn.value]).toEqual([[], false]);
    await answered("read", "of the first");
    expect([titles(), isCurrent.value]).toEqual([[], false]);
    await answered("read", "of the second");
    expect([titles(), isDrawn.value, isCurrent.value]).toEqual([["of the second"], true, true]);
  });

  test("of a text that was changed again is shown too, and is not that of the text", async () => {
    write("one", "1");
    await answered("read", "as it was");
    write("two", "2");
    write("three", "3");
    await answered("drawn", "with a 2");
    expect([titles(), isDrawn.value]).toEqual([["with a 2"], false]);
  });

  test("of a design that is no longer open is not", async () => {
    write("one", "1");
    await answered("read", "as it was");
    write("two", "2");
    const { number } = asked[0]!;
    void openDesign("lamps", { texts: new Map([[FILE, "four\n"]]), binaries: new Map() });
    answer({ kind: "drawn", number, panels: [panel("pumps still")] });
    await settled();
    expect(titles()).toEqual([]);
  });
});

test("a reading without the panel that is open leaves nothing picked: another may have things of the same names", async () => {
  const named = (name: string): object => ({
    kind: "changed",
    panel: { name, file: `${name}.yaml`, title: name },
    place: -1,
    content: { kind: "anew", value: { design: {}, layout: {} } },
    picture: null,
  });
  const read = async (...names: readonly string[]): Promise<void> => {
    write("o", "0");
    const { number } = asked.shift()!;
    answer({ kind: "read", number, panels: names.map(named), console: null, findings: [] });
    await settled();
  };
  void openDesign("both", { texts: new Map([[FILE, "oooo\n"]]), binaries: new Map() });
  await read("lamps", "pumps");
  choosePanel("pumps");
  selection.value = ["pump"];
  await read("lamps", "pumps");
  expect(selection.value).toEqual(["pump"]);
  await read("lamps");
  expect([openPanel.value?.name, selection.value]).toEqual(["lamps", []]);
});

describe("a step of several edits", () => {
  test("is taken back at once, and can't be while it is open", () => {
    begin("drag");
    write("one", "1");
    write("two", "2");
    expect(canUndo.value).toBe(false);
    undo();
    expect(text()).toBe("1 2 three\n");
    commit();
    expect([canUndo.value, nextUndo.value]).toEqual([true, "drag"]);
    undo();
    expect([text(), canRedo.value]).toEqual(["one two three\n", true]);
    redo();
    expect(text()).toBe("1 2 three\n");
  });

  test("that is given up leaves neither edits nor a step", () => {
    begin("drag");
    write("one", "1");
    abandon();
    expect([text(), canUndo.value]).toEqual(["one two three\n", false]);
  });

  test("is in the history that is kept with its texts: they would be nobody's else", () => {
    write("one", "1");
    begin("drag");
    write("two", "2");
    const copy = { texts: texts.value, history: keptHistory() };
    void openDesign("pumps", { texts: copy.texts, binaries: new Map() }, { ...copy, first: null });
    expect(nextUndo.value).toBe("drag");
    undo();
    undo();
    expect([text(), refusedStep.value, canUndo.value]).toEqual(["one two three\n", null, false]);
  });

  test("without an edit is none", () => {
    begin("drag");
    commit();
    expect(canUndo.value).toBe(false);
  });
});

describe("an edit", () => {
  test("for another text is refused, and changes nothing", () => {
    const stale = { file: FILE, baseHash: "stale", start: 0, end: 1, text: "x" };
    expect(edit([stale], "x").kind).toBe("refused");
    expect([text(), canUndo.value]).toEqual(["one two three\n", false]);
  });

  test("of a locked file is refused with its reason, and so is a step back into it", () => {
    write("one", "1");
    const why = `${FILE} is read-only on the disk`;
    locks.value = { design: null, files: new Map([[FILE, why]]) };
    expect(write("two", "2")).toEqual({ kind: "refused", why });
    undo();
    expect([text(), refusedStep.value]).toEqual(["1 two three\n", why]);
    locks.value = { design: null, files: new Map() };
    undo();
    expect([text(), refusedStep.value]).toEqual(["one two three\n", null]);
  });

  test("that a view has in hand is made when it is asked for", () => {
    let inHand = 1;
    settleWith(() => {
      if (inHand-- === 1) write("one", "1");
    });
    settleAll();
    expect(text()).toBe("1 two three\n");
  });
});

test("while the worker reads, only the newest texts wait for it", async () => {
  write("one", "1");
  write("two", "2");
  write("three", "3");
  expect(isCurrent.value).toBe(false);
  expect(asked.map((each) => each.texts.get(FILE))).toEqual(["1 two three\n"]);
  await reply();
  expect(asked.map((each) => each.texts.get(FILE))).toEqual(["1 2 3\n"]);
  expect(isCurrent.value).toBe(false);
  await reply();
  expect([asked.length, isCurrent.value]).toEqual([0, true]);
});

test("a reading of a design that is no more open is not shown", async () => {
  write("one", "1");
  void openDesign("shed", { texts: new Map([[FILE, "other\n"]]), binaries: new Map() });
  await reply();
  expect(progress.value).toEqual({ kind: "reading", what: "shed" });
  await reply();
  expect(progress.value).toEqual({ kind: "shown", what: "shed" });
});

test("a reading that is given up ends its worker; the texts stay, and the next change is read", async () => {
  write("one", "1");
  write("two", "2");
  expect([isReading.value, asked.length]).toEqual([true, 1]);
  const before = ended.length;
  giveUpReading();
  await settled();
  expect(ended.length).toBe(before + 1);
  expect(progress.value).toMatchObject({
    kind: "refused",
    why: expect.stringContaining("given up"),
  });
  expect([text(), isReading.value]).toEqual(["1 2 three\n", false]);
  // What the ended worker would still say is nobody's answer.
  await reply();
  expect(progress.value.kind).toBe("refused");
  write("three", "3");
  expect([isReading.value, asked.at(-1)?.texts.get(FILE)]).toEqual([true, "1 2 3\n"]);
  expect(progress.value).toEqual({ kind: "reading", what: "pumps" });
  await reply();
  expect([progress.value, isCurrent.value]).toEqual([{ kind: "shown", what: "pumps" }, true]);
  expect(designName.value).toBe("pumps");
});

describe("a picture that was added in the page", () => {
  const PATH = "panel.jpg";
  const mine = Uint8Array.of(1, 2, 3);
  const theirs = Uint8Array.of(4, 5, 6);

  test("is held while no stored text names it", () => {
    addBinary(PATH, mine);
    takeBinaries(new Map([["case.stl", theirs]]));
    expect(binaries.value.get(PATH)).toEqual(mine);
  });

  test("gives way to newer bytes of the same file once the store has it", () => {
    addBinary(PATH, mine);
    takeBinaries(new Map([[PATH, mine]]));
    takeBinaries(new Map([[PATH, theirs]]));
    expect(binaries.value.get(PATH)).toEqual(theirs);
    takeBinaries(new Map());
    expect(binaries.value.has(PATH)).toBe(false);
  });

  test("is read before the page says that what it shows is current", async () => {
    write("one", "1");
    await reply();
    expect([isCurrent.value, isDrawn.value, isReading.value]).toEqual([true, true, false]);
    addBinary(PATH, mine);
    expect([isCurrent.value, isDrawn.value, isReading.value]).toEqual([false, false, true]);
    takeBinaries(new Map([[PATH, theirs]]));
    // The answer is of what was there when it was asked.
    await reply();
    expect([isCurrent.value, isDrawn.value, isReading.value]).toEqual([false, false, true]);
    await reply();
    expect([isCurrent.value, isDrawn.value, isReading.value]).toEqual([true, true, false]);
    takeBinaries(new Map([[PATH, Uint8Array.from(theirs)]]));
    expect([isCurrent.value, asked.length]).toEqual([true, 0]);
  });

  test("is read again after a reading that was given up, which is said", async () => {
    write("one", "1");
    giveUpReading();
    await settled();
    asked.length = 0;
    addBinary(PATH, mine);
    expect(progress.value).toEqual({ kind: "reading", what: "pumps" });
    await reply();
    expect(progress.value).toEqual({ kind: "shown", what: "pumps" });
  });
});
