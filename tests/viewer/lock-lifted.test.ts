// A file that may not be written and then may: what is said of it goes as soon as that is known, by the watch or by a save.
// The store is the test's; the design is read by nobody.

import { beforeEach, expect, test, vi } from "vitest";
import type { Following, SaveOutcome, Store } from "../../viewer/files/store.ts";

vi.stubGlobal(
  "Worker",
  class {
    readonly postMessage = (): void => undefined;
    readonly terminate = (): void => undefined;
    readonly addEventListener = (): void => undefined;
  },
);

const { edit } = await import("../../viewer/desk.ts");
const { locks } = await import("../../viewer/locks.ts");
const { openStore, save } = await import("../../viewer/files/saving.ts");
const { fileNews } = await import("../../viewer/files/stored-state.ts");
const { textHash } = await import("../../src/diagnostics/text-edit.ts");

const TEXT = "kind: panel\n";
const WHY = "panel.yaml is read-only on the disk";
let isLocked = false;
let held = TEXT;
let following: Following | null = null;

const bench: Store = {
  id: "bench",
  name: "bench",
  saving: "Save",
  load: async () => ({
    kind: "loaded",
    design: {
      texts: new Map([["panel.yaml", held]]),
      binaries: new Map(),
      locked: new Map(isLocked ? [["panel.yaml", WHY]] : []),
      isReadOnly: false,
      troubles: [],
    },
  }),
  save: async ([change]): Promise<SaveOutcome> => {
    if (isLocked) return { kind: "refused", why: WHY };
    held = change?.after ?? held;
    return { kind: "saved", how: "Saved" };
  },
  keepPicture: async () => ({ kind: "kept" }),
  follow: (by) => {
    following = by;
    return () => undefined;
  },
};

beforeEach(async () => {
  isLocked = false;
  held = TEXT;
  await openStore(bench);
  const file = "panel.yaml";
  edit([{ file, start: 0, end: 0, text: "# mine\n", baseHash: textHash(TEXT) }], "write a word");
  isLocked = true;
  await save();
});

test("a save that is refused says so, and what is locked is known from then on", () => {
  expect(fileNews.value?.words).toMatch(/^Not saved: panel.yaml is read-only on the disk/);
  expect([...locks.value.files.keys()]).toEqual(["panel.yaml"]);
});

test("made writable again it is said to be so in place of the refusal, once the watch tells", async () => {
  isLocked = false;
  following?.changed();
  await expect.poll(() => fileNews.value?.words).toBe("panel.yaml can be written again.");
  expect(locks.value.files.size).toBe(0);
});

test("made writable again it is saved by the next save, and no lock is left", async () => {
  isLocked = false;
  await save();
  expect(fileNews.value?.words).toBe("Saved: panel.yaml");
  expect(locks.value.files.size).toBe(0);
});
