// Instances of a STEP file as they are numbered (ISO 10303-21): text in, a reference out. The same text is the same
// instance, so that a point, a direction or a circle is written once.

import { decimal } from "../geometry/number.ts";

export type Reference = `#${number}`;

export interface Entities {
  /** Adds an instance, or finds the one with this text. */
  add(text: string): Reference;
  /** All instances so far, one a line. */
  lines(): readonly string[];
}

export const entities = (): Entities => {
  const numbers = new Map<string, Reference>();
  return {
    add: (text) => {
      const known = numbers.get(text);
      if (known !== undefined) return known;
      const reference: Reference = `#${numbers.size + 1}`;
      numbers.set(text, reference);
      return reference;
    },
    lines: () => [...numbers].map(([text, reference]) => `${reference}=${text};`),
  };
};

/** A real has a point always (6.3.2). A picometre: far below what any reader compares with. */
export const real = (value: number): string => {
  const text = decimal(value, realPlaces);
  return text.includes(".") ? text : `${text}.`;
};

const realPlaces = 9;

/** Directions are unit vectors: more places, so that a metre along one stays true. */
const directionPlaces = 12;

export interface Triple {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const cartesianPoint = (to: Entities, { x, y, z }: Triple): Reference =>
  to.add(`CARTESIAN_POINT('',(${real(x)},${real(y)},${real(z)}))`);

export const directionOf = (to: Entities, { x, y, z }: Triple): Reference =>
  to.add(`DIRECTION('',(${[x, y, z].map(directionNumber).join(",")}))`);

const directionNumber = (value: number): string => {
  const text = decimal(value, directionPlaces);
  return text.includes(".") ? text : `${text}.`;
};

/** An axis system: origin, z and x. */
export const placementOf = (
  to: Entities,
  origin: Triple,
  axes: { z: Triple; x: Triple },
): Reference =>
  to.add(
    `AXIS2_PLACEMENT_3D('',${cartesianPoint(to, origin)},${directionOf(to, axes.z)},${directionOf(to, axes.x)})`,
  );

export const upward: Triple = { x: 0, y: 0, z: 1 };
export const downward: Triple = { x: 0, y: 0, z: -1 };
export const rightward: Triple = { x: 1, y: 0, z: 0 };

/** Words between apostrophes: apostrophe and backslash doubled, what is not ASCII by its code (6.4.3). */
export const stringText = (text: string): string =>
  Array.from(text, (character) => {
    const code = character.codePointAt(0) ?? 0;
    if (character === "'" || character === "\\") return character + character;
    if (code >= 0x20 && code < 0x7f) return character;
    const hex = code.toString(16).toUpperCase();
    return code < 0x10000
      ? `\\X2\\${hex.padStart(4, "0")}\\X0\\`
      : `\\X4\\${hex.padStart(8, "0")}\\X0\\`;
  }).join("");
