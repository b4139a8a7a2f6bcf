// Bodies that are marked, drawn through whatever stands before them: a pattern on their faces and a line round them. A drag
// marks much the same bodies at every step: what was drawn once is kept with its lot, and shown or hidden.

import { BufferAttribute, BufferGeometry, Group, LineSegments, type Material, Mesh } from "three";
import type { SceneLot } from "./console-messages.ts";
import { cutPlanes } from "./cut-planes.ts";
import type { Look, Mark, MarkKind } from "./look.ts";
import { markFace, markLine } from "./mark-material.ts";
import type { ShownGroup, ShownLot } from "./picture-groups.ts";

export interface Marks {
  readonly show: (groups: ReadonlyMap<string, ShownGroup>, look: Look) => void;
  readonly dispose: () => void;
}

export const pictureMarks = (): Marks => {
  const inks = new Map<string, Ink>();
  const inkOf = (kind: MarkKind, isDark: boolean): Ink => {
    const key = `${kind} ${isDark}`;
    const ink = inks.get(key) ?? { face: markFace(kind, isDark), line: markLine(kind, isDark) };
    inks.set(key, ink);
    return ink;
  };
  /** By group as it was sent: gone with it. */
  let marked = new Map<ShownGroup["lots"], MarkedGroup>();
  return {
    show: (groups, look) => {
      marked = kept(marked, groups);
      for (const { shown } of marked.values()) {
        for (const part of shown) part.holder.visible = false;
        shown.clear();
      }
      for (const mark of strongest(look.marks)) {
        const group = groups.get(mark.group);
        if (group === undefined) continue;
        const known = marked.get(group.lots) ?? { parts: new Map(), shown: new Set() };
        marked.set(group.lots, known);
        const parts = known.parts.get(mark.body) ?? partsOf(group, mark.body);
        known.parts.set(mark.body, parts);
        for (const part of parts) {
          show(part, mark.kind, inkOf(mark.kind, look.dark));
          known.shown.add(part);
        }
      }
      cutInks(inks.values(), look.cut);
    },
    dispose: () => {
      for (const { parts } of marked.values()) release(parts);
      marked.clear();
      for (const { face, line } of inks.values()) {
        face.dispose();
        line.dispose();
      }
    },
  };
};

/** What is cut away has no mark in the air. */
const cutInks = (inks: Iterable<Ink>, cut: Look["cut"]): void => {
  const planes = cutPlanes(cut);
  for (const { face, line } of inks)
    for (const material of [face, line]) material.clippingPlanes = planes;
};

interface Ink {
  readonly face: Material;
  readonly line: Material;
}

/** What is drawn of a body in one lot. */
interface MarkedPart {
  readonly holder: Group;
  readonly faces: readonly Mesh[];
  readonly lines: readonly LineSegments[];
}

interface MarkedGroup {
  /** By the body's id. */
  readonly parts: Map<string, readonly MarkedPart[]>;
  readonly shown: Set<MarkedPart>;
}

/** Without those of groups that are no longer in the picture. */
const kept = (
  marked: ReadonlyMap<ShownGroup["lots"], MarkedGroup>,
  groups: ReadonlyMap<string, ShownGroup>,
): Map<ShownGroup["lots"], MarkedGroup> => {
  const current = new Set([...groups.values()].map(({ lots }) => lots));
  const left = new Map<ShownGroup["lots"], MarkedGroup>();
  for (const [lots, group] of marked)
    if (current.has(lots)) left.set(lots, group);
    else release(group.parts);
  return left;
};

const release = (parts: MarkedGroup["parts"]): void => {
  for (const { holder, faces, lines } of [...parts.values()].flat()) {
    holder.removeFromParent();
    for (const { geometry } of [...faces, ...lines]) geometry.dispose();
  }
};

/** A body that clashes with one thing and is near another is marked once, for the graver. */
const strongest = (marks: readonly Mark[]): readonly Mark[] => {
  const strong = new Map<string, Mark>();
  for (const mark of [...marks].sort((a, b) => ORDER[b.kind] - ORDER[a.kind]))
    strong.set(`${mark.group}\n${mark.body}`, mark);
  return [...strong.values()];
};

const ORDER: Readonly<Record<MarkKind, number>> = { clash: 0, finding: 1, touching: 2, near: 3 };

const show = ({ holder, faces, lines }: MarkedPart, kind: MarkKind, { face, line }: Ink): void => {
  holder.visible = true;
  for (const each of faces) each.material = face;
  for (const each of lines) {
    each.material = line;
    // What is merely near is often large, a rib or a rail: its lines would hide the rest.
    each.visible = kind !== "near";
  }
};

const partsOf = ({ lots, bodies }: ShownGroup, id: string): readonly MarkedPart[] =>
  lots.flatMap((shown) => {
    const ranges = shown.lot.ranges.filter(({ body }) => bodies[body]?.id === id);
    return ranges.length === 0 ? [] : [markedPart(shown, ranges)];
  });

/** Shares the corners of its lot. */
const markedPart = (
  { lot, mesh, holder }: ShownLot,
  ranges: readonly SceneLot["ranges"][number][],
): MarkedPart => {
  const faces = ranges.map(({ triangles: { from, count } }) => {
    const made = new BufferGeometry();
    made.setAttribute("position", mesh.geometry.getAttribute("position"));
    made.setIndex(new BufferAttribute(lot.triangles.slice(3 * from, 3 * (from + count)), 1));
    return new Mesh(made);
  });
  const lines = ranges.map(({ edges: { from, count } }) => {
    const made = new BufferGeometry();
    made.setAttribute(
      "position",
      new BufferAttribute(lot.edges.slice(6 * from, 6 * (from + count)), 3),
    );
    return new LineSegments(made);
  });
  const part = { holder: new Group(), faces, lines };
  for (const each of [...faces, ...lines]) {
    each.renderOrder = 10;
    part.holder.add(each);
  }
  holder.add(part.holder);
  return part;
};
