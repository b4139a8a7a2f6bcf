// A thing that is dragged while somebody else takes it out of the text: the drop is told of, and moves nothing.

import { expect, test } from "vitest";
import "../support/still-worker.ts";

const { history, openDesign } = await import("../../viewer/desk.ts");
const { drag, said } = await import("../../viewer/panel/board.ts");
const { letGo } = await import("../../viewer/panel/dragging.ts");

test("what is dropped and not there any more is said not to be moved", () => {
  void openDesign("pumps", { texts: new Map([["a.yaml", "x"]]), binaries: new Map() });
  const along: ReadonlySet<string> = new Set(["pump"]);
  drag.value = { shift: { x: 10, y: 0 }, guides: [], across: along, along };
  letGo();
  expect(said.value).toBe("Not moved: what was dragged is not in this panel any more.");
  expect(history.value.done).toEqual([]);
});
