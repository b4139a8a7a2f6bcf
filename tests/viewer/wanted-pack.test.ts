// How many questions are open in the packs that the page makes: held against the first page of each pack, which is written by
// other code.

import { expect, test } from "vitest";
import type { PackOf } from "../../viewer/job-pack/pack-messages.ts";
import { wantedPack } from "../../viewer/job-pack/wanted-pack.ts";
import { openKernel } from "../support/kernel.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";
import { testLibrary } from "../support/test-library.ts";
import { zipEntries } from "../support/zip-reader.ts";

/** Without the shelf that stands in the first panel's case. */
const TEXTS = new Map(
  Object.entries(SMALL_CONSOLE).map(([path, text]) => [
    path,
    text.replace(/obstacles:[\s\S]*/, ""),
  ]),
);

const made = async (what: PackOf) => {
  const want = { ...what, only: "everything", card: false } as const;
  const bench = {
    library: testLibrary(),
    kernel: openKernel,
    tell: () => undefined,
    memory: new Map(),
  };
  return (await wantedPack(want, { texts: TEXTS, binaries: new Map() }, bench)).made;
};

/** By folder, as each pack's README says it. */
const heldIn = (zip: Uint8Array): ReadonlyMap<string, number> =>
  new Map(
    zipEntries(Buffer.from(zip))
      .filter(({ name }) => name.endsWith("/README.md"))
      .map(({ name, bytes }) => {
        const [, count = "0"] = /\*\*HOLD: (\d+) /.exec(bytes.toString("utf8")) ?? [];
        return [name.split("/").at(-2) ?? "", Number(count)];
      }),
  );

test("all packs in one hold every question of the single ones", async () => {
  const all = await made({ kind: "all" });
  const held = heldIn(all.zip?.bytes ?? new Uint8Array());
  expect([...held.keys()].toSorted()).toEqual(["console", "one", "two"]);
  const one = await made({ kind: "panel", panel: "one" });
  expect(one.questions).toBe(held.get("one"));
  expect(one.questions).toBeGreaterThan(0);
  // No file of this console is read twice, so that no question stands in two of its packs.
  expect(all.questions).toBe([...held.values()].reduce((sum, count) => sum + count, 0));
});
