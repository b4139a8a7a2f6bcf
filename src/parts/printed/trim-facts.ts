// What is known about a trim besides its shape: how far its lip covers what leaks, how it is held, where its filter lies.

import type { TrimFixing } from "../../design/printed-design.ts";
import type { Contour, Point } from "../../geometry/contour.ts";
import type { Mm } from "../../geometry/quantity.ts";
import type { PrintedPart } from "./printed-part.ts";

export interface TrimFact {
  readonly owner: string;
  readonly lip: LipFact;
  readonly fit: TrimFitFact;
  /** null: nothing lies behind the lip but the display itself. */
  readonly seat: TrimSeatFact | null;
}

export interface LipFact {
  /** How far in over the display the design asks it to reach; null where it reaches to the window. */
  readonly asked: Mm | null;
  /** From the display's edge inward to what is read, the least all round; null where nobody knows what is read. */
  readonly toRead: Mm | null;
  /** What is left open to read through. */
  readonly inner: Contour;
  /** The edge that light leaks at: of the display, or of its hole where the glass lies behind it. */
  readonly leak: Contour;
  /** From the leak's edge inward to the lip's edge, the least all round; the lip is solid from there outward. */
  readonly overlap: Mm;
  /** How far the display can be aside in its hole: what the overlap must exceed. */
  readonly play: Mm;
  /** The glass is larger than its hole and lies behind it: then its edge is covered by the sheet. */
  readonly isGlassBehind: boolean;
  /** From the lip's rear to its front. */
  readonly thickness: Mm;
}

export interface TrimFitFact {
  readonly fixing: TrimFixing;
  readonly opening: Contour;
  readonly body: Contour;
  readonly fit: "press" | "snug" | "sliding" | "loose";
  /** A side, from the body to the opening. */
  readonly clearance: Mm;
  /** How far the flange covers the fascia beside the opening. */
  readonly flangeOverlap: Mm;
  readonly screws: readonly Point[];
  /** From the screws' heads' side into the trim; null without screws. */
  readonly screwDepth: Mm | null;
}

export interface TrimSeatFact {
  readonly filter: string | null;
  readonly room: Contour;
  /** Of the filter as cut; null where there is none. */
  readonly sheet: Contour | null;
  readonly clearance: Mm;
  /** What the filter lies on, the least at any side. */
  readonly ledge: Mm;
  readonly depth: Mm;
}

export interface TrimPart extends PrintedPart {
  readonly role: "trim";
  readonly trim: TrimFact;
}

/** Only trims have this role, and all of them have these facts. */
export const isTrimPart = (part: PrintedPart): part is TrimPart => part.role === "trim";
