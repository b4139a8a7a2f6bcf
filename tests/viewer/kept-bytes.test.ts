// Which shapes and photographs go with a recovery copy: as many as there is room for, and the names of the others.

import fc from "fast-check";
import { expect, test } from "vitest";
import { keptBytes } from "../../viewer/files/kept-bytes.ts";

const bytes = (length: number): Uint8Array => new Uint8Array(length);

test("all of them where there is room", () => {
  const kept = keptBytes(
    new Map([
      ["seat.stl", bytes(60)],
      ["front.jpg", bytes(40)],
    ]),
    100,
  );
  expect([...kept.files.keys()].toSorted()).toEqual(["front.jpg", "seat.stl"]);
  expect(kept.leftOut).toEqual([]);
});

test("the smaller before the larger, and what could never be read is left out", () => {
  const kept = keptBytes(
    new Map<string, Uint8Array | null>([
      ["hull.stl", bytes(90)],
      ["cloud.stl", null],
      ["front.jpg", bytes(11)],
    ]),
    100,
  );
  expect([...kept.files.keys()]).toEqual(["front.jpg"]);
  expect(kept.leftOut).toEqual(["cloud.stl", "hull.stl"]);
});

test("never more than there is room for, and each is kept or named", () => {
  const sizes = fc.dictionary(fc.string(), fc.option(fc.nat({ max: 60 })));
  fc.assert(
    fc.property(sizes, (wanted) => {
      const all = Object.entries(wanted).map(
        ([path, size]) => [path, size === null ? null : bytes(size)] as const,
      );
      const { files, leftOut } = keptBytes(new Map(all), 100);
      const sum = [...files.values()].reduce((total, each) => total + each.length, 0);
      expect(sum).toBeLessThanOrEqual(100);
      expect([...files.keys(), ...leftOut].toSorted()).toEqual(
        all.map(([path]) => path).toSorted(),
      );
    }),
  );
});
