// What is opened once: a failure is told and not kept.

import { expect, test } from "vitest";
import { kept } from "../../viewer/kept.ts";

test("what opens is opened once, for all who ask", async () => {
  let count = 0;
  const open = kept(async () => ++count);
  expect(await Promise.all([open(), open()])).toEqual([1, 1]);
  expect([await open(), count]).toEqual([1, 1]);
});

test("what failed is told to all who waited, and opened anew for the next", async () => {
  let count = 0;
  const open = kept(async () => {
    count += 1;
    if (count === 1) throw new Error("no network");
    return count;
  });
  const outcomes = await Promise.allSettled([open(), open()]);
  expect(outcomes.map(({ status }) => status)).toEqual(["rejected", "rejected"]);
  expect([await open(), await open()]).toEqual([2, 2]);
});
