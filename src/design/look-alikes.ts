// Characters that pass for the ones that a number is written with: ordinal signs for degrees, typographic quotes for
// inches, dashes for minus, wide or unbreakable spaces, ready-made fractions.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { replacement, type Source, shortened } from "./source.ts";
import { about, type ScalarNode } from "./text-node.ts";

/** A finding where the text would be a number but for look-alikes. */
export const lookAlike = (node: ScalarNode, source: Source): Finding | null => {
  const found = [...new Set(node.text.match(LOOK_ALIKES) ?? [])];
  const first = found[0];
  if (first === undefined) {
    return null;
  }
  const meant = node.text
    .replaceAll(LOOK_ALIKES, (character, at: number) => inPlace(character, node.text[at - 1]))
    .trim();
  const code = (first.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  return finding(VALUE_CODES.lookAlike, {
    message: `${about(node)}${shortened(node.text)} holds U+${code}, which only looks like ${named(first)}; write ${meant}`,
    span: node.span,
    remedies: [{ title: `write ${meant}`, edits: [replacement(source, node.span, meant)] }],
  });
};

/** By code point, from the charts of the Unicode standard. */
const MEANT: Readonly<Record<string, string>> = {
  "\u00ba": "°", // masculine ordinal indicator
  "\u02da": "°", // ring above
  "\u2218": "°", // ring operator
  "\u1d52": "°", // modifier letter small o
  "\u2070": "°", // superscript zero
  "\u02f3": "°", // modifier letter low ring
  "\u2033": '"', // double prime
  "\u201c": '"',
  "\u201d": '"',
  "\u02ba": '"', // modifier letter double prime
  "\u2212": "-", // minus sign
  "\u2010": "-", // hyphen
  "\u2011": "-", // non-breaking hyphen
  "\u2013": "-", // en dash
  "\u2014": "-", // em dash
  "\u2044": "/", // fraction slash
  "\u2215": "/", // division slash
  "\u00a0": " ", // no-break space
  "\u202f": " ", // narrow no-break space
  "\u2009": " ", // thin space
  "\u3000": " ", // ideographic space
  "\u00bd": "1/2",
  "\u00bc": "1/4",
  "\u00be": "3/4",
  "\u215b": "1/8",
  "\u215c": "3/8",
  "\u215d": "5/8",
  "\u215e": "7/8",
};

const LOOK_ALIKES = new RegExp(`[${Object.keys(MEANT).join("")}]`, "gu");

/** A ready-made fraction behind a whole number needs a space: 5¾ is 5 3/4. */
const inPlace = (character: string, before: string | undefined): string => {
  const meant = MEANT[character] ?? character;
  return meant.length > 1 && /\d/.test(before ?? "") ? ` ${meant}` : meant;
};

const named = (character: string): string => {
  const meant = MEANT[character] ?? character;
  return meant === " " ? "a space" : meant;
};
