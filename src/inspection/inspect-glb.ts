// Reads a console's glTF file back and holds each body against the mesh that was asked for: its node's name, volume and box
// in millimetres. Takes the file's bytes and what was asked; gives the table's rows.

import type { Mesh } from "../geometry/solid/mesh.ts";
import { type Frame, pointOut } from "../geometry/space/frame.ts";
import { boxRound, type SpaceBox } from "../geometry/space/space-box.ts";
import { vector } from "../geometry/space/vector.ts";
import { sceneBoxAllowance, sceneVolumeShare } from "./allowance.ts";
import { readGlb } from "./glb-reader.ts";
import {
  type InspectionRow,
  length,
  numberReading,
  type Reading,
  roundedDifference,
  wordReading,
} from "./row.ts";
import type { SolidBody } from "./solid-file.ts";
import { sixfoldVolume, trianglePoints } from "./solid-triangle.ts";

export interface GlbInspection {
  readonly file: string;
  readonly groups: readonly {
    /** As written: plain words. */
    readonly name: string;
    readonly bodies: readonly AskedBody[];
  }[];
}

export interface AskedBody {
  readonly name: string;
  readonly mesh: Mesh;
  readonly frame: Frame;
}

export const inspectGlb = (bytes: Uint8Array, of: GlbInspection): readonly InspectionRow[] => {
  const read = readGlb(bytes);
  const rows: Reading[] = [
    wordReading("file", "content", {
      expected: "bodies of triangles",
      measured: read.strangers.length === 0 ? "bodies of triangles" : read.strangers.join("; "),
    }),
    wordReading("file", "count", {
      expected: countWords(of.groups),
      measured: countWords(read.groups),
    }),
  ];
  for (const [number, group] of of.groups.entries()) {
    const found = read.groups[number];
    if (found === undefined) continue;
    rows.push(
      wordReading(group.name, "part", {
        expected: namesOf(group),
        measured: namesOf(found),
      }),
    );
    for (const [index, asked] of group.bodies.entries()) {
      const body = found.bodies[index];
      if (body !== undefined && asked.mesh.triangles.length > 0)
        rows.push(...bodyReadings(asked, body));
    }
  }
  return rows.map((row) => ({ file: of.file, ...row }));
};

interface Named {
  readonly name: string;
  readonly bodies: readonly { readonly name: string }[];
}

const countWords = (groups: readonly Named[]): string =>
  `${groups.length} groups, ${groups.reduce((sum, { bodies }) => sum + bodies.length, 0)} bodies`;

const namesOf = ({ name, bodies }: Named): string =>
  [name, ...bodies.map((body) => body.name)].join(", ");

const bodyReadings = (asked: AskedBody, body: SolidBody): readonly Reading[] => {
  const placed = placedBody(asked);
  const box = boxOf(placed);
  const size = (box.maxX - box.minX) * (box.maxY - box.minY) * (box.maxZ - box.minZ);
  return [
    wordReading(asked.name, "outward", {
      expected: "normals outward",
      measured: body.turnedNormals === 0 ? "normals outward" : `${body.turnedNormals} turned`,
    }),
    numberReading(asked.name, "volume", {
      expected: volumeOf(placed, box),
      measured: volumeOf(body, box),
      allowance: sceneVolumeShare * size,
    }),
    boxReading(asked.name, box, body),
  ];
};

const placedBody = ({ name, mesh, frame }: AskedBody): SolidBody => {
  const { positions, triangles } = mesh;
  const corners = Array.from({ length: positions.length / 3 }, (_, corner) => {
    const [x = 0, y = 0, z = 0] = positions.subarray(3 * corner, 3 * corner + 3);
    const out = pointOut(frame, vector(x, y, z));
    return [out.x, out.y, out.z];
  });
  return { name, corners: corners.flat(), triangles: Array.from(triangles), turnedNormals: 0 };
};

const boxOf = ({ corners }: SolidBody): SpaceBox =>
  boxRound(
    Array.from({ length: corners.length / 3 }, (_, corner) => {
      const [x = 0, y = 0, z = 0] = corners.slice(3 * corner, 3 * corner + 3);
      return vector(x, y, z);
    }),
  );

/** About a corner of its own box: far from the origin the sum would lose its last digits. */
const volumeOf = (body: SolidBody, { minX, minY, minZ }: SpaceBox): number => {
  const near = [minX, minY, minZ];
  const corners = body.corners.map((value, index) => value - (near[index % 3] ?? 0));
  const moved = { ...body, corners };
  let six = 0;
  for (let at = 0; at < body.triangles.length; at += 3)
    six += sixfoldVolume(trianglePoints(moved, at));
  return Number.isFinite(six) ? six / 6 : 0;
};

const boxReading = (name: string, box: SpaceBox, body: SolidBody): Reading => {
  const axes = [
    { low: box.minX, high: box.maxX },
    { low: box.minY, high: box.maxY },
    { low: box.minZ, high: box.maxZ },
  ];
  const read = axes.map((_, axis) => {
    let [low, high] = [Number.MAX_SAFE_INTEGER, -Number.MAX_SAFE_INTEGER];
    for (let at = axis; at < body.corners.length; at += 3) {
      low = Math.min(low, body.corners[at] ?? low);
      high = Math.max(high, body.corners[at] ?? high);
    }
    return { low, high };
  });
  const words = (sides: typeof axes | typeof read): string =>
    sides.map(({ low, high }) => `${length(low)} to ${length(high)}`).join(", ");
  const difference = Math.max(
    ...axes.map(({ low, high }, axis) =>
      Math.max(
        roundedDifference(low - (read[axis]?.low ?? 0)),
        roundedDifference(high - (read[axis]?.high ?? 0)),
      ),
    ),
  );
  return {
    feature: name,
    what: "box",
    expected: words(axes),
    measured: words(read),
    difference,
    passed: difference <= sceneBoxAllowance,
  };
};
