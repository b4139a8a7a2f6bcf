// Pictures of a frame's assembly: each piece is new in one picture and there in all that follow, nearer boards are painted over
// further ones, and the list says what was cut.

import { expect, test } from "vitest";
import { frameList } from "../../src/drawings/frame-list.ts";
import { frameSteps } from "../../src/drawings/frame-steps.ts";
import { frameView, towardViewer } from "../../src/drawings/frame-view.ts";
import { paintOrder } from "../../src/drawings/paint-order.ts";
import type { ShownBoard } from "../../src/drawings/shown-board.ts";
import { containsPoint } from "../../src/geometry/containment.ts";
import type { Contour } from "../../src/geometry/contour.ts";
import { extentCentre } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { soundFrame } from "../frame/framed.ts";
import { testLibrary } from "../support/test-library.ts";

const { lettering } = testLibrary();
const frame = soundFrame();
const options = { title: "Stand", lettering };
const still = vector(0, 0, 0);
const shown: readonly ShownBoard[] = frame.parts.map((part) => ({
  part,
  shift: still,
  look: "there",
}));

test("a picture a step, all of one size, with as many boards as stand and enter", () => {
  const steps = frameSteps(frame, options);
  expect(steps).toHaveLength(frame.assembly.length);
  const sizes = steps.map(({ box }) => (box.maxX - box.minX).toFixed(6));
  expect(new Set(sizes).size).toBe(1);
  let standing = 0;
  for (const [index, { items }] of steps.entries()) {
    const adds = frame.assembly[index]!.adds.length;
    const areas = (ink: string): number =>
      items.filter((item) => item.kind === "fill" && item.ink === ink && item.regions.length === 1)
        .length;
    expect(areas("rail")).toBe(adds);
    // The disc under each number is paper as well.
    expect(areas("paper")).toBe(standing + adds);
    standing += adds;
  }
});

test.each(["left", "right"] as const)(
  "seen from the %s the near cheek is painted over what stands behind it",
  (side) => {
    const order = paintOrder(shown, towardViewer(side)).map(({ part }) => part.id);
    const far = side === "left" ? "right" : "left";
    const between = order.filter((id) => /^(?:rib|rail|floor|top)/.test(id));
    expect(between).toHaveLength(13);
    for (const id of between) {
      expect(order.indexOf(id)).toBeLessThan(order.indexOf(`cheek-${side}`));
      expect(order.indexOf(id)).toBeGreaterThan(order.indexOf(`cheek-${far}`));
    }
    expect(order.indexOf("rail-aft-left")).toBeGreaterThan(order.indexOf("rib-aft-2"));
  },
);

test("a tab's end covers what of its board lies behind it", () => {
  const rib = shown.find(({ part }) => part.id === "rib-aft-2")!;
  const { items } = frameView([rib], { scale: 0.1, side: "left" });
  const drawn = items.flatMap((item) =>
    item.kind === "outline" || item.kind === "fill" ? [item.kind] : [],
  );
  // Strips of the rim are filled and then drawn round, before those that lie over them; the face comes last.
  expect(drawn).toHaveLength(items.length);
  expect(drawn.slice(0, -2)).toEqual(
    Array.from({ length: drawn.length - 2 }, (_, index) => (index % 2 === 0 ? "fill" : "outline")),
  );
  // What is seen furthest to the left of the picture is a tab's end, which looks to the left: nothing of the rim is drawn over it.
  const rims = items.slice(0, -2).flatMap((item) => (item.kind === "outline" ? item.contours : []));
  const left = (rim: Contour): number => contourExtent(rim).minX;
  const leftmost = Math.min(...rims.map(left));
  const ends = rims.flatMap((rim, index) =>
    left(rim) < leftmost + 0.5 && contourExtent(rim).maxY - contourExtent(rim).minY > 2
      ? [{ rim, index }]
      : [],
  );
  expect(ends.length).toBeGreaterThan(0);
  for (const { rim, index } of ends)
    for (const later of rims.slice(index + 1))
      expect(containsPoint(rim, extentCentre(contourExtent(later)))).toBe(false);
});

test("an edge is drawn as long as what of it lies square to the view", () => {
  // Parallel projection, Pythagoras: drawn² = scale² (|e|² - (e · t)²). The left cheek's foot runs straight forward.
  const cheek = shown.find(({ part }) => part.id === "cheek-left")!;
  const { items } = frameView([cheek], { scale: 0.1, side: "left" });
  const face = items.find((item) => item.kind === "fill" && item.ink === "paper");
  const outline = face?.kind === "fill" ? face.regions[0]?.outline : undefined;
  if (outline?.kind !== "loop") throw new Error("a cheek has a face");
  const corners = cheek.part.region.outline;
  if (corners.kind !== "loop") throw new Error("a cheek has corners");
  const foot = corners.vertices.findIndex(
    (from, index) =>
      from.y < 1e-6 && corners.vertices[(index + 1) % corners.vertices.length]!.y < 1e-6,
  );
  const at = (
    list: readonly { readonly x: number; readonly y: number }[],
    index: number,
  ): { readonly x: number; readonly y: number } => list[index % list.length]!;
  const length = Math.abs(at(corners.vertices, foot + 1).x - at(corners.vertices, foot).x);
  const [from, to] = [at(outline.vertices, foot), at(outline.vertices, foot + 1)];
  const toward = towardViewer("left");
  expect(length).toBeGreaterThan(1000);
  expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(
    0.1 * length * Math.sqrt(1 - toward.x ** 2),
    6,
  );
});

test("the list has a row for every piece under its headings", () => {
  const { box, title } = frameList(frame, options);
  expect(title).toBe("Stand: pieces of the frame");
  // Rows of 3.4 mm, and 5 mm of margin above and below.
  expect(box.maxY - box.minY).toBeCloseTo(3.4 * (frame.parts.length + 1) + 10, 6);
});
