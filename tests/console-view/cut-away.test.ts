// What a cut has taken away leaves nothing in the air: neither ticks of its rails, nor marks, nor numbers. Against the half space
// that is kept: normal · p >= offset.

import { LineSegments, type Material, Mesh, type Object3D } from "three";
import { describe, expect, test } from "vitest";
import { WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene, SceneGroup } from "../../viewer/console/console-messages.ts";
import { NONE_GATHERED } from "../../viewer/console/console-names.ts";
import { FIRST_LOOK, type Look, type Note } from "../../viewer/console/look.ts";
import { shownGroup } from "../../viewer/console/picture-groups.ts";
import { labelsOf } from "../../viewer/console/picture-labels.ts";
import { pictureMarks } from "../../viewer/console/picture-marks.ts";
import { pictureSurroundings } from "../../viewer/console/picture-surroundings.ts";
import { toneMaterials } from "../../viewer/console/tone-materials.ts";

const SCENE: ConsoleScene = {
  name: "bench",
  title: "Bench",
  groups: [],
  bays: [{ id: "aft", frame: WORLD, pitch: 10, length: 400, modules: 40, width: 146, depth: 100 }],
  panels: [],
  operator: null,
  envelope: Float32Array.from([0, 0, 0, 0, 400, 0]),
  box: { low: vector(0, 0, 0), high: vector(200, 400, 800) },
};

/** What lies farther along the bay than 200 mm is kept. */
const CUT: Look = { ...FIRST_LOOK, cut: { normal: vector(0, 1, 0), offset: 200 } };

const drawn = (holder: Object3D): readonly (Mesh | LineSegments)[] => {
  const found: (Mesh | LineSegments)[] = [];
  holder.traverse((each) => {
    if (each instanceof Mesh || each instanceof LineSegments) found.push(each);
  });
  return found;
};

const materialOf = ({ material }: Mesh | LineSegments): Material =>
  Array.isArray(material) ? material[0]! : material;

const isKeptBy = ({ clippingPlanes }: Material, at: readonly [number, number, number]): boolean =>
  (clippingPlanes ?? []).every(
    ({ normal, constant }) =>
      normal.x * at[0] + normal.y * at[1] + normal.z * at[2] + constant >= 0,
  );

describe("a cut across a bay", () => {
  const { holder, show, follow } = pictureSurroundings();
  show(SCENE);
  /** Ticks and envelope: lines that begin at the bay, and are neither the floor nor the operator. */
  const ofConsole = (): readonly Material[] =>
    drawn(holder)
      .map(materialOf)
      .filter(({ clippingPlanes }) => clippingPlanes !== null);

  test("takes the ticks and the envelope away on the side that is cut away, and no more", () => {
    follow(CUT);
    const cut = ofConsole().filter((material) => !isKeptBy(material, [0, 190, 0]));
    expect(cut).toHaveLength(2);
    for (const material of cut) expect(isKeptBy(material, [0, 210, 0])).toBe(true);
  });

  test("brings them back when it is taken away", () => {
    follow(FIRST_LOOK);
    for (const material of ofConsole()) expect(isKeptBy(material, [0, 190, 0])).toBe(true);
  });
});

test("marks of bodies end at the cut", () => {
  const group: SceneGroup = {
    key: "winch",
    frame: WORLD,
    bodies: [{ id: "lever", role: "rear", thing: "lever", what: "" }],
    lots: [
      {
        tone: "case",
        level: 0,
        positions: Float32Array.from([0, 0, 0, 0, 400, 0, 10, 0, 0]),
        triangles: Uint32Array.from([0, 1, 2]),
        edges: Float32Array.from([0, 0, 0, 0, 400, 0]),
        ranges: [{ body: 0, triangles: { from: 0, count: 1 }, edges: { from: 0, count: 1 } }],
      },
    ],
  };
  const shown = shownGroup(group, toneMaterials());
  pictureMarks().show(new Map([["winch", shown]]), {
    ...CUT,
    marks: [{ kind: "clash", group: "winch", body: "lever" }],
  });
  const marks = drawn(shown.holder).filter(({ renderOrder }) => renderOrder === 10);
  expect(marks.length).toBeGreaterThan(1);
  for (const mark of marks) {
    expect(isKeptBy(materialOf(mark), [0, 190, 0])).toBe(false);
    expect(isKeptBy(materialOf(mark), [0, 210, 0])).toBe(true);
  }
});

test("numbers of what is cut away go with it", () => {
  const note = (along: number): Note => ({
    kind: "clash",
    at: vector(0, along, 0),
    words: `${along}`,
    isOnIt: false,
  });
  const view = {
    eye: vector(0, 0, 9000),
    place: () => ({ x: 0, y: 0 }),
    gathered: NONE_GATHERED,
  };
  const words = labelsOf(SCENE, { ...CUT, notes: [note(190), note(210)] }, view)
    .filter(({ look }) => look.startsWith("note"))
    .map((label) => label.words);
  expect(words).toEqual(["210"]);
});
