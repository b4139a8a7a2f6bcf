// What panels are called where they are chosen: no two of a console alike.

import { expect, test } from "vitest";
import { calledAmong } from "../../viewer/panel-called.ts";

test("a title that two panels have comes with the name of each", () => {
  const panels = [
    { name: "left", title: "Mill" },
    { name: "right", title: "Mill" },
    { name: "pumps", title: "Fire pumps" },
    { name: "spare", title: "spare" },
  ];
  expect(panels.map((panel) => calledAmong(panel, panels))).toEqual([
    "Mill (left)",
    "Mill (right)",
    "Fire pumps",
    "spare",
  ]);
});
