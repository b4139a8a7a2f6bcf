// A place that is written as two numbers, as drawing programs write one: [30, 40], (30, 40) or 30 40. Gives the two as they stand there;
// null where it is something else.

import { numberText } from "./number-text.ts";
import type { TextNode } from "./text-node.ts";
import { lengthParts, lengthUnit } from "./written-length.ts";

export const pairInNode = (node: TextNode): string | null => {
  if (node.kind === "scalar") return pairInText(node.text);
  if (node.kind !== "list" || node.items.length !== 2) return null;
  const words = node.items.map((item) => (item.kind === "scalar" ? item.text.trim() : ""));
  return words.every(isLength) ? asPlace(words) : null;
};

export const pairInText = (text: string): string | null => {
  if (text.length > LONGEST) return null;
  const words = text
    .trim()
    .replace(/^\((.*)\)$/, "$1")
    .trim()
    .split(/\s*,\s*|\s+/);
  return words.length === 2 && words.every(isLength) ? asPlace(words) : null;
};

/** A longer text is no pair of numbers. */
const LONGEST = 60;

const asPlace = ([x = "", y = ""]: readonly string[]): string => `{ x: ${x}, y: ${y} }`;

const isLength = (word: string): boolean => {
  const { figures, unit } = lengthParts(word);
  return numberText(figures).kind === "number" && lengthUnit(unit) !== undefined;
};
