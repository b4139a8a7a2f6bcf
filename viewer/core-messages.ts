// What the page and its worker say to each other: texts in, the reading of them out. Plain data both ways.
// Another question to the worker gets its own file of messages and a line in `core.worker.ts`.

import type { ConsoleDesign } from "../src/design/console-design.ts";
import type { PanelDesign } from "../src/design/panel-design.ts";
import type { Finding } from "../src/diagnostics/finding.ts";
import type { PanelLayout } from "../src/layout/panel-layout.ts";
import type { DataChange } from "./data-change.ts";
import type { PanelPicture, PicturePiece } from "./panel/panel-picture.ts";

/** The texts of a design by path from its root, forward slashes. */
export type DesignTexts = ReadonlyMap<string, string>;

/** What the texts name that is no text, shapes and photographs, by path from the root; null: it is there and could not be read, which whoever tried has said. */
export type DesignBinaries = ReadonlyMap<string, Uint8Array | null>;

/** What a design is read from. */
export interface DesignSources {
  readonly texts: DesignTexts;
  readonly binaries: DesignBinaries;
}

export interface CoreRequest extends DesignSources {
  readonly number: number;
}

export interface PanelReading {
  readonly name: string;
  readonly title: string;
  readonly file: string;
  readonly design: PanelDesign;
  /** null where a fault kept the panel from being laid out. Markings come without their shapes: `picture` has them. */
  readonly layout: PanelLayout | null;
  readonly picture: PanelPicture | null;
}

/** A console that the design holds. Where its panels lie, its own view asks. */
export interface ConsoleReading {
  readonly design: ConsoleDesign;
}

/** A finding with its place worked out, since only the worker holds the texts that it was judged on. */
export interface PlacedFinding {
  readonly finding: Finding;
  readonly line: number;
  readonly column: number;
}

export interface DesignReading {
  readonly kind: "read";
  readonly number: number;
  readonly panels: readonly PanelReading[];
  /** null where the design holds none; the first by path where it holds several. */
  readonly console: ConsoleReading | null;
  readonly findings: readonly PlacedFinding[];
}

/** The program itself failed: its data could not be loaded, or it has a mistake in it. */
export interface CoreFailure {
  readonly kind: "failed";
  readonly number: number;
  readonly why: string;
}

export type CoreReply = DesignReading | CoreFailure;

/** A reading on its way from the worker: of its panels only what has changed. */
export interface SentReading extends Omit<DesignReading, "panels"> {
  readonly panels: readonly PanelUpdate[];
}

/** Panels as soon as they are laid out, those that the page has: their findings come with the reading itself. */
export interface SentPictures {
  readonly kind: "drawn";
  readonly number: number;
  readonly panels: readonly PanelUpdate[];
}

/** A panel on its way to the page. */
export type PanelUpdate =
  /** As it stood at this place of the reading before. */
  | { readonly kind: "same"; readonly place: number }
  | {
      readonly kind: "changed";
      readonly panel: Pick<PanelReading, "name" | "title" | "file">;
      /** Where the panel stood in the reading before; -1 where it is new. */
      readonly place: number;
      /** Of its design and its layout (`panel-updates.ts`). */
      readonly content: DataChange;
      readonly picture: PictureUpdate | null;
    };

export interface PictureUpdate {
  /** Of all but its pieces. */
  readonly rest: DataChange;
  /** A number is the place of the same piece in the picture before. */
  readonly pieces: readonly (PicturePiece | number)[];
}
