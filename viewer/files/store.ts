// Where a design is kept: behind the server, in a folder of this machine, or nowhere but in the page. Each kind of store
// answers these calls; what it can't do it says in words.

import type { DesignBinaries, DesignTexts } from "../core-messages.ts";

export interface StoredDesign {
  readonly texts: DesignTexts;
  /** Files that stand there and can't be read: `troubles` says why. What has no text and is not here is not there. */
  readonly unread: readonly string[];
  readonly binaries: DesignBinaries;
  /** Files that can't be written, and why. */
  readonly locked: ReadonlyMap<string, string>;
  readonly isReadOnly: boolean;
  /** Files that could not be read, in words. */
  readonly troubles: readonly string[];
}

export type LoadOutcome =
  | { readonly kind: "loaded"; readonly design: StoredDesign }
  | { readonly kind: "trouble"; readonly why: string };

export interface TextChange {
  readonly file: string;
  /** What the page knows to be stored; null: nothing. */
  readonly before: string | null;
  readonly after: string;
}

export type SaveOutcome =
  | { readonly kind: "saved"; readonly how: string }
  /** What stands there instead; nothing was written. null: the file is gone. */
  | { readonly kind: "changed-outside"; readonly files: ReadonlyMap<string, string | null> }
  | { readonly kind: "refused"; readonly why: string };

export type KeptPicture =
  | { readonly kind: "kept" }
  | { readonly kind: "refused"; readonly why: string };

export interface Following {
  /** Something has changed outside: load again. */
  readonly changed: () => void;
  /** null: the store answers. */
  readonly lost: (why: string | null) => void;
}

/** Of files that lie in the page alone: it keeps nothing itself. */
export const isLoose = (id: string): boolean => id.startsWith("loose ");

export interface Store {
  /** Tells designs apart in what the browser keeps. */
  readonly id: string;
  readonly name: string;
  /** What saving does, in words: "Save", "Download". */
  readonly saving: string;
  readonly load: () => Promise<LoadOutcome>;
  /** All of them or none, as far as the store can. */
  readonly save: (changes: readonly TextChange[]) => Promise<SaveOutcome>;
  /** Puts a picture beside the texts at once, never over another one. `path` is from the design's root. */
  readonly keepPicture: (path: string, bytes: Uint8Array<ArrayBuffer>) => Promise<KeptPicture>;
  /** Tells of changes outside until the function that it gives is called. */
  readonly follow: (following: Following) => () => void;
}
