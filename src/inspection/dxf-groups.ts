// A DXF's text as pairs of a group code and its value, one pair every two lines (DXF reference, "Group codes").
// Takes the text; gives the pairs up to the first code that is not a number. Comments (999) stay in. Values stay in the
// text until they are asked for: of a panel's legends there are a hundred thousand.

import { numberBetween } from "./plain-number.ts";

export interface DxfGroups {
  readonly text: string;
  readonly codes: readonly number[];
  /** Where each value's line starts and ends in the text. */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

export const dxfGroups = (text: string): DxfGroups => {
  const codes: number[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  let at = 0;
  while (at < text.length) {
    const codeEnd = lineEnd(text, at);
    const start = nextLine(text, codeEnd);
    if (start === null) break;
    const code = numberBetween(text, at, codeEnd);
    if (!Number.isInteger(code)) break;
    const end = lineEnd(text, start);
    codes.push(code);
    starts.push(start);
    ends.push(end);
    at = nextLine(text, end) ?? text.length;
  }
  return { text, codes, starts, ends };
};

export const groupText = ({ text, starts, ends }: DxfGroups, index: number): string =>
  text.slice(starts[index], ends[index]).trim();

/** An empty value counts 0, as a number that a program left out. */
export const groupNumber = (groups: DxfGroups, index: number): number => {
  const { text, starts, ends } = groups;
  const value = numberBetween(text, starts[index]!, ends[index]!);
  return Number.isNaN(value) && groupText(groups, index) === "" ? 0 : value;
};

const LINE_FEED = 10;
const RETURN = 13;

const lineEnd = (text: string, start: number): number => {
  let at = start;
  while (at < text.length && !isBreak(text.charCodeAt(at))) at += 1;
  return at;
};

const isBreak = (code: number): boolean => code === LINE_FEED || code === RETURN;

/** Where the line after this end begins; null where the text ends without one. */
const nextLine = (text: string, end: number): number | null => {
  if (end >= text.length) return null;
  const isPair = text.charCodeAt(end) === RETURN && text.charCodeAt(end + 1) === LINE_FEED;
  return end + (isPair ? 2 : 1);
};
