// The order of facts about pairs of bodies: by the id of the first, then of the second, letter by letter in any language.

import type { ConsoleBody } from "./console-body.ts";

export interface BodiesOfPair {
  readonly a: ConsoleBody;
  readonly b: ConsoleBody;
}

export const byIds = (one: BodiesOfPair, other: BodiesOfPair): number =>
  compared(one.a.id, other.a.id) || compared(one.b.id, other.b.id);

const compared = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
