// A bay that stands elsewhere along one axis of the console: what is said of it, the edit of its place, and the console with it
// there. Takes the axis and how far; the one number is written anew, in its own unit.

import { nodeAt, replaceValue } from "../../design/edit.ts";
import { lengthLike } from "../../design/length-text.ts";
import { source } from "../../design/source.ts";
import { spanOf } from "../../design/written.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { plus, type Vector, vector } from "../../geometry/space/vector.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";

/** Forward, left or up, and to which side. */
export interface BayMove {
  readonly axis: 0 | 1 | 2;
  readonly by: number;
}

export const movedBay = (layout: ConsoleLayout, id: string, move: BayMove): ConsoleLayout => ({
  ...layout,
  bays: layout.bays.map((bay) =>
    bay.id === id
      ? { ...bay, frame: { ...bay.frame, origin: plus(bay.frame.origin, wayOf(move)) } }
      : bay,
  ),
});

const wayOf = ({ axis, by }: BayMove): Vector =>
  vector(axis === 0 ? by : 0, axis === 1 ? by : 0, axis === 2 ? by : 0);

/** `at: [228.6, -400, 620] (forward)`. */
export const bayMoveRemedy = (
  { id, design }: Pick<BayLayout, "id" | "design">,
  { axis, by }: BayMove,
  texts: ReadonlyMap<string, string>,
): Remedy => {
  const { file } = spanOf(design.written, "at");
  const text = texts.get(file);
  const list = text === undefined ? null : nodeAt(source(file, text), ["bays", id, "at"]);
  const items = list?.kind === "list" ? list.items : [];
  const written = items.map(({ span }) => text?.slice(span.start, span.end) ?? "");
  const [is, item] = [written[axis], items[axis]];
  const place = design.at.map((value, index) => (index === axis ? value + by : value));
  if (text === undefined || is === undefined || item === undefined)
    return {
      title: `at: [${place.map((value) => decimal(value, 3)).join(", ")}] (${id})`,
      edits: [],
    };
  const value = lengthLike(is, place[axis] ?? 0);
  return {
    title: `at: [${written.with(axis, value).join(", ")}] (${id})`,
    edits: [replaceValue(source(file, text), item.span, value)],
  };
};
