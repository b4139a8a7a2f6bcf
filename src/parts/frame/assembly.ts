// The order in which a frame goes together. Tabs of all boards run across, so that one cheek lies on the bench, the boards
// stand in it, and the other cheek closes them; rails drop onto the ribs' tabs, half-lapped ribs into both cheeks before.

import type { FrameJoints } from "../../design/frame-design.ts";
import { invariant } from "../../geometry/invariant.ts";
import { scaled } from "../../geometry/space/vector.ts";
import type { AssemblyStep, FramePart } from "./frame-part.ts";
import type { Piece } from "./piece.ts";
import type { Profile } from "./profile.ts";

export interface SectionAssembly {
  readonly pieces: readonly Piece[];
  readonly steps: readonly SectionStep[];
}

/** A step that does not know its unit yet. */
export type SectionStep = Omit<AssemblyStep, "unit">;

/** The pieces in the order of assembly, and its steps. */
export const assembled = (
  pieces: readonly Piece[],
  options: { readonly joints: FrameJoints; readonly profile: Profile },
): SectionAssembly => {
  const { joints, profile } = options;
  const isLapped = joints === "half-lap";
  const of = (role: FramePart["role"]): readonly Piece[] =>
    pieces.filter((piece) => piece.role === role);
  const cheeks = of("cheek");
  const ribs = of("rib");
  const between = pieces.filter(
    ({ role }) => !["cheek", "rail-bar", "hatch", ...(isLapped ? ["rib"] : [])].includes(role),
  );
  const toRight = profile.right;
  const first = step(cheeks.slice(0, 1), null, "Lay the right cheek on its good face.");
  const stand = step(between, toRight, HOW[joints]);
  const close = step(
    cheeks.slice(1),
    toRight,
    "Set the left cheek on; tap it down evenly, from the middle outward.",
  );
  const lapped = isLapped ? eachBay(ribs, "Set it upright and drop the ribs in from above.") : [];
  const rails = eachBay(of("rail-bar"), "Lay the rails onto the ribs, holes toward the middle.");
  const hatch = of("hatch").map((piece) =>
    step([piece], scaled(piece.frame.z, -1), "Screw the hatch on; it comes off for service."),
  );
  const steps = [first, stand, close, ...lapped, ...rails, ...hatch].filter(
    ({ adds }) => adds.length > 0,
  );
  const added = steps.flatMap(({ adds }) => adds);
  const inOrder = pieces.toSorted((a, b) => added.indexOf(a.id) - added.indexOf(b.id));
  invariant(
    added.length === pieces.length && inOrder.every(({ id }, index) => id === added[index]),
    "every piece of a frame is added in one step",
  );
  return { pieces: inOrder, steps };
};

const HOW: Readonly<Record<FrameJoints, string>> = {
  "tab-and-slot": "Stand these in its slots, with glue.",
  "half-lap": "Stand these in its slots, with glue.",
  dowel: "Stand these on it, with dowels and glue.",
  screws: "Stand these on it; drill their edges through its holes and screw them on.",
};

/** Pieces that stand alike go in together: those of one bay. */
const eachBay = (pieces: readonly Piece[], words: string): readonly SectionStep[] => {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const { y, z } = piece.frame;
    const key = [y.x, y.y, y.z, z.x, z.y, z.z].join();
    groups.set(key, [...(groups.get(key) ?? []), piece]);
  }
  return [...groups.values()].map((group) => {
    const { frame, role } = group[0]!;
    return step(group, scaled(role === "rib" ? frame.y : frame.z, -1), words);
  });
};

const step = (
  pieces: readonly Piece[],
  enters: SectionStep["enters"],
  words: string,
): SectionStep => ({ adds: pieces.map(({ id }) => id), enters, words });
