// Which pack the room of the job pack shows, and whether it is of the design as it stands, with workers that the test answers
// for: the first names each console it is asked for, the second makes a pack at once.

import { beforeEach, describe, expect, test, vi } from "vitest";
import type { DesignTexts } from "../../viewer/core-messages.ts";

interface Question {
  readonly number: number;
  readonly texts: DesignTexts;
}

/** Packs that were asked for; each is made when the test says so. */
const packsAsked: (() => void)[] = [];

const READ = { kind: "read", panels: [], console: { design: {} }, findings: [] };

vi.stubGlobal(
  "Worker",
  class {
    readonly isOfPacks: boolean;
    onmessage: (event: object) => void = () => undefined;
    constructor(address: URL) {
      this.isOfPacks = address.href.includes("pack.worker");
    }
    readonly addEventListener = (name: string, listener: (event: object) => void): void => {
      if (name === "message") this.onmessage = listener;
    };
    readonly terminate = (): void => undefined;
    readonly postMessage = ({ number, texts }: Question): void => {
      if (!this.isOfPacks) this.onmessage({ data: { ...READ, number } });
      else
        packsAsked.push(() => {
          const made = { files: [], missing: [], held: [], questions: 0, zip: zipOf(texts) };
          this.onmessage({ data: { kind: "made", number, made } });
        });
    };
  },
);

const zipOf = (texts: DesignTexts): object => ({
  name: [...texts.keys()].join(" "),
  bytes: new Uint8Array(),
});

const { chooseConsole, giveUpReading, openDesign, takeBinaries } = await import(
  "../../viewer/desk.ts"
);
const { askConsole, giveUp, isOutOfDate, makePack, news, shown, want, whole } = await import(
  "../../viewer/job-pack/pack-state.ts"
);

const TEXTS = new Map([
  ["one.yaml", "kind: console\nname: one\n"],
  ["two.yaml", "kind: console\nname: two\n"],
]);

const made = async (run: Promise<void>): Promise<void> => {
  packsAsked.shift()?.();
  await run;
};

const ALL = { kind: "all", only: "everything", card: false } as const;

let opened = 0;

beforeEach(async () => {
  opened += 1;
  const binaries = new Map([["case.stl", Uint8Array.of(1)]]);
  await openDesign(`bench ${opened}`, { texts: TEXTS, binaries });
  askConsole(true);
});

describe("after another console is chosen", () => {
  test("the packs of the one before are not shown, and are there again when it is", async () => {
    await made(makePack(want.value));
    await made(makePack(ALL));
    expect([shown.value?.made.zip?.name, whole.value?.zip?.name]).toEqual(["one.yaml", "one.yaml"]);
    chooseConsole("two.yaml");
    expect([shown.value, whole.value]).toEqual([null, null]);
    await made(makePack(want.value));
    expect(shown.value?.made.zip?.name).toBe("two.yaml");
    chooseConsole("one.yaml");
    expect([shown.value?.made.zip?.name, isOutOfDate.value]).toEqual(["one.yaml", false]);
  });

  test("the pack that was being made belongs to the one before", async () => {
    const run = makePack(want.value);
    chooseConsole("two.yaml");
    await made(run);
    expect(shown.value).toBeNull();
    chooseConsole("one.yaml");
    expect(shown.value?.made.zip?.name).toBe("one.yaml");
  });
});

test("what was said of one console's pack is not said of another's", async () => {
  await made(makePack(want.value));
  expect(news.value).not.toBe("");
  chooseConsole("two.yaml");
  expect(news.value).toBe("");
  chooseConsole("one.yaml");
  expect(news.value).not.toBe("");
});

test("a pack that was made before is not said to be nothing when making it again is given up", async () => {
  void makePack(want.value);
  giveUp();
  expect(news.value).toBe("Given up: nothing was made.");
  packsAsked.length = 0;
  await made(makePack(want.value));
  void makePack(want.value);
  giveUp();
  packsAsked.length = 0;
  expect(news.value).toBe("Given up: what is shown was made before.");
});

test("a shape that changes outside makes the packs that were made from it old", async () => {
  await made(makePack(want.value));
  await made(makePack(ALL));
  takeBinaries(new Map([["case.stl", Uint8Array.of(1)]]));
  expect([isOutOfDate.value, whole.value === null]).toEqual([false, false]);
  takeBinaries(new Map([["case.stl", Uint8Array.of(2)]]));
  expect([isOutOfDate.value, whole.value === null]).toEqual([true, true]);
});

test("a reading that was given up takes no pack away", async () => {
  await made(makePack(want.value));
  giveUpReading();
  expect(shown.value?.made.zip?.name).toBe("one.yaml");
});

test("while another pack is made nothing is said of the one before", async () => {
  await made(makePack(want.value));
  expect(news.value).not.toBe("");
  const run = makePack(ALL);
  expect(news.value).toBe("");
  await made(run);
  expect(news.value).toBe("one.yaml is made.");
});
