// Bodies that are marked, drawn through whatever stands before them: a pattern on their faces and a line round them.

import { BufferAttribute, BufferGeometry, Group, LineSegments, type Material, Mesh } from "three";
import type { Look, Mark, MarkKind } from "./look.ts";
import { markFace, markLine } from "./mark-material.ts";
import type { ShownGroup, ShownLot } from "./picture-groups.ts";

export interface Marks {
  readonly show: (groups: ReadonlyMap<string, ShownGroup>, look: Look) => void;
  readonly dispose: () => void;
}

export const pictureMarks = (): Marks => {
  let shown: Group[] = [];
  const inks = new Map<string, { readonly face: Material; readonly line: Material }>();
  const inkOf = (kind: MarkKind, isDark: boolean): { face: Material; line: Material } => {
    const key = `${kind} ${isDark}`;
    const ink = inks.get(key) ?? { face: markFace(kind, isDark), line: markLine(kind, isDark) };
    inks.set(key, ink);
    return ink;
  };
  const clear = (): void => {
    for (const each of shown) {
      each.removeFromParent();
      for (const child of each.children)
        if (child instanceof Mesh || child instanceof LineSegments) child.geometry.dispose();
    }
    shown = [];
  };
  return {
    show: (groups, look) => {
      clear();
      for (const mark of strongest(look.marks)) {
        const group = groups.get(mark.group);
        if (group === undefined) continue;
        for (const lot of group.lots) {
          const made = markedPart(lot, group, { mark, ...inkOf(mark.kind, look.dark) });
          if (made === null) continue;
          lot.holder.add(made);
          shown.push(made);
        }
      }
    },
    dispose: () => {
      clear();
      for (const { face, line } of inks.values()) {
        face.dispose();
        line.dispose();
      }
    },
  };
};

/** A body that clashes with one thing and is near another is marked once, for the graver. */
const strongest = (marks: readonly Mark[]): readonly Mark[] => {
  const kept = new Map<string, Mark>();
  for (const mark of [...marks].sort((a, b) => ORDER[b.kind] - ORDER[a.kind]))
    kept.set(`${mark.group}\n${mark.body}`, mark);
  return [...kept.values()];
};

const ORDER: Readonly<Record<MarkKind, number>> = { clash: 0, finding: 1, touching: 2, near: 3 };

interface Marked {
  readonly mark: Mark;
  readonly face: Material;
  readonly line: Material;
}

/** Shares the corners of its lot; null where the body is not in it. */
const markedPart = (
  { lot, mesh }: ShownLot,
  { bodies }: ShownGroup,
  { mark, face, line }: Marked,
): Group | null => {
  const ranges = lot.ranges.filter(({ body }) => bodies[body]?.id === mark.body);
  if (ranges.length === 0) return null;
  const made = new Group();
  for (const { triangles, edges } of ranges) {
    const faces = new BufferGeometry();
    faces.setAttribute("position", mesh.geometry.getAttribute("position"));
    const { from, count } = triangles;
    faces.setIndex(new BufferAttribute(lot.triangles.slice(3 * from, 3 * (from + count)), 1));
    const lines = new BufferGeometry();
    const ends = lot.edges.slice(6 * edges.from, 6 * (edges.from + edges.count));
    lines.setAttribute("position", new BufferAttribute(ends, 3));
    // What is merely near is often large, a rib or a rail: its lines would hide the rest.
    const parts =
      mark.kind === "near"
        ? [new Mesh(faces, face)]
        : [new Mesh(faces, face), new LineSegments(lines, line)];
    for (const part of parts) part.renderOrder = 10;
    made.add(...parts);
  }
  return made;
};
