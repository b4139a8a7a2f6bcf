// Deeds whose code can't be had: what was asked for behind them is done all the same.

import { expect, test, vi } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import "../support/still-worker.ts";

vi.mock("../../viewer/panel/deeds-room.ts", async () => {
  throw new Error("not there");
});

const { edit, openDesign, texts, undo } = await import("../../viewer/desk.ts");
const { said } = await import("../../viewer/panel/board.ts");
const { withDeeds } = await import("../../viewer/panel/deeds-door.ts");
const { handsEmpty, inTurn } = await import("../../viewer/when-current.ts");

test("an undo behind a drop that could not be made takes back the step before it", async () => {
  void openDesign("words", { texts: new Map([["a.yaml", "one"]]), binaries: new Map() });
  const at = { file: "a.yaml", baseHash: textHash("one"), start: 3, end: 3 };
  edit([{ ...at, text: " two" }], "write two");
  let isLost = false;
  withDeeds(
    () => undefined,
    () => {
      isLost = true;
    },
  );
  inTurn(undo);
  await handsEmpty();
  expect([texts.value.get("a.yaml"), isLost]).toEqual(["one", true]);
  expect(said.value).toMatch(/^Not done/);
});
