// Snapshots with the shapes and photographs that a design names, in a keep that the test holds: kept once, brought back where they
// are missing, left where they are another file by now, and taken out with the last snapshot that has them.

import { beforeEach, expect, test, vi } from "vitest";
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

vi.mock("../../viewer/files/browser-keep.ts", () => ({
  keep: async (name: string, record: KeptRecord) => {
    if (full.has(name)) throw new DOMException("no room", "QuotaExceededError");
    room(name).set(record.key, structuredClone(record));
  },
  forget: async (name: string, key: string) => void room(name).delete(key),
  kept: async (name: string) => [...room(name).values()],
  keptAt: async (name: string, key: string) => room(name).get(key),
  keptKeys: async (name: string) => [...room(name).keys()],
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

const { binaries, openDesign, takeBinaries, texts } = await import("../../viewer/desk.ts");
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
  expect(fileNews.value?.words).toContain(
    "photo.jpg is in the page alone: the folder can't be written",
  );
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
