// The cut faces of everything that a plane goes through, each in its lot's own frame, in its own tone with a line round it.

import {
  BufferAttribute,
  BufferGeometry,
  Group,
  LineSegments,
  Matrix4,
  Mesh,
  type Plane,
} from "three";
import type { Tone } from "./console-messages.ts";
import { type CutPlane, cutCaps } from "./cut-caps.ts";
import { cutPlanes, facePlane } from "./cut-planes.ts";
import type { Look } from "./look.ts";
import type { ShownGroup, ShownLot } from "./picture-groups.ts";
import { isMarking, type Materials } from "./tone-materials.ts";

export interface PictureCaps {
  readonly show: (groups: Iterable<ShownGroup>, look: Look) => void;
  readonly clear: () => void;
}

export const pictureCaps = (materials: Materials): PictureCaps => {
  let shown: Group[] = [];
  const clear = (): void => {
    for (const each of shown) {
      each.removeFromParent();
      for (const child of each.children)
        if (child instanceof Mesh || child instanceof LineSegments) child.geometry.dispose();
    }
    shown = [];
  };
  return {
    clear,
    show: (groups, { cut, showSweeps }) => {
      clear();
      materials.setCut(cutPlanes(cut));
      if (cut === null) return;
      const plane = facePlane(cut);
      for (const { lots, holder } of groups) {
        holder.updateWorldMatrix(true, true);
        for (const lot of lots.filter(({ lot: { tone } }) => isCut(tone, showSweeps))) {
          const made = lotCaps(lot, plane, materials);
          if (made !== null) shown.push(made);
        }
      }
    },
  };
};

const isCut = (tone: Tone, showSweeps: boolean): boolean =>
  !isMarking(tone) && (tone !== "sweep" || showSweeps);

const lotCaps = (shown: ShownLot, plane: Plane, materials: Materials): Group | null => {
  const { lot, mesh, holder } = shown;
  const within = plane.clone().applyMatrix4(new Matrix4().copy(holder.matrixWorld).invert());
  const { geometry } = mesh;
  if (geometry.boundingBox === null) geometry.computeBoundingBox();
  if (geometry.boundingBox === null || !within.intersectsBox(geometry.boundingBox)) return null;
  const { normal, constant } = within;
  const cut: CutPlane = { normal: [normal.x, normal.y, normal.z], offset: -constant };
  const positions: number[] = [];
  const edges: number[] = [];
  for (const { triangles } of lot.ranges) {
    const caps = cutCaps({ ...lot, ...triangles }, cut);
    for (const value of caps.positions) positions.push(value);
    for (const value of caps.edges) edges.push(value);
  }
  if (edges.length === 0) return null;
  const made = new Group();
  made.add(
    new Mesh(geometryOf(positions), materials.cap(lot.tone)),
    new LineSegments(geometryOf(edges), materials.capLine),
  );
  holder.add(made);
  return made;
};

const geometryOf = (positions: readonly number[]): BufferGeometry => {
  const made = new BufferGeometry();
  made.setAttribute("position", new BufferAttribute(Float32Array.from(positions), 3));
  return made;
};
