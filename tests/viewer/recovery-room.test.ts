// A recovery copy whose newer pictures find no room in the browser: what it says of them, and what it gives back. The browser's
// keep is the test's; the design is read by nobody.

import { expect, test, vi } from "vitest";
import "../support/still-worker.ts";

const records = new Map<string, object>();
let isFull = false;

// On plain http from afar a browser has no locks: every copy is taken for one that was left over.
vi.stubGlobal("navigator", {});
vi.mock("../../viewer/files/browser-keep.ts", () => ({
  keep: async (name: string, record: { readonly key: string }) => {
    if (isFull && name === "recovery-bytes") throw new Error("the disk is full");
    records.set(`${name} ${record.key}`, record);
  },
  forget: async (name: string, key: string) => void records.delete(`${name} ${key}`),
  kept: async (name: string) =>
    [...records].filter(([key]) => key.startsWith(`${name} `)).map(([, record]) => record),
  keptAt: async (name: string, key: string) => records.get(`${name} ${key}`),
}));

const { addBinary, openDesign } = await import("../../viewer/desk.ts");
const { looseStore } = await import("../../viewer/files/loose-store.ts");
const { keepNow, leftOver, notKept } = await import("../../viewer/files/recovery.ts");
const { store, stored } = await import("../../viewer/files/stored-state.ts");

test("an older picture is not given back for the one that found no room", async () => {
  const before = new Map([["panel.yaml", "kind: panel\n"]]);
  const binaries = new Map([["front.jpg", Uint8Array.of(1)]]);
  store.value = looseStore("bench", before, { binaries, troubles: [] });
  stored.value = before;
  void openDesign("bench", { texts: new Map([["panel.yaml", "kind: panel # mine\n"]]), binaries });
  await keepNow();
  expect(notKept.value).toEqual([]);
  isFull = true;
  addBinary("front.jpg", Uint8Array.of(2));
  await keepNow();
  expect(notKept.value).toEqual(["front.jpg"]);
  const left = await leftOver();
  if (left?.kind !== "texts") throw new Error("nothing was left over");
  const loaded = await left.store.load();
  if (loaded.kind !== "loaded") throw new Error("it was not loaded");
  expect(loaded.design.troubles).toEqual(["front.jpg was not kept: choose it again with the rest"]);
  expect([...loaded.design.binaries.keys()]).toEqual([]);
});
