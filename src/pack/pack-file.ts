// One file of a job pack, as bytes, with the name that it gets inside the pack's folder.

export type PackFileKind =
  | "cut-svg"
  | "cut-dxf"
  | "cut-dxf-r12"
  | "print-3mf"
  | "print-stl"
  | "print-step"
  | "picture-png"
  | "label-film"
  | "template-pdf"
  | "drawing-svg"
  | "drawing-pdf"
  | "key"
  | "inspection"
  | "measuring-list"
  | "parts-list"
  | "hand-operations"
  | "assembly"
  | "fit-report"
  | "console-model"
  | "mock-up"
  | "readme"
  | "findings"
  | "manifest";

export interface PackFile {
  /** Relative, forward slashes, safe on Linux, macOS and Windows. */
  readonly path: string;
  readonly kind: PackFileKind;
  /** Id of the sheet part it belongs to; empty for the panel's own papers. */
  readonly part: string;
  readonly bytes: Uint8Array;
}
