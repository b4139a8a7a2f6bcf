// Snapshots with the shapes and photographs that a design names, in a keep that the test holds: kept once, brought back where they
// are missing, left where they are another file by now, and taken out with the last snapshot that has them.

import { beforeEach, describe, expect, test, vi } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import type { Store } from "../../viewer/files/store.ts";

interface KeptRecord {
  readonly key: string;
}

const rooms = new Map<string, Map<string, KeptRecord>>();
const room = (name: string): Map<string, KeptRecord> => {
  const there = rooms.get(name) ?? new Map<string, KeptRecord>();
  rooms.set(name, there);
  return there;
};
/** Names of rooms that have no room left. */
const full = new Set<string>();
/** Names of rooms that don't answer. */
const lost = new Set<string>();
const answering = (name: string): Map<string, KeptRecord> => {
  if (lost.has(name)) throw new DOMException("no keep", "UnknownError");
  return room(name);
};

vi.mock("../../viewer/files/browser-keep.ts", () => ({
  keep: async (name: string, record: KeptRecord) => {
    if (full.has(name)) throw new DOMException("no room", "QuotaExceededError");
    room(name).set(record.key, structuredClone(record));
  },
  forget: async (name: string, key: string) => void answering(name).delete(key),
  kept: async (name: string) => [...answering(name).values()],
  keptAt: async (name: string, key: string) => answering(name).get(key),
  keptKeys: async (name: string) => [...answering(name).keys()],
}));

vi.stubGlobal("navigator", {});
vi.stubGlobal(
  "Worker",
  class {
    readonly addEventListener = (): void => undefined;
    readonly terminate = (): void => undefined;
    readonly postMessage = (): void => undefined;
  },
);

const { binaries, edit, nextUndo, openDesign, redo, takeBinaries, texts, undo } = await import(
  "../../viewer/desk.ts"
);
const { bringBack, findSnapshots, removeSnapshot, snapshots, takeSnapshot } = await import(
  "../../viewer/files/snapshots.ts"
);
const { fileNews, store } = await import("../../viewer/files/stored-state.ts");

/** Pictures that were put beside the texts in the store. */
const placed = new Map<string, string>();
let refusal: string | null = null;

const bench: Store = {
  id: "bench",
  name: "bench",
  saving: "Save",
  load: async () => ({ kind: "trouble", why: "not asked for" }),
  save: async () => ({ kind: "saved", how: "" }),
  keepPicture: async (path, bytes) => {
    if (refusal !== null) return { kind: "refused", why: refusal };
    placed.set(path, bytes.join(" "));
    return { kind: "kept" };
  },
  follow: () => () => undefined,
};

const TEXT = "kind: console\nname: bench\n";
const CASE = Uint8Array.of(1, 2, 3);
const PHOTO = Uint8Array.of(4, 5);

beforeEach(() => {
  rooms.clear();
  full.clear();
  lost.clear();
  placed.clear();
  refusal = null;
  store.value = bench;
  void openDesign("bench", {
    texts: new Map([["console.yaml", TEXT]]),
    binaries: new Map([
      ["case.stl", CASE],
      ["photo.jpg", PHOTO],
    ]),
  });
});

const taken = async (name: string) => {
  await takeSnapshot(name);
  return snapshots.value.find((each) => each.name === name)!;
};

test("a photograph that is gone is put beside the texts again, byte for byte", async () => {
  const snapshot = await taken("whole");
  takeBinaries(new Map([["case.stl", CASE]]));
  expect(binaries.value.has("photo.jpg")).toBe(false);
  await bringBack(snapshot);
  expect(binaries.value.get("photo.jpg")).toEqual(PHOTO);
  expect([...placed]).toEqual([["photo.jpg", "4 5"]]);
  expect(fileNews.value?.words).toBe('Brought back "whole": photo.jpg');
});

test("a shape that is another one by now stays, and that is said", async () => {
  const snapshot = await taken("whole");
  const other = Uint8Array.of(9);
  takeBinaries(
    new Map([
      ["case.stl", other],
      ["photo.jpg", PHOTO],
    ]),
  );
  await bringBack(snapshot);
  expect(binaries.value.get("case.stl")).toEqual(other);
  expect(placed.size).toBe(0);
  expect(fileNews.value?.words).toBe(
    'Nothing to bring back from "whole"; case.stl is another file now and stays; compare to save the one of the snapshot',
  );
});

test("what the store refuses is in the page, and that is said", async () => {
  const snapshot = await taken("whole");
  takeBinaries(new Map([["case.stl", CASE]]));
  refusal = "the folder can't be written";
  await bringBack(snapshot);
  expect(binaries.value.get("photo.jpg")).toEqual(PHOTO);
  expect(fileNews.value?.words).toBe(
    'Brought back "whole": photo.jpg; photo.jpg is in the page alone: the folder can\'t be written',
  );
});

test("another design that is opened while files are brought back gets none of them", async () => {
  const snapshot = await taken("whole");
  takeBinaries(new Map());
  const done = bringBack(snapshot);
  const foreign = new Map<string, string>();
  store.value = {
    ...bench,
    id: "other",
    keepPicture: async (path, bytes) => {
      foreign.set(path, bytes.join(" "));
      return { kind: "kept" };
    },
  };
  const other = { texts: new Map([["a.yaml", "kind: panel\n"]]), binaries: new Map() };
  void openDesign("other", other);
  await done;
  expect([...foreign.keys(), ...binaries.value.keys()]).toEqual([]);
  expect(fileNews.value?.words).toContain("another design was opened");
});

test("a snapshot has the files that were there when it was asked for", async () => {
  // The browser's lock is given later, when another window is done.
  const later = {
    request: (_name: string, work: () => Promise<void>) => Promise.resolve().then(work),
  };
  vi.stubGlobal("navigator", { locks: later });
  const done = taken("whole");
  takeBinaries(new Map());
  const { files } = await done;
  vi.stubGlobal("navigator", {});
  expect([...(files?.keys() ?? [])].toSorted()).toEqual(["case.stl", "photo.jpg"]);
});

test("a keep that can't be read or emptied is told of", async () => {
  takeBinaries(
    new Map([
      ["case.stl", CASE],
      ["photo.jpg", Uint8Array.of(7, 7)],
    ]),
  );
  const snapshot = await taken("whole");
  takeBinaries(new Map([["case.stl", CASE]]));
  lost.add("snapshot-bytes");
  await bringBack(snapshot);
  expect(fileNews.value?.words).toContain("photo.jpg can't be read from the browser's keep");
  lost.add("snapshots");
  await removeSnapshot(snapshot);
  expect(fileNews.value).toEqual({
    kind: "refused",
    words:
      '"whole" was not removed: the browser can\'t write what it keeps; the disk under it may be full',
  });
});

const EDITED = `${TEXT}revision: B\n`;
const withoutPhoto = (): void => takeBinaries(new Map([["case.stl", CASE]]));
const edited = (): void => {
  const [baseHash, end] = [textHash(TEXT), TEXT.length];
  edit([{ file: "console.yaml", baseHash, start: end, end, text: "revision: B\n" }], "revise");
};
const photoNow = (): Uint8Array | null | undefined => binaries.value.get("photo.jpg");
const textNow = (): string | undefined => texts.value.get("console.yaml");
const said = (words: string): Promise<void> => expect.poll(() => fileNews.value?.words).toBe(words);

describe("a step that has brought files back", () => {
  test.each<readonly [string, () => void]>([
    [
      "lie in the page alone, as those of loose files do",
      () => {
        store.value = { ...bench, id: "loose bench" };
      },
    ],
    [
      "the store has refused",
      () => {
        refusal = "the folder can't be written";
      },
    ],
  ])("takes those that %s out again, and brings them again", async (_which, prepare) => {
    prepare();
    const snapshot = await taken("whole");
    withoutPhoto();
    edited();
    await bringBack(snapshot);
    expect([textNow(), photoNow()]).toEqual([TEXT, PHOTO]);
    // What the step has brought outlives its snapshot.
    await removeSnapshot(snapshot);
    undo();
    await said('Taken back: bring back "whole"; out of the page again: photo.jpg');
    expect([textNow(), photoNow()]).toEqual([EDITED, undefined]);
    redo();
    await expect.poll(photoNow).toEqual(PHOTO);
    expect(textNow()).toBe(TEXT);
    undo();
    redo();
    undo();
    await expect.poll(photoNow).toBeUndefined();
    undo();
    expect(textNow()).toBe(TEXT);
  });

  test("leaves those that the store has where they are, and says so", async () => {
    const snapshot = await taken("whole");
    withoutPhoto();
    edited();
    await bringBack(snapshot);
    undo();
    await said(
      'Taken back: bring back "whole"; undo takes no file away from where the design is kept: photo.jpg stays',
    );
    expect([textNow(), photoNow(), placed.size]).toEqual([EDITED, PHOTO, 1]);
    redo();
    expect([textNow(), photoNow()]).toEqual([TEXT, PHOTO]);
  });
});

describe("such a step", () => {
  test("is one where no text differs, too", async () => {
    store.value = { ...bench, id: "loose bench" };
    const snapshot = await taken("whole");
    withoutPhoto();
    await bringBack(snapshot);
    expect(nextUndo.value).toBe('bring back "whole"');
    undo();
    await expect.poll(photoNow).toBeUndefined();
  });

  test("is told of where a file can't be brought again", async () => {
    store.value = { ...bench, id: "loose bench" };
    const snapshot = await taken("whole");
    withoutPhoto();
    await bringBack(snapshot);
    undo();
    await expect.poll(photoNow).toBeUndefined();
    takeBinaries(new Map([["photo.jpg", CASE]]));
    redo();
    await said(
      'Done again: bring back "whole"; photo.jpg is another file now and stays; compare to save the one of the snapshot',
    );
    undo();
    await said('Taken back: bring back "whole"; photo.jpg is another file now and stays');
    expect(photoNow()).toEqual(CASE);
  });
});

test("contents are kept once, and go with the last snapshot that has them", async () => {
  const first = await taken("first");
  const second = await taken("second");
  expect(room("snapshot-bytes").size).toBe(2);
  await removeSnapshot(first);
  expect(room("snapshot-bytes").size).toBe(2);
  await removeSnapshot(second);
  expect(room("snapshot-bytes").size).toBe(0);
});

test("where the browser has no room for them the texts are kept, and what is missing is said twice", async () => {
  full.add("snapshot-bytes");
  const snapshot = await taken("bare");
  expect(snapshot.leftOut).toEqual(["case.stl", "photo.jpg"]);
  expect(fileNews.value?.words).toBe('Kept as "bare", without case.stl, photo.jpg');
  takeBinaries(new Map([["case.stl", CASE]]));
  await bringBack(snapshot);
  expect(fileNews.value?.words).toBe(
    'Nothing to bring back from "bare"; photo.jpg is missing, and the snapshot has none',
  );
});

test("a snapshot of an earlier version of the page brings its texts back", async () => {
  const texts0 = new Map([["console.yaml", `${TEXT}revision: B\n`]]);
  const old = { key: "snapshot 1", design: "bench", name: "old", when: 1, texts: texts0 };
  room("snapshots").set(old.key, old);
  await findSnapshots();
  const [snapshot] = snapshots.value;
  expect(snapshot?.files).toBeNull();
  await bringBack(snapshot!);
  expect(texts.value.get("console.yaml")).toBe(`${TEXT}revision: B\n`);
  expect(fileNews.value?.words).toBe('Brought back "old": console.yaml');
});

const whole = crypto;

test.each([
  ["a name of its own", { randomUUID: undefined, subtle: crypto.subtle }],
  ["a way to tell contents apart", { randomUUID: () => "1", subtle: undefined }],
])(
  "where the browser gives a page no %s, as on plain http from afar, why is said plainly",
  async (_what, given) => {
    vi.stubGlobal("crypto", given);
    await takeSnapshot("whole");
    vi.stubGlobal("crypto", whole);
    expect(room("snapshots").size).toBe(0);
    expect(fileNews.value?.words).toMatch(
      /^"whole" was not kept: .*plain http from another machine/,
    );
    expect(fileNews.value?.words).not.toMatch(/randomUUID|subtle|digest|undefined/);
  },
);
