// What keeps the light of a lamp in: the walls of the face's holes painted, where a finish does that and the way is gone with it; else what
// would have to stand or lie otherwise, in words by the opening. Takes the opening that light leaves by, and what else is known.

import { spanOf } from "../../design/written.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import { finishNames, finishOf } from "../../layout/context.ts";
import type { LayerLayout } from "../../layout/panel-layout.ts";
import { lightScene } from "../../light/light-scene.ts";
import type { OpeningKind } from "../../light/opening.ts";
import { type Sight, sightsOf } from "../../light/sight.ts";
import type { PanelFacts } from "../rule.ts";

/** A finish is tried when an opening first asks for one, and once for all of them. */
export const leakRemedies = (facts: PanelFacts): ((sight: Sight) => readonly Remedy[]) => {
  const tries = paintedFaces(facts).map(({ face, remedy }) => ({
    remedy,
    leftOwners: once(() => ownersSeen(face, facts)),
  }));
  return ({ owner }) =>
    tries
      .filter(({ leftOwners }, index) => index < MOST_TRIED && !leftOwners().has(owner))
      .slice(0, 1)
      .map(({ remedy }) => remedy);
};

/** One of the builder's own and one that comes with the catalogue paint alike; a third would say the same. */
const MOST_TRIED = 2;

const once = <Value>(make: () => Value): (() => Value) => {
  let made: { readonly value: Value } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

/** What would still be seen past. A list of its own keeps the scene of the panel as it is where it was. */
const ownersSeen = (
  painted: LayerLayout,
  { layout, printedParts }: PanelFacts,
): ReadonlySet<string> => {
  const layers = layout.layers.map((layer) => (layer.id === painted.id ? painted : layer));
  const scene = lightScene({ ...layout, layers }, [...printedParts]);
  return new Set(sightsOf(scene).map(({ owner }) => owner));
};

interface PaintedFace {
  readonly face: LayerLayout;
  readonly remedy: Remedy;
}

/** With finishes that paint the walls of holes, in place of one of the foremost sheet that leaves them bare. */
const paintedFaces = (facts: PanelFacts): readonly PaintedFace[] => {
  const [face] = facts.layout.layers;
  if (face?.design.kind !== "sheet" || face.finish?.order !== "paint-then-cut") return [];
  const span = spanOf(face.design.written, "finish");
  return finishNames(facts).flatMap((id): readonly PaintedFace[] => {
    const finish = finishOf(facts, id);
    if (finish?.order !== "cut-paint-engrave") return [];
    const remedy = { title: `finish: ${id} (${face.id})`, edits: [facts.edit(span, id)] };
    return [{ face: { ...face, finish }, remedy }];
  });
};

/** No number closes it: what does, at the bench. */
export const wayToClose = ({ through, owner }: Sight): string => CLOSED_BY[through](owner);

const besideLamp = (owner: string): string =>
  `A wall of the print between the two closes it, or ${owner} in a place that no lamp lies beside: move ${owner}, the window beside it or the lamp.`;

const CLOSED_BY: Readonly<Record<OpeningKind, (owner: string) => string>> = {
  lever: besideLamp,
  shaft: besideLamp,
  nut: besideLamp,
  button: besideLamp,
  lens: besideLamp,
  part: besideLamp,
  display: (owner) => `A trim over its edge (trim: of ${owner}) closes it, or tape in its window.`,
  pocket: () => "Black tape over the pocket from behind closes it.",
  stud: () => "A washer under the stud's head that covers its hole closes it.",
  screw: () => "A washer under the screw's head that covers its hole closes it.",
  cable: () => "Foam round the cable closes it, or a way out that no lamp lies before.",
  joint: () => "Black tape along the joint closes it, or a joint that no lamp lies before.",
  edge: () => "Black foil or paint along the edge closes it.",
  cell: () => "Black tape along the wall between the two windows closes it.",
  box: () => "Black tape along the foot of the box's wall closes it.",
  "bare-edge": () => "Black foil or paint along the edge closes it.",
  "bare-face": () => "Paint on the face closes it.",
};
