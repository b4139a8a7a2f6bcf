// What brings two things apart: the component that was written later moves first; members of one row need a larger pitch.

import { spanOf } from "../design/written.ts";
import type { Remedy } from "../diagnostics/finding.ts";
import type { Point } from "../geometry/contour.ts";
import { entryPattern } from "../layout/entry-pattern.ts";
import type { MovableThing } from "../layout/movable-things.ts";
import type { PanelLayout, PlacedComponent } from "../layout/panel-layout.ts";
import { moveRemedy, type Way } from "./move-remedy.ts";
import { roundedUp } from "./round-length.ts";
import type { PanelFacts } from "./rule.ts";

/** What comes too near the other, and where it is: an opening's centre, a component's axis. */
export interface PairMember {
  readonly owner: string;
  readonly centre: Point;
}

/** `more`: how much farther apart along the axis that they lie apart on. The better place comes first. */
export const pairRemedies = (
  first: PairMember,
  second: PairMember,
  options: { readonly more: number; readonly facts: PanelFacts },
): readonly Remedy[] => {
  const { facts, more } = options;
  const row = rowOf(first.owner, second.owner, facts.layout);
  if (row !== null) return pitchRemedy(row, { more, facts });
  const find = ({ owner }: PairMember): PlacedComponent | null =>
    facts.layout.components.find(({ id }) => id === owner) ?? null;
  const [a, b] = [find(first), find(second)];
  const moves = [
    ...(b === null ? [] : waysFrom(first.centre, b, second.centre)),
    ...(a === null ? [] : waysFrom(second.centre, a, first.centre)),
  ];
  for (const { component, way } of moves) {
    const remedy = moveRemedy(component, way, facts);
    if (remedy !== null) return [remedy];
  }
  return [];
};

type Member = Pick<MovableThing, "entry" | "at">;

/** Two members of one row, column, grid or ring; null for two things of their own. */
export const rowOf = (
  first: string,
  second: string,
  layout: PanelLayout,
): readonly [Member, Member] | null => {
  const find = (owner: string): Member | undefined =>
    layout.components.find(({ id }) => id === owner) ??
    layout.ownPlaces.find(({ id }) => id === owner);
  const [a, b] = [find(first), find(second)];
  return a === undefined || b === undefined || a.entry !== b.entry ? null : [a, b];
};

/** Away from the other along the axis that they lie apart on, else along the other axis, either way. */
const waysFrom = (
  other: Point,
  component: PlacedComponent,
  own: Point,
): readonly { readonly component: PlacedComponent; readonly way: Way }[] => {
  const dx = own.x - other.x;
  const dy = own.y - other.y;
  const across: Way = { axis: "across", toward: dx < 0 ? -1 : 1 };
  const along: Way = { axis: "along", toward: dy < 0 ? -1 : 1 };
  const back = (way: Way): Way => ({ ...way, toward: way.toward === 1 ? -1 : 1 });
  const ways =
    Math.abs(dx) >= Math.abs(dy)
      ? [across, along, back(along), back(across)]
      : [along, across, back(across), back(along)];
  return ways.map((way) => ({ component, way }));
};

/** Neighbours of a row: the pitch takes the whole of what is missing. */
const pitchRemedy = (
  [a, b]: readonly [Member, Member],
  options: { readonly more: number; readonly facts: PanelFacts },
): readonly Remedy[] => {
  const dx = Math.abs(b.at.x - a.at.x);
  const dy = Math.abs(b.at.y - a.at.y);
  const pattern = entryPattern(a.entry, options.facts.layout);
  if (pattern === null) return [];
  const { written } = pattern;
  const key = dx < dy && written.keys["row-pitch"] !== undefined ? "row-pitch" : "pitch";
  const span = written.keys[key];
  if (span === undefined) return [];
  const text = roundedUp(options.facts, span, Math.max(dx, dy) + options.more);
  return [
    {
      title: `${key}: ${text} (${a.entry})`,
      edits: [options.facts.edit(spanOf(written, key), text)],
    },
  ];
};
