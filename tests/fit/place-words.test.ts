// Where something is, in words: what rounds to nothing has no side.

import { expect, test } from "vitest";
import { placeWords } from "../../src/checks/fit/place-words.ts";
import { pointOut } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { consoleOf } from "./console-of.ts";

const { layout } = consoleOf(
  "bays:\n  aft: { mount: console-rail, at: [0, 0, 620], along: [1, 0, 0], cant: 8 deg, length: 24 modules, depth: 80 mm }\npanels:\n  - { file: one.yaml, as: one, bay: aft, module: 0 }\n",
  { one: "" },
);

const saidAt = (x: number, z: number): string =>
  placeWords(pointOut(layout.bays[0]!.frame, vector(x, 40, z)), ["one"], layout);

test.each([-1e-9, 0, 1e-9])("noise of %d does not turn a word", (noise) => {
  expect(saidAt(noise, noise)).toBe("40 mm along bay aft, in its middle, level with the rails");
});

test("what is more has its side", () => {
  expect(saidAt(-31, -12)).toBe(
    "40 mm along bay aft, 31 mm left of its middle, 12 mm behind the rails",
  );
  expect(saidAt(0.01, 0.01)).toBe(
    "40 mm along bay aft, 0.01 mm right of its middle, 0.01 mm in front of the rails",
  );
});
