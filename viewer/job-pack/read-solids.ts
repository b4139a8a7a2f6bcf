// What stands in a file with bodies, as the program's own reader finds it in its bytes: triangles of a 3MF, an STL or a glTF, faces
// and true arcs of a STEP; and in words how much that is, how large, and what of it is not understood.

import { decimal } from "../../src/geometry/number.ts";
import type { Vector } from "../../src/geometry/space/vector.ts";
import { readGlb } from "../../src/inspection/glb-reader.ts";
import type { SolidBody } from "../../src/inspection/solid-file.ts";
import { readStl } from "../../src/inspection/solid-stl.ts";
import { readThreeMf } from "../../src/inspection/solid-three-mf.ts";
import { readStepFile } from "../../src/inspection/step-reader.ts";
import type { StepFile, StepSolid } from "../../src/inspection/step-shape.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { chordsOf } from "./step-chords.ts";

/** Kinds of files with bodies in them. */
export type SolidKind = "print-3mf" | "print-stl" | "print-step" | "console-model";

export type ReadSolids =
  | { readonly kind: "meshes"; readonly bodies: readonly SolidBody[]; readonly words: Words }
  | { readonly kind: "exact"; readonly solids: readonly StepSolid[]; readonly words: Words };

/** Sentences. */
type Words = readonly string[];

export const readSolids = (kind: SolidKind, { bytes, path }: PackFile): ReadSolids => {
  switch (kind) {
    case "print-stl": {
      const { bodies, strangers } = readStl(bytes, path);
      return meshes(bodies, [
        "An STL names no unit: it is in millimetres, as the piece lies on the bed.",
        ...notUnderstood(strangers),
      ]);
    }
    case "print-3mf": {
      const { bodies, strangers, unit } = readThreeMf(bytes);
      const named = bodies.length > 1 ? [`${bodies.map(({ name }) => name).join(", ")}.`] : [];
      return meshes(bodies, [
        ...named,
        unit === "millimeter"
          ? "In millimetres, as it lies on the bed."
          : `Its unit is ${unit ?? "not named"}.`,
        ...notUnderstood(strangers),
      ]);
    }
    case "console-model": {
      const { groups, strangers } = readGlb(bytes);
      return meshes(
        groups.flatMap(({ bodies }) => bodies),
        notUnderstood(strangers),
      );
    }
    case "print-step":
      return exact(readStepFile(utf8Text(bytes)));
  }
};

const meshes = (bodies: readonly SolidBody[], more: Words): ReadSolids => {
  const count = bodies.length === 1 ? "One solid piece" : `${bodies.length} solid pieces`;
  const size = sizeWords(bodies.flatMap(({ corners }) => [cornersBox(corners)]));
  return { kind: "meshes", bodies, words: [`${count}${size}.`, ...more] };
};

const exact = ({ solids, strangers }: StepFile): ReadSolids => {
  const count = solids.length === 1 ? "One solid" : `${solids.length} solids`;
  const faces = solids.flatMap((solid) => solid.faces);
  const flat = faces.filter(({ surface }) => surface.kind === "plane").length;
  const edges = solids.flatMap((solid) => solid.edges);
  const lines = edges.filter(({ kind }) => kind === "line").length;
  const size = sizeWords([placesBox(edges.flatMap(chordsOf))]);
  return {
    kind: "exact",
    solids,
    words: [
      `${count}${size}, as it stands in the file: ${faces.length} faces, ${flat} flat and ${faces.length - flat} round; ${edges.length} edges, ${lines} straight and ${edges.length - lines} true arcs.`,
      "It lies as it is assembled, 3MF and STL as the piece lies on the bed.",
      ...notUnderstood(strangers),
    ],
  };
};

const notUnderstood = (strangers: readonly string[]): Words =>
  strangers.length === 0 ? [] : [`Not as it should be: ${strangers.join("; ")}.`];

type Box = readonly [low: Vector, high: Vector];

const NOWHERE: Box = [
  { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY, z: Number.POSITIVE_INFINITY },
  { x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY, z: Number.NEGATIVE_INFINITY },
];

const joined = ([low, high]: Box, [otherLow, otherHigh]: Box): Box => [
  {
    x: Math.min(low.x, otherLow.x),
    y: Math.min(low.y, otherLow.y),
    z: Math.min(low.z, otherLow.z),
  },
  {
    x: Math.max(high.x, otherHigh.x),
    y: Math.max(high.y, otherHigh.y),
    z: Math.max(high.z, otherHigh.z),
  },
];

const placesBox = (places: readonly Vector[]): Box =>
  places.reduce((box: Box, place) => joined(box, [place, place]), NOWHERE);

const cornersBox = (corners: readonly number[]): Box => {
  const places = Array.from({ length: Math.floor(corners.length / 3) }, (_, index) => ({
    x: corners[3 * index] ?? 0,
    y: corners[3 * index + 1] ?? 0,
    z: corners[3 * index + 2] ?? 0,
  }));
  return placesBox(places);
};

/** A hundredth, as sizes stand on drawings. */
const PLACES = 2;

const sizeWords = (boxes: readonly Box[]): string => {
  const [low, high] = boxes.reduce(joined, NOWHERE);
  const sides = [high.x - low.x, high.y - low.y, high.z - low.z];
  if (!sides.every(Number.isFinite)) return "";
  return `, ${sides.map((side) => decimal(side, PLACES)).join(" by ")} mm`;
};
