// What of the things that were picked is picked when the design has changed under them.

import { expect, test } from "vitest";
import { stillPicked } from "../../viewer/panel/still-picked.ts";

const row = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ id: `lamp.${index + 1}`, entry: "lamp" }));
const PUMP = { id: "pump", entry: "pump" };

test("a member that a shorter row has no more hands over to the last that is left", () => {
  expect([...stillPicked(["lamp.3"], [PUMP, ...row(4)])]).toEqual(["lamp.3"]);
  expect([...stillPicked(["lamp.3"], [PUMP, ...row(2)])]).toEqual(["lamp.2"]);
  expect([...stillPicked(["lamp.2", "lamp.3"], row(2))]).toEqual(["lamp.2"]);
});

test("what is gone altogether is picked no more", () => {
  expect([...stillPicked(["lamp.3", "pump"], [PUMP])]).toEqual(["pump"]);
  expect([...stillPicked(["pump"], row(2))]).toEqual([]);
});
