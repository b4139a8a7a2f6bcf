// The order of facts about pairs of bodies: by the id of the first, then of the second, letter by letter in any language.

import { comparedTexts } from "../diagnostics/compared-texts.ts";
import type { ConsoleBody } from "./console-body.ts";

export interface BodiesOfPair {
  readonly a: ConsoleBody;
  readonly b: ConsoleBody;
}

export const byIds = (one: BodiesOfPair, other: BodiesOfPair): number =>
  comparedTexts(one.a.id, other.a.id) || comparedTexts(one.b.id, other.b.id);
