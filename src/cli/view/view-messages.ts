// What the server of `view` and its page say to each other, as JSON. Types only: the page imports them too.

/** A file of the design as it stands on the disk. */
export interface StoredText {
  /** From the design's root, forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly isWritable: boolean;
}

/** Answer to GET /design. */
export interface DesignMessage {
  /** Tells this design from others that the same page may have open. */
  readonly id: string;
  /** The folder's name, for the person. */
  readonly name: string;
  readonly entry: string;
  readonly isReadOnly: boolean;
  readonly files: readonly StoredText[];
  /** Paths of texts that stand there and can't be read: `troubles` says why. What is in neither list is not there. */
  readonly unread: readonly string[];
  /** Paths of the shapes that the texts name, for GET /design/shapes/PATH. */
  readonly shapes: readonly string[];
  /** What stood in the way of reading a file, in words. */
  readonly troubles: readonly string[];
}

/** One file as it shall be; all changes of a message are written, or none. */
export interface TextChangeMessage {
  readonly path: string;
  /** Hash of the text that stood there when the page read it; null where there was no file. */
  readonly baseHash: string | null;
  readonly text: string;
}

/** Body of PUT /design/texts. */
export interface SaveMessage {
  readonly changes: readonly TextChangeMessage[];
}

/** Answer to PUT /design/texts, and to PUT /design/pictures/PATH, whose body is the picture. */
export type SaveReply =
  | { readonly kind: "saved" }
  /** Status 409: other texts stand there than the page knows; null: the file is gone. */
  | {
      readonly kind: "changed-outside";
      readonly files: readonly { readonly path: string; readonly text: string | null }[];
    }
  | { readonly kind: "refused"; readonly why: string };
