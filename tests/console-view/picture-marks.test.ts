// Marks of a drag in the picture: drawn once for each body however often it is marked, and gone with the body's group.

import { LineSegments, Mesh, type Object3D } from "three";
import { expect, test } from "vitest";
import { WORLD } from "../../src/geometry/space/frame.ts";
import type { SceneGroup } from "../../viewer/console/console-messages.ts";
import { FIRST_LOOK, type Look, type Mark, type MarkKind } from "../../viewer/console/look.ts";
import { type ShownGroup, shownGroup } from "../../viewer/console/picture-groups.ts";
import { pictureMarks } from "../../viewer/console/picture-marks.ts";
import { toneMaterials } from "../../viewer/console/tone-materials.ts";

/** Two bodies of one triangle and one line each, in one lot. */
const winch: SceneGroup = {
  key: "winch",
  frame: WORLD,
  bodies: ["lever", "case"].map((id) => ({ id, role: "rear", thing: id, what: "" })),
  lots: [
    {
      tone: "case",
      level: 0,
      positions: new Float32Array(18).map((_, index) => index),
      triangles: Uint32Array.from([0, 1, 2, 3, 4, 5]),
      edges: new Float32Array(12).map((_, index) => index),
      ranges: [0, 1].map((body) => ({
        body,
        triangles: { from: body, count: 1 },
        edges: { from: body, count: 1 },
      })),
    },
  ],
};

const marked = (...marks: readonly (readonly [MarkKind, string])[]): Look => ({
  ...FIRST_LOOK,
  marks: marks.map(([kind, body]): Mark => ({ kind, group: "winch", body })),
});

/** What of the marks is to be seen, with whatever stands above it. */
const seen = ({ holder }: ShownGroup): readonly (Mesh | LineSegments)[] => {
  const found: (Mesh | LineSegments)[] = [];
  const walk = (each: Object3D): void => {
    if (!each.visible) return;
    if (each.renderOrder === 10 && (each instanceof Mesh || each instanceof LineSegments))
      found.push(each);
    for (const child of each.children) walk(child);
  };
  walk(holder);
  return found;
};

const indices = (each: Mesh | LineSegments | undefined): readonly number[] => [
  ...(each?.geometry.getIndex()?.array ?? []),
];

const stage = () => {
  const group = shownGroup(winch, toneMaterials());
  return { group, groups: new Map([["winch", group]]), marks: pictureMarks() };
};

test("a body that clashes is its own triangles and its own line", () => {
  const { group, groups, marks } = stage();
  marks.show(groups, marked(["clash", "case"]));
  const [faces, lines, ...others] = seen(group);
  expect(others).toEqual([]);
  expect(indices(faces)).toEqual([3, 4, 5]);
  expect([...(lines?.geometry.getAttribute("position").array ?? [])]).toEqual([6, 7, 8, 9, 10, 11]);
});

test("the gravest mark counts, and what is merely near has no line", () => {
  const { group, groups, marks } = stage();
  marks.show(groups, marked(["near", "lever"]));
  expect(seen(group).map((each) => each instanceof LineSegments)).toEqual([false]);
  const [near] = seen(group);
  const ink = near?.material;
  marks.show(groups, marked(["near", "lever"], ["clash", "lever"]));
  expect(seen(group)).toHaveLength(2);
  expect(seen(group)[0]?.material).not.toBe(ink);
});

test("a body that is marked again is the same drawing, and hidden in between", () => {
  const { group, groups, marks } = stage();
  marks.show(groups, marked(["clash", "lever"]));
  const first = seen(group);
  marks.show(groups, marked(["clash", "case"]));
  expect(seen(group)).not.toContain(first[0]);
  marks.show(groups, marked(["touching", "lever"]));
  expect(seen(group)).toEqual(first);
  marks.show(groups, marked());
  expect(seen(group)).toEqual([]);
});

test("its numbers are given back with its group, and not before", () => {
  const { group, groups, marks } = stage();
  marks.show(groups, marked(["clash", "lever"]));
  let disposed = 0;
  for (const { geometry } of seen(group)) geometry.addEventListener("dispose", () => disposed++);
  // A panel that has only moved is the same group at another place.
  const moved = { ...group, frame: WORLD };
  marks.show(new Map([["winch", moved]]), marked());
  expect(disposed).toBe(0);
  marks.show(new Map(), marked());
  expect(disposed).toBe(2);
});
