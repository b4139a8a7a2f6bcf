// A laser's readings become a line of the workshop file, by an edit of its text: one line for each stock, the newest stands.

import { appendItem, type Edit, nodeAt, type Path, replaceValue, setKey } from "../design/edit.ts";
import { source } from "../design/source.ts";
import { applyEdits } from "../diagnostics/text-edit.ts";
import { decimal } from "../geometry/number.ts";
import type { LaserReadings } from "../parts/laser-readings.ts";

export interface Entered {
  readonly machine: string;
  readonly stock: string;
  readonly readings: LaserReadings;
  readonly dated: string;
}

export const enterReadings = (
  file: string,
  text: string,
  entered: Entered,
):
  | { readonly kind: "entered"; readonly text: string }
  | { readonly kind: "refused"; readonly why: string } => {
  const made = editFor(file, text, entered);
  if (made.kind === "refused") return made;
  const edited = applyEdits(text, [made.edit]);
  return edited.kind === "edited" ? { kind: "entered", text: edited.text } : edited;
};

/** Of a nanometre, so that a mean of readings stands as it was worked out. */
const PLACES = 6;

const readingText = ({ stock, readings, dated }: Entered): string => {
  const [x, y] = readings.kerf.map((width) => decimal(width, PLACES));
  const allowance = decimal(readings.holeAllowance, PLACES);
  return `{ stock: ${stock}, kerf: [${x}, ${y}], hole-allowance: ${allowance}, dated: ${dated} }`;
};

const editFor = (file: string, text: string, entered: Entered): Edit => {
  const from = source(file, text);
  const machine: Path = ["machines", entered.machine];
  const item = readingText(entered);
  const list = nodeAt(from, [...machine, "measured"]);
  if (list?.kind !== "list" || list.items.length === 0)
    return setKey(from, machine, { key: "measured", value: `[${item}]` });
  const old = list.items.find(
    (node) =>
      node.kind === "map" &&
      node.entries.some(
        ({ key, value }) =>
          key === "stock" && value.kind === "scalar" && value.text === entered.stock,
      ),
  );
  if (old === undefined) return appendItem(from, [...machine, "measured"], item);
  return old.kind === "map" && old.flow
    ? { kind: "edit", edit: replaceValue(from, old.span, item) }
    : {
        kind: "refused",
        why: `the old reading for ${entered.stock} runs over several lines; take it out by hand`,
      };
};
