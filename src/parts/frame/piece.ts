// A piece of the frame while it is being made: its outline and holes at finished size on its good face, and where it stands.

import type { Loop } from "../../geometry/contour.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import type { HandOperation } from "../sheet-part.ts";
import type { FrameHole, FrameJoint, FramePartRole } from "./frame-part.ts";

export interface Piece {
  readonly id: string;
  readonly role: FramePartRole;
  readonly title: string;
  readonly section: number;
  readonly frame: Frame;
  readonly outline: Loop;
  readonly holes: readonly FrameHole[];
  readonly handOperations: readonly HandOperation[];
}

export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly joints: readonly FrameJoint[];
}

export const withHoles = (piece: Piece, holes: readonly FrameHole[]): Piece => ({
  ...piece,
  holes: [...piece.holes, ...holes],
});
