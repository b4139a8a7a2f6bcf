// What is known about a lamp box besides its shape: its cells, where their LEDs stand, how its lid closes it.

import type { Contour, Point } from "../../geometry/contour.ts";
import type { Mm } from "../../geometry/quantity.ts";
import type { AllowedHole } from "./print-allowance.ts";
import type { PrintedPart } from "./printed-part.ts";

export interface LampBoxFact {
  readonly owner: string;
  readonly cells: readonly LampCellFact[];
  /** Between neighbouring cells at the shelf, where walls are thinnest; null where there is one row or column. */
  readonly wallAcross: Mm | null;
  readonly wallUp: Mm | null;
  readonly outerWall: Mm;
  readonly line: Mm;
  /** From the diffuser's rear to the lid. */
  readonly depth: Mm;
  /** z of the middle of what stands of an LED in its cell: all of its lens glows. */
  readonly lampHeight: Mm;
  /** From its front to its rear, diffuser and all: the depth that a design writes. */
  readonly outsideDepth: Mm;
  readonly shelf: {
    readonly diffuser: string;
    readonly depth: Mm;
    readonly ledge: Mm;
    readonly clearance: Mm;
  };
  readonly flange: Mm;
  readonly lid: {
    readonly thickness: Mm;
    /** How far its plugs reach into the cells, and their clearance a side: light has to turn twice to pass. */
    readonly plug: Mm;
    readonly clearance: Mm;
    readonly screws: readonly Point[];
    readonly lens: AllowedHole;
    readonly rim: AllowedHole;
  };
  /** All LEDs lit; null where the catalogue does not say what one takes. */
  readonly watts: number | null;
}

export interface LampCellFact {
  readonly window: string;
  /** As it stands on the lid. */
  readonly number: number;
  /** The seat of the diffuser, and the cell behind it. */
  readonly opening: Contour;
  readonly inside: Contour;
  readonly leds: readonly Point[];
  /** Between neighbouring LEDs, across and up; null where there is one. */
  readonly pitch: { readonly across: Mm | null; readonly up: Mm | null };
  readonly text: LampTextFact | null;
}

export interface LampTextFact {
  readonly words: string;
  readonly length: Mm;
  /** From the place of the text that is farthest from any LED to the nearest one, along the text. */
  readonly reach: Mm;
}

export interface LampBoxPart extends PrintedPart {
  readonly role: "lamp-box";
  readonly lampBox: LampBoxFact;
}

/** Only lamp boxes have this role, and all of them have these facts. */
export const isLampBoxPart = (part: PrintedPart): part is LampBoxPart => part.role === "lamp-box";
