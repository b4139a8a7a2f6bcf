// The instances of a STEP file as they stand in its text (ISO 10303-21:2016, clauses 5 to 12): each number with its entities and
// their values. Knows no word of any schema. Takes text; what can't be read is listed and left out.

import { numberBetween } from "./plain-number.ts";

export type StepValue =
  | { readonly kind: "reference"; readonly number: number }
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "text"; readonly text: string }
  /** Between points: T, F, MILLI. */
  | { readonly kind: "word"; readonly word: string }
  | { readonly kind: "list"; readonly items: readonly StepValue[] }
  | { readonly kind: "typed"; readonly entity: StepEntity }
  /** `$`: not given; `*`: told elsewhere. */
  | { readonly kind: "nothing" };

export interface StepEntity {
  readonly name: string;
  readonly values: readonly StepValue[];
}

export interface StepInstances {
  readonly schema: string;
  /** Several entities where the instance is of several types at once. */
  readonly instances: ReadonlyMap<number, readonly StepEntity[]>;
  readonly strangers: readonly string[];
}

export const stepInstances = (text: string): StepInstances => {
  const strangers: string[] = [];
  const instances = new Map<number, readonly StepEntity[]>();
  let schema = "";
  if (!/^\s*ISO-10303-21\s*;/.test(text)) strangers.push("it does not begin as a STEP file does");
  if (!/END-ISO-10303-21\s*;\s*$/.test(text)) strangers.push("it does not end as a STEP file does");
  for (const statement of statementsOf(text)) {
    const head = INSTANCE.exec(statement);
    if (head === null) {
      if (statement.startsWith("FILE_SCHEMA")) schema = schemaIn(statement);
      continue;
    }
    const number = Number(head[1]);
    const entities = entitiesOf(statement.slice(head[0].length));
    if (entities === null) strangers.push(`instance #${number} can't be read`);
    else if (instances.has(number)) strangers.push(`instance #${number} is there twice`);
    else instances.set(number, entities);
  }
  return { schema, instances, strangers };
};

const INSTANCE = /^#(\d+)\s*=\s*/;

/** Up to each semicolon; strings and comments may hold one (6.4.3, 6.6). By hand: a regular expression runs out of its room in a long string without an end. */
const statementsOf = (text: string): readonly string[] => {
  const statements: string[] = [];
  for (let from = 0; from < text.length; ) {
    const end = endOfStatement(text, from);
    const reading = { text: text.slice(from, end), at: 0, depth: 0 };
    skipSpace(reading);
    statements.push(reading.text.slice(reading.at));
    from = end + 1;
  }
  return statements;
};

const endOfStatement = (text: string, from: number): number => {
  let at = from;
  while (at < text.length && text.charCodeAt(at) !== SEMICOLON) {
    if (text.charCodeAt(at) === APOSTROPHE) at = behind(text, "'", at + 1);
    else if (text.startsWith("/*", at)) at = behind(text, "*/", at + 2);
    else at += 1;
  }
  return at;
};

/** Behind the next of these marks, or at the end where there is none. */
const behind = (text: string, mark: string, from: number): number => {
  const found = text.indexOf(mark, from);
  return found < 0 ? text.length : found + mark.length;
};

const schemaIn = (statement: string): string => /'([A-Za-z0-9_]+)/.exec(statement)?.[1] ?? "";

/** Where in a statement the reading has come to. A file has a hundred thousand values, and a regular expression for each took seconds. */
interface Reading {
  readonly text: string;
  at: number;
  /** How many brackets are open. */
  depth: number;
}

/** Brackets in brackets: a shape has four or so, and what goes on and on must not use up the stack. */
const DEEPEST = 100;

/** One entity, or several between brackets without commas (an instance of several types, 11.2.5.3). */
const entitiesOf = (text: string): readonly StepEntity[] | null => {
  const reading: Reading = { text, at: 0, depth: 0 };
  if (!hasMark(reading, "(")) {
    const entity = entityAt(reading);
    return entity === null || !isAtEnd(reading) ? null : [entity];
  }
  const entities: StepEntity[] = [];
  while (!hasMark(reading, ")")) {
    const entity = entityAt(reading);
    if (entity === null) return null;
    entities.push(entity);
  }
  return isAtEnd(reading) ? entities : null;
};

const entityAt = (reading: Reading): StepEntity | null => {
  skipSpace(reading);
  const name = taken(reading, isOfName);
  if (name === "" || !hasMark(reading, "(")) return null;
  const values = valuesIn(reading);
  return values === null ? null : { name: name.toUpperCase(), values };
};

/** Behind an opening bracket, up to the closing one. */
const valuesIn = (reading: Reading): readonly StepValue[] | null => {
  if (reading.depth === DEEPEST) return null;
  reading.depth += 1;
  const values = valuesTo(reading);
  reading.depth -= 1;
  return values;
};

const valuesTo = (reading: Reading): readonly StepValue[] | null => {
  const values: StepValue[] = [];
  if (hasMark(reading, ")")) return values;
  for (;;) {
    const value = valueAt(reading);
    if (value === null) return null;
    values.push(value);
    if (hasMark(reading, ")")) return values;
    if (!hasMark(reading, ",")) return null;
  }
};

const NOTHING: StepValue = { kind: "nothing" };

const valueAt = (reading: Reading): StepValue | null => {
  skipSpace(reading);
  switch (reading.text[reading.at]) {
    case "#":
      reading.at += 1;
      return { kind: "reference", number: Number(taken(reading, isDigit) || "NaN") };
    case "'":
      return textAt(reading);
    case ".":
      return wordAt(reading);
    case "(": {
      reading.at += 1;
      const items = valuesIn(reading);
      return items === null ? null : { kind: "list", items };
    }
    case "$":
    case "*":
      reading.at += 1;
      return NOTHING;
    default:
      return numberAt(reading) ?? typedAt(reading);
  }
};

const textAt = (reading: Reading): StepValue | null => {
  const from = reading.at + 1;
  let end = reading.text.indexOf("'", from);
  while (end >= 0 && reading.text[end + 1] === "'") end = reading.text.indexOf("'", end + 2);
  if (end < 0) return null;
  reading.at = end + 1;
  return { kind: "text", text: decoded(reading.text.slice(from, end)) };
};

const wordAt = (reading: Reading): StepValue | null => {
  reading.at += 1;
  const word = taken(reading, isOfName);
  if (word === "" || reading.text[reading.at] !== ".") return null;
  reading.at += 1;
  return { kind: "word", word };
};

const numberAt = (reading: Reading): StepValue | null => {
  const from = reading.at;
  const first = reading.text.charCodeAt(from);
  if (!isDigit(first) && first !== MINUS && first !== PLUS) return null;
  taken(reading, isOfNumber);
  const value = numberBetween(reading.text, from, reading.at);
  return Number.isNaN(value) ? null : { kind: "number", value };
};

const typedAt = (reading: Reading): StepValue | null => {
  const entity = entityAt(reading);
  return entity === null ? null : { kind: "typed", entity };
};

const hasMark = (reading: Reading, mark: string): boolean => {
  skipSpace(reading);
  if (reading.text[reading.at] !== mark) return false;
  reading.at += 1;
  return true;
};

const isAtEnd = (reading: Reading): boolean => {
  skipSpace(reading);
  return reading.at === reading.text.length;
};

const skipSpace = (reading: Reading): void => {
  taken(reading, isSpace);
  while (reading.text.startsWith("/*", reading.at)) {
    reading.at = behind(reading.text, "*/", reading.at + 2);
    taken(reading, isSpace);
  }
};

const taken = (reading: Reading, isOfIt: (code: number) => boolean): string => {
  const from = reading.at;
  while (reading.at < reading.text.length && isOfIt(reading.text.charCodeAt(reading.at)))
    reading.at += 1;
  return reading.text.slice(from, reading.at);
};

const SEMICOLON = 59;
const APOSTROPHE = 39;
const MINUS = 45;
const PLUS = 43;

const isSpace = (code: number): boolean => code <= 32;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** Letters, digits and the underline; `!` before names of a user's own (6.3.4, 6.4.2). */
const isOfName = (code: number): boolean =>
  isDigit(code) ||
  (code >= 65 && code <= 90) ||
  (code >= 97 && code <= 122) ||
  code === 95 ||
  code === 33;
/** With sign, point and exponent. */
const isOfNumber = (code: number): boolean =>
  isDigit(code) || code === MINUS || code === PLUS || code === 46 || code === 69 || code === 101;

/** Apostrophe and backslash doubled; \X2\ and \X4\ hold code points in fours and eights of hexadecimal digits, \X\ one in two (6.4.3). */
const decoded = (text: string): string =>
  !/['\\]/.test(text)
    ? text
    : text.replaceAll(
        /''|\\\\|\\X2\\([0-9A-F]*)\\X0\\|\\X4\\([0-9A-F]*)\\X0\\|\\X\\([0-9A-F]{2})/g,
        (all, fours?: string, eights?: string, two?: string) => {
          if (fours !== undefined) return characters(fours, 4);
          if (eights !== undefined) return characters(eights, 8);
          return two === undefined ? all.charAt(0) : characters(two, 2);
        },
      );

const characters = (digits: string, each: number): string =>
  Array.from({ length: Math.floor(digits.length / each) }, (_, index) => {
    const code = Number.parseInt(digits.slice(index * each, (index + 1) * each), 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : "";
  }).join("");
