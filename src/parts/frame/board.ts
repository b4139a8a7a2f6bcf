// A board that stands across between the cheeks, square to the profile: where it lies in the profile, and its outline with
// the tabs that enter them. Its own plane: x across, y along its run in the profile, its good face toward `faces`.

import { type Loop, loop, type Point, point, vertex } from "../../geometry/contour.ts";
import { mm } from "../../geometry/quantity.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import { cross, scaled } from "../../geometry/space/vector.ts";
import { mirroredContour } from "../../geometry/transform.ts";
import type { Direction } from "../../geometry/trigonometry.ts";
import { asLoop } from "./as-loop.ts";
import type { FramePartRole } from "./frame-part.ts";
import { directionOutOf, leftOf, outOfProfile, type Profile, stepped } from "./profile.ts";

export interface Board {
  readonly id: string;
  readonly role: FramePartRole;
  readonly title: string;
  /** The bay whose rails it carries; null for all but ribs. */
  readonly bay: string | null;
  /** Where its lower edge lies in the profile, on its good face; where it runs from there, and how far. */
  readonly at: Point;
  readonly along: Direction;
  readonly length: number;
  /** Its good face looks to the left of its run, or to the right. */
  readonly faces: "left" | "right";
  /** From the left cheek's inner face to the right one's. */
  readonly across: Span;
  /** Its upper edge, from the right cheek to the left one, x across: two corners where it is straight. */
  readonly top: readonly Point[];
  readonly tabs: { readonly left: readonly Span[]; readonly right: readonly Span[] };
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** 1 where its x runs to the right across the console. */
const sideOf = ({ faces }: Pick<Board, "faces">): 1 | -1 => (faces === "left" ? 1 : -1);

/** Counter-clockwise on its good face; tabs are as long as the cheek is thick. */
export const boardOutline = (board: Board, cheek: number): Loop => {
  const { across, tabs, top } = board;
  const right = tabs.right.flatMap(({ from, to }) => [
    vertex(across.to, from),
    vertex(across.to + cheek, from),
    vertex(across.to + cheek, to),
    vertex(across.to, to),
  ]);
  const left = tabs.left
    .toReversed()
    .flatMap(({ from, to }) => [
      vertex(across.from, to),
      vertex(across.from - cheek, to),
      vertex(across.from - cheek, from),
      vertex(across.from, from),
    ]);
  const seen = loop(
    distinct([
      vertex(across.from, 0),
      vertex(across.to, 0),
      ...right,
      ...top.map(({ x, y }) => vertex(x, y)),
      ...left,
    ]),
  );
  return onGoodFace(board, seen);
};

/** A loop with x across as it lies on the board's good face. */
const onGoodFace = ({ faces }: Pick<Board, "faces">, seen: Loop): Loop =>
  faces === "left" ? seen : asLoop(mirroredContour(seen, mm(0)));

/** A tab that ends where the board does leaves one corner, not two. */
const distinct = (corners: readonly ReturnType<typeof vertex>[]): ReturnType<typeof vertex>[] =>
  corners.filter((corner, index) => {
    const before = corners[(index + corners.length - 1) % corners.length]!;
    return corner.x !== before.x || corner.y !== before.y;
  });

/** Its frame: x across (to the left where it faces right), y along its run. */
export const boardFrame = (board: Board, profile: Profile): Frame => {
  const x = scaled(profile.right, sideOf(board));
  const y = directionOutOf(profile, board.along);
  return { x, y, z: cross(x, y), origin: outOfProfile(profile, board.at, 0) };
};

/** What it fills of the profile between two places of its run, `more` added on every side. */
export const boardSection = (
  board: Pick<Board, "at" | "along" | "faces">,
  span: Span,
  { thickness, more = 0 }: { readonly thickness: number; readonly more?: number },
): readonly Point[] => {
  const out = leftOf(board.along);
  const side = sideOf(board);
  const corner = (along: number, depth: number): Point =>
    stepped(stepped(board.at, board.along, along), out, -side * depth);
  return [
    corner(span.from - more, -more),
    corner(span.to + more, -more),
    corner(span.to + more, thickness + more),
    corner(span.from - more, thickness + more),
  ];
};

export const boardRun = ({ length }: Pick<Board, "length">): Span => ({ from: 0, to: length });

export const straightTop = (across: Span, length: number): readonly Point[] => [
  point(across.to, length),
  point(across.from, length),
];
