// Another design that is opened is first seen whole, in the panel's room and in the console's. Read by nobody.

import { expect, test } from "vitest";
import "../support/still-worker.ts";

const { looseStore } = await import("../../viewer/files/loose-store.ts");
const { openStore } = await import("../../viewer/files/saving.ts");
const { sight } = await import("../../viewer/panel/board.ts");
const { changeLook, isFramed, look, measuring, NOTHING_MEASURED } = await import(
  "../../viewer/console/console-state.ts"
);

const opened = (name: string): Promise<string | null> =>
  openStore(
    looseStore(name, new Map([["console.yaml", "kind: console\n"]]), {
      binaries: new Map(),
      troubles: [],
    }),
  );

test("nothing of how one design was looked at is left for the next", async () => {
  await opened("first");
  sight.value = { x: 10, y: 20, scale: 8 };
  isFramed.value = true;
  measuring.value = {
    ...NOTHING_MEASURED,
    first: { at: { at: { x: 0, y: 0, z: 0 }, kind: "face" }, thing: "face on winch" },
  };
  changeLook({
    chosen: "winch",
    turned: "winch",
    apart: 20,
    cut: { normal: { x: 1, y: 0, z: 0 }, offset: 300 },
    fadeFrame: true,
  });
  await opened("second");
  expect(sight.value).toBeNull();
  expect(isFramed.value).toBe(false);
  expect(measuring.value).toEqual(NOTHING_MEASURED);
  expect(look.value).toMatchObject({ chosen: null, turned: null, apart: 0, cut: null });
  // What a person has chosen to be shown is theirs.
  expect(look.value.fadeFrame).toBe(true);
});
