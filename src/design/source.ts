// A design file as it is read: its path (from the root of the design, forward slashes), its text, and the text's hash,
// which every edit that a remedy offers must carry.

import type { Span } from "../diagnostics/finding.ts";
import { type TextEdit, textHash } from "../diagnostics/text-edit.ts";

export interface Source {
  readonly file: string;
  readonly text: string;
  readonly hash: string;
}

export const source = (file: string, text: string): Source => ({
  file,
  text,
  hash: textHash(text),
});

export const spanIn = (from: Source, start: number, end: number): Span => ({
  file: from.file,
  start,
  end,
});

/** The edit that writes `text` in place of a span. */
export const replacement = (from: Source, span: Span, text: string): TextEdit => ({
  file: from.file,
  baseHash: from.hash,
  start: span.start,
  end: span.end,
  text,
});

/** What stands in a span, shortened for a message. */
export const quotedFrom = (from: Source, span: Span): string =>
  shortened(from.text.slice(span.start, span.end));

/** A text in quotation marks of a message; long ones are cut at 40 characters, on one line. */
export const shortened = (text: string): string => {
  const line = text.replaceAll(/\s+/g, " ").trim();
  const characters = [...line.slice(0, 100)];
  return characters.length > 40 ? `\`${characters.slice(0, 39).join("")}…\`` : `\`${line}\``;
};
