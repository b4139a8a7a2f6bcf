// Which shapes and photographs a snapshot keeps: each content once, all of them within the limit.

import { expect, test } from "vitest";
import { heldWords } from "../../viewer/files/snapshot-held-words.ts";
import { contentPlan } from "../../viewer/files/snapshot-plan.ts";

const held = (files: Record<string, readonly [string, number]>) =>
  new Map(Object.entries(files).map(([path, [hash, size]]) => [path, { hash, size }]));

test("two files of one content are kept once", () => {
  const plan = contentPlan(held({ "a.stl": ["h1", 60], "b.stl": ["h1", 60] }), [], 100);
  expect([...plan.files.keys()]).toEqual(["a.stl", "b.stl"]);
  expect([plan.added, plan.leftOut]).toEqual([["h1"], []]);
});

test("what another snapshot has is not added, and takes no room a second time", () => {
  const before = held({ "a.stl": ["h1", 60] });
  const plan = contentPlan(
    held({ "a.stl": ["h1", 60], "b.jpg": ["h2", 40] }),
    [before, before],
    100,
  );
  expect([plan.added, plan.leftOut]).toEqual([["h2"], []]);
});

test("what finds no room is named, and a large one leaves the smaller ones in", () => {
  const wanted = held({ "large.stl": ["h1", 90], "b.jpg": ["h2", 30], "c.jpg": ["h3", 40] });
  const plan = contentPlan(wanted, [held({ "old.stl": ["h0", 20] })], 100);
  expect([[...plan.files.keys()], plan.leftOut]).toEqual([["b.jpg", "c.jpg"], ["large.stl"]]);
});

test("exactly as much as there is room for is kept, and one byte more is not", () => {
  expect(contentPlan(held({ "a.stl": ["h1", 100] }), [], 100).leftOut).toEqual([]);
  expect(contentPlan(held({ "a.stl": ["h1", 101] }), [], 100).leftOut).toEqual(["a.stl"]);
});

test("a snapshot says what it holds and what it does not", () => {
  expect(heldWords({ files: null, leftOut: [] })).toBe("texts alone");
  expect(heldWords({ files: new Map(), leftOut: [] })).toBe("");
  expect(heldWords({ files: held({ "a.stl": ["h1", 1] }), leftOut: ["b.jpg"] })).toBe(
    "with one shape or photograph, without b.jpg",
  );
});
