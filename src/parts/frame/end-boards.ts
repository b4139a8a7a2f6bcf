// The boards that close a section below its tops: back, front and floor; before a desk's knees an apron and a top as well.

import { point } from "../../geometry/contour.ts";
import { type Board, type Span, straightTop } from "./board.ts";
import { closingPlace } from "./closing-place.ts";
import { type FrameBay, faceHeight } from "./frame-bay.ts";
import { GAP } from "./frame-practice.ts";
import { behindKnees, type KneeStep, type Knees } from "./knees.ts";
import type { PlanScene } from "./plan-options.ts";
import { tabSpans } from "./tabs.ts";

export const endBoards = (scene: PlanScene, knees: Knees | null): readonly Board[] => {
  const has = (panel: "front" | "back" | "floor"): boolean => scene.design.panels.includes(panel);
  return [
    ...(has("back") ? (knees === null ? [backBoard(scene)] : kneeBoards(scene, knees)) : []),
    ...(has("front") ? [frontBoard(scene)] : []),
    ...(has("floor") ? [floorBoard(scene, knees)] : []),
  ].map((board) => ({ ...board, id: `${board.id}${scene.suffix}` }));
};

const backBoard = (scene: PlanScene): Board =>
  upright(scene, {
    id: "back",
    role: "back",
    title: "Back",
    x: scene.inner.from,
    from: scene.design.toe,
    to: scene.bays[0]!.start.y,
    faces: "left",
    bay: scene.bays[0]!,
  });

const kneeBoards = (scene: PlanScene, knees: Knees): readonly Board[] => {
  const { inner, thickness, design, bays } = scene;
  const behind = knees.back + thickness;
  return [
    upright(scene, {
      id: "apron",
      role: "back",
      title: "Apron over the knees",
      x: inner.from,
      from: knees.over,
      to: bays[0]!.start.y,
      faces: "left",
      bay: bays[0]!,
    }),
    upright(scene, {
      id: "back",
      role: "back",
      title: "Back of the knee space",
      x: behind,
      from: knees.foot === null ? design.toe : knees.foot.over + thickness + GAP,
      to: knees.over - GAP,
      faces: "left",
      bay: bays[0]!,
    }),
    level(scene, {
      id: "knee-top",
      role: "top",
      title: "Top of the knee space",
      y: knees.over + thickness,
      from: inner.from + GAP,
      to: behind,
    }),
    ...(knees.foot === null ? [] : footBoards(scene, knees.back, knees.foot)),
  ];
};

/** `from`: face of the board before the knees, which stands on the one over the feet. */
const footBoards = (scene: PlanScene, from: number, foot: KneeStep): readonly Board[] => {
  const { thickness, design, bays } = scene;
  const behind = foot.back + thickness;
  return [
    upright(scene, {
      id: "foot-back",
      role: "back",
      title: "Back of the foot space",
      x: behind,
      from: design.toe,
      to: foot.over - GAP,
      faces: "left",
      bay: bays[0]!,
    }),
    level(scene, {
      id: "foot-top",
      role: "top",
      title: "Top of the foot space",
      y: foot.over + thickness,
      from,
      to: behind,
    }),
  ];
};

const frontBoard = (scene: PlanScene): Board => {
  const last = scene.bays.at(-1)!;
  return upright(scene, {
    id: "front",
    role: "front",
    title: "Front",
    x: scene.inner.to,
    from: scene.design.toe,
    to: closingPlace(last, scene.thickness).y,
    faces: "right",
    bay: last,
  });
};

const floorBoard = (scene: PlanScene, knees: Knees | null): Board => {
  const { inner, design, thickness } = scene;
  return level(scene, {
    id: "floor",
    role: "floor",
    title: "Floor",
    y: design.toe + thickness,
    from: (knees === null ? inner.from : behindKnees(knees, thickness)) + GAP,
    to: inner.to - GAP,
  });
};

interface Upright {
  readonly id: string;
  readonly role: Board["role"];
  readonly title: string;
  /** Inner face. */
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly faces: Board["faces"];
  /** Whose end it closes. */
  readonly bay: FrameBay;
}

/** Its uppermost tab keeps clear of the strip that butts against its top, and of a cheek that is lower on its side. */
const upright = (scene: PlanScene, upright: Upright): Board => {
  const { x, from, to, faces, bay, ...named } = upright;
  const { thickness, across } = scene;
  const length = to - from;
  const tabsAt = (side: number): readonly Span[] =>
    tabSpans(length - thickness - GAP + Math.min(0, faceHeight(bay, side)), thickness);
  return {
    ...plainBoard(scene, {
      ...named,
      at: point(x + (faces === "left" ? -thickness : thickness), from),
      along: { x: 0, y: 1 },
      length,
      faces,
    }),
    tabs: { left: tabsAt(across.from), right: tabsAt(across.to) },
  };
};

const level = (
  scene: PlanScene,
  { y, from, to, ...named }: Omit<Upright, "x" | "faces" | "bay"> & { readonly y: number },
): Board =>
  plainBoard(scene, {
    ...named,
    at: point(from, y),
    along: { x: 1, y: 0 },
    length: to - from,
    faces: "left",
  });

/** A rectangle between the cheeks. */
export const plainBoard = (
  scene: PlanScene,
  board: Omit<Board, "across" | "top" | "tabs" | "bay">,
): Board => {
  const tabs = tabSpans(board.length, scene.thickness);
  return {
    ...board,
    bay: null,
    across: scene.across,
    top: straightTop(scene.across, board.length),
    tabs: { left: tabs, right: tabs },
  };
};
