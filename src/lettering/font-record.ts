// A font as it is packed into the library: the file's bytes as base64, and the licence that travels with them.
// The library build makes records; opening one happens on first use, in Node and in a page alike.

export type FaceKind = "outline" | "stencil" | "single-line";

export interface FontRecord {
  /** What a design writes after `font:`. */
  readonly id: string;
  /** How lists and the licence page name it. */
  readonly title: string;
  readonly kind: FaceKind;
  /** "woff" is WOFF 1.0 (or a bare TrueType file); "svg" a single-line SVG font. */
  readonly format: "woff" | "svg";
  readonly base64: string;
  /** The whole licence text, shipped wherever the font is. */
  readonly licence: string;
}
