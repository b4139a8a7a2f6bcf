// A printed part is what one printer makes of one stock: its bodies as recipes, in panel coordinates as assembled, and the
// facts about them that others judge. z = 0 is the finished front; +z looks toward the operator.

import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import type { Finding, Span } from "../../diagnostics/finding.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { PrintedFacts } from "./printed-facts.ts";

export type PrintedRole =
  | "spacer"
  | "liner"
  | "tray"
  | "blanking"
  | "washer"
  | "trim"
  | "lamp-box"
  | "lamp-box-lid"
  | "diffuser"
  | "angled-box"
  | "test-piece";

export interface PrintedPart {
  readonly kind: "printed-part";
  /** `winch-spacer`: unique in the panel. */
  readonly id: string;
  readonly panel: string;
  readonly title: string;
  readonly revision: string;
  readonly role: PrintedRole;
  /** The layer of the stack that it is, or the component that it belongs to. */
  readonly owner: string;
  readonly stock: StockDesign;
  /** null: nobody has said which printer; then sizes hold the usual allowances. */
  readonly printer: PrinterDesign | null;
  /** The whole part, before it is split for the bed. The first body is the one that the others stand on. */
  readonly bodies: readonly PrintedBody[];
  /** Which face of the part lies on the bed. */
  readonly bedSide: "front" | "rear";
  readonly facts: PrintedFacts;
  /** What is printed in one go: one piece, or several where the part is larger than the bed. */
  readonly pieces: readonly PrintedPiece[];
  /** Where the design asks for it. */
  readonly span: Span;
}

/** One material of a part. Bodies of a part touch and never overlap. */
export interface PrintedBody {
  /** `spacer`, `white`. */
  readonly name: string;
  readonly colour: string;
  readonly solid: Solid;
}

export interface PrintedPiece {
  /** 1, 2 ...: the number that stands on it in relief where there is more than one. */
  readonly number: number;
  /** The part's bodies, cut down to this piece. */
  readonly bodies: readonly PrintedBody[];
}

export interface PrintedParts {
  readonly parts: readonly PrintedPart[];
  readonly findings: readonly Finding[];
}
