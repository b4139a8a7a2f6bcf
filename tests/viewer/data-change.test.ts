// A state put together from the one before it and the change: the same as the state itself, for any data that a message carries.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changedData, dataChange } from "../../viewer/data-change.ts";

const place = fc
  .tuple(fc.constantFrom("a.yaml", "b.yaml"), fc.nat({ max: 3 }), fc.nat({ max: 3 }))
  .map(([file, start, length]) => ({ file, start, end: start + length }));

/** Few keys and few values, so that states are often alike in part. */
const states = fc.letrec((tie) => ({
  data: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom(0, -0, Number.NaN, "word", null, true, undefined),
    place,
    fc.array(tie("data"), { maxLength: 3 }),
    fc.dictionary(fc.constantFrom("a", "b", "start", "end", "file"), tie("data"), { maxKeys: 3 }),
  ),
})).data;

const sent = <Data>(data: Data): Data => structuredClone(data);

test("whatever was before, the new state comes out", () => {
  fc.assert(
    fc.property(states, states, (before, now) => {
      expect(changedData(sent(before), sent(dataChange(before, now)))).toStrictEqual(sent(now));
    }),
    { numRuns: 3000 },
  );
});

describe("a change of a text that moves what is behind it", () => {
  const span = (start: number) => ({ file: "a.yaml", start, end: start + 4 });
  const entry = (id: string, start: number) => ({
    id,
    span: span(start),
    shape: { points: [1, 2, 3] },
    written: { span: span(start), keys: { at: span(start + 2), turn: span(start + 3) } },
  });
  const before = { entries: [entry("one", 10), entry("two", 90)] };
  const now = { entries: [entry("one", 10), entry("two", 93)] };

  test("is said as a distance", () => {
    const moved = { kind: "moved", by: 3 };
    expect(dataChange(before, now)).toEqual({
      kind: "within",
      parts: [
        {
          at: "entries",
          change: {
            kind: "within",
            parts: [
              {
                at: 1,
                change: {
                  kind: "within",
                  parts: [
                    { at: "span", change: moved },
                    { at: "written", change: moved },
                  ],
                },
              },
            ],
          },
        },
      ],
    });
  });

  test("leaves alone what does not stand in the text", () => {
    const after = changedData(before, dataChange(before, now)) as typeof now;
    expect(after).toStrictEqual(now);
    expect(after.entries[0]).toBe(before.entries[0]);
    expect(after.entries[1]?.shape).toBe(before.entries[1]?.shape);
  });
});

test("a record whose keys name what every object has is data like any other", () => {
  const odd = JSON.parse('{ "__proto__": { "a": 1 }, "constructor": 2 }');
  const after = changedData({ constructor: 2 }, dataChange({ constructor: 2 }, odd));
  expect(JSON.stringify(after)).toBe(JSON.stringify(odd));
});

test("a key that every object has is new where the old state was not given it", () => {
  const [before, now] = [
    { a: 1, b: 2 },
    { a: 1, toString: 3 },
  ];
  expect(changedData(before, dataChange(before, now))).toStrictEqual(now);
});

test("what is no plain data is said anew", () => {
  const [before, now] = [new Map([["a", 1]]), new Map([["a", 2]])];
  expect(changedData(before, dataChange(before, now))).toBe(now);
});

test("changes that are alike are one object, so that a message copies them once", () => {
  const at = (start: number) => ({ file: "panel.yaml", start, end: start + 4 });
  const things = (from: number) =>
    [0, 10, 20].map((place) => ({ name: `c${place}`, size: [1, 2], span: at(from + place) }));
  const change = dataChange(things(0), things(7));
  if (change.kind !== "within") throw new Error("every thing has been moved");
  const [first, ...others] = change.parts;
  expect(others).toHaveLength(2);
  for (const other of others) expect(other.change).toBe(first?.change);
  expect(changedData(things(0), structuredClone(change))).toStrictEqual(things(7));
});

test("keys that look like parts of others are kept apart", () => {
  const before = { a: { "x 0 1 y": [1], x: [1] }, b: { x: [1], y: [1] } };
  const now = { a: { "x 0 1 y": [2], x: [2] }, b: { x: [2], y: [2] } };
  expect(changedData(before, structuredClone(dataChange(before, now)))).toStrictEqual(now);
});
