// A remedy that gives a key of the frame's text a value: of the frame itself, or of a group in it such as `rails`, whether that
// is written yet or not.

import type { FrameDesign } from "../../design/frame-design.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import { keyRemedy } from "../key-remedy.ts";
import type { SheetFacts } from "./frame-rule.ts";

export interface FrameValue {
  readonly group: "ribs" | "rails" | null;
  readonly key: string;
  readonly value: string;
}

export const frameRemedy = (
  facts: Pick<SheetFacts, "texts">,
  { written }: FrameDesign,
  { group, key, value }: FrameValue,
): Remedy => {
  const { file } = written.span;
  if (group === null) return keyRemedy(facts, { file, path: ["frame"], key, value });
  if (written.keys[group] !== undefined)
    return keyRemedy(facts, { file, path: ["frame", group], key, value });
  return keyRemedy(facts, { file, path: ["frame"], key: group, value: `{ ${key}: ${value} }` });
};
