// What the program says about a design. A finding is data: who, where, both numbers, whose limit,
// and what would clear it; the sentence is computed from typed facts by the rule that made it.

import type { TextEdit } from "./text-edit.ts";

/** fault: a part made from this would be wrong. query: a person must decide. note: worth knowing. */
export type Severity = "fault" | "query" | "note";

/** A stretch of a design file, in UTF-16 offsets. Line and column are worked out when it is shown. */
export interface Span {
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** A number as the reader of a finding needs it: in millimetres (or degrees ...), and as it is to be printed. */
export interface Measure {
  readonly value: number;
  readonly unit:
    | "mm"
    | "deg"
    | "arcmin"
    | "count"
    | "ratio"
    | "modules"
    | "U"
    | "HP"
    | "bytes"
    | "celsius"
    | "pixels";
}

/** Who set a limit. */
export type LimitSource =
  | { readonly kind: "standard"; readonly name: string }
  /** Published advice that binds nobody. */
  | { readonly kind: "guidance"; readonly name: string }
  | { readonly kind: "datasheet"; readonly name: string }
  /** No document was seen: the name says from memory. */
  | { readonly kind: "memory"; readonly name: string }
  | { readonly kind: "machine"; readonly name: string }
  | { readonly kind: "workshop"; readonly name: string }
  /** `key` is the key of the workshop's `house-rules` that overrides it. */
  | { readonly kind: "house-rule"; readonly name: string; readonly key: string }
  | { readonly kind: "geometry"; readonly name: string }
  /** Common practice, with what it says; no key overrides it. */
  | { readonly kind: "practice"; readonly name: string };

/** A change that clears the finding. Without edits it is advice that a person carries out. */
export interface Remedy {
  readonly title: string;
  readonly edits: readonly TextEdit[];
}

export interface RelatedPlace {
  readonly what: string;
  readonly span: Span;
}

export interface Finding {
  /** `checks/edge-distance`, `design/unknown-key`: floor and name; never reused. */
  readonly code: string;
  readonly severity: Severity;
  /** The name of the panel or console it belongs to; empty while a file can't be read that far. */
  readonly panel: string;
  /** The instance ids it speaks of, the one to look at first. */
  readonly subjects: readonly string[];
  readonly message: string;
  readonly span: Span;
  readonly related: readonly RelatedPlace[];
  readonly measured: Measure | null;
  readonly limit: Measure | null;
  readonly source: LimitSource | null;
  readonly remedies: readonly Remedy[];
  /** How many findings with the same cause were held back. */
  readonly suppressed: number;
}

/** One row of the table of codes, for `why CODE`. */
export interface CodeEntry {
  readonly code: string;
  readonly severity: Severity;
  /** One line: what it means. */
  readonly title: string;
  /** A paragraph: why it matters at the bench, what to do. */
  readonly why: string;
  /** A few lines of design text that give it. */
  readonly example: string;
}

/** The parts of a finding that a maker of findings must say; the rest have plain defaults. */
export type FindingParts = Pick<Finding, "message" | "span"> &
  Partial<Omit<Finding, "code" | "severity">>;

/** A finding under a code of the table. */
export const finding = (entry: CodeEntry, parts: FindingParts): Finding => ({
  code: entry.code,
  severity: entry.severity,
  panel: "",
  subjects: [],
  related: [],
  measured: null,
  limit: null,
  source: null,
  remedies: [],
  suppressed: 0,
  ...parts,
});
