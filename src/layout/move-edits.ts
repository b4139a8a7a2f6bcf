// A shift of anything on the panel as a change of the design's text. What stands by a place is moved by its keys; what goes
// round components offers to move them; screws and dowels that a rule has set offer to be written down, all of a kind.

import { DRAG_BY_RULE, dragOfMarking } from "../design/drag-table.ts";
import { setKey } from "../design/edit.ts";
import { entryName } from "../design/entry-name.ts";
import { lengthIn, usualUnit } from "../design/length-text.ts";
import type { MarkingDesign } from "../design/panel-design.ts";
import type { Step } from "../design/rewriting.ts";
import type { Source } from "../design/source.ts";
import { inWords } from "../diagnostics/nearest.ts";
import { applyEdits, type TextEdit } from "../diagnostics/text-edit.ts";
import type { PanelLayout, PlacedFixing } from "./panel-layout.ts";
import {
  heldBy,
  type Move,
  type MoveOutcome,
  type MoveScene,
  placeMoves,
  wholeEdit,
} from "./place-moves.ts";
import { setByRule } from "./set-by-rule.ts";

export const moveEdits = (move: Move, layout: PanelLayout, from: Source): MoveOutcome => {
  const groups = groupsAmong(move.entries, layout);
  if (groups.length > 0) return membersMove(move, groups, { layout, from });
  return withRuled(move.entries, { layout, from, shiftOf: () => move }, (entries) =>
    placeMoves({ ...move, entries }, layout, from),
  );
};

/** What `others` makes of the entries that have places of their own, and the writing down of those that a rule has set. */
export const withRuled = (
  entries: readonly string[],
  scene: MoveScene,
  others: (entries: readonly string[]) => MoveOutcome,
): MoveOutcome => {
  const ruled = setByRule(scene.layout).filter(({ id }) => {
    const { x, y } = scene.shiftOf(id);
    return entries.includes(id) && (x !== 0 || y !== 0);
  });
  const names = ruled.map(({ id }) => id);
  const rest = others(entries.filter((entry) => !names.includes(entry)));
  return ruled.length === 0 ? rest : writtenDown(ruled, rest, scene);
};

interface On {
  readonly layout: PanelLayout;
  readonly from: Source;
}

export interface Group {
  readonly marking: MarkingDesign;
  readonly why: string;
  readonly members: readonly string[];
}

/** Borders and brackets whose components are not all moved anyway. */
export const groupsAmong = (
  entries: readonly string[],
  { design }: PanelLayout,
): readonly Group[] =>
  design.markings.flatMap((marking) => {
    const drag = dragOfMarking(marking);
    if (!entries.includes(marking.id) || drag?.kind !== "held" || drag.by !== "members") return [];
    const members = [...new Set(drag.members.map(entryName))];
    const isWhole = members.every((member) => entries.includes(member));
    return isWhole ? [] : [{ marking, why: heldBy(drag), members }];
  });

/** What the keys can say without its components is nothing: they are what it stands by. */
const membersMove = (move: Move, groups: readonly Group[], on: On): MoveOutcome => {
  const members = [...new Set(groups.flatMap((group) => group.members))];
  const entries = [...new Set([...move.entries, ...members])];
  const whole = moveEdits({ ...move, entries }, on.layout, on.from);
  switch (whole.kind) {
    case "still":
    case "refused":
      return whole;
    case "edits":
    case "choice":
      return {
        kind: "choice",
        why: groups.map(({ marking, why }) => `${marking.id} ${why}`).join("; "),
        kept: [],
        title: [
          `Move ${inWords(members, "and")}`,
          ...(whole.kind === "choice" ? [whole.title] : []),
        ].join("; "),
        free: editsOf(whole),
      };
  }
};

const editsOf = (outcome: MoveOutcome): readonly TextEdit[] => {
  switch (outcome.kind) {
    case "edits":
      return outcome.edits;
    case "choice":
      return outcome.free;
    case "still":
    case "refused":
      return [];
  }
};

const KEYS = { screw: "at", dowel: "dowels-at" } as const;

/** One place written down is all of its kind written down: the rule sets all of them or none. */
const writtenDown = (
  ruled: readonly PlacedFixing[],
  rest: MoveOutcome,
  scene: MoveScene,
): MoveOutcome => {
  if (rest.kind === "refused") return rest;
  const { from } = scene;
  const names = ruled.map(({ id }) => id);
  const kinds = (["screw", "dowel"] as const).filter((kind) =>
    ruled.some((fixing) => kindOf(fixing) === kind),
  );
  const steps = kinds.map((kind): Step => {
    const value = listed(kind, names, scene);
    return (now) => setKey(now, ["fixings"], { key: KEYS[kind], value });
  });
  const applied = applyEdits(from.text, editsOf(rest));
  if (applied.kind === "refused") return applied;
  const whole = wholeEdit(from, applied.text, steps);
  if (whole.kind === "refused") return whole;
  return {
    kind: "choice",
    why: `${inWords(names, "and")} ${names.length === 1 ? heldBy(DRAG_BY_RULE) : "stand where the rule for screws and dowels sets them"}`,
    kept: rest.kind === "still" ? [] : rest.kind === "edits" ? rest.edits : rest.kept,
    title: [
      ...kinds.map((kind) => titleOf(kind, { ...scene, ruled })),
      ...(rest.kind === "choice" ? [rest.title] : []),
    ].join("; "),
    free: [whole.edit],
  };
};

const kindOf = ({ kind }: PlacedFixing): "screw" | "dowel" =>
  kind === "screw" ? "screw" : "dowel";

const listed = (kind: "screw" | "dowel", names: readonly string[], on: MoveScene): string =>
  `[${on.layout.fixings
    .filter((fixing) => kindOf(fixing) === kind)
    .map((fixing) => `{ ${placeWords(fixing, names.includes(fixing.id), on)} }`)
    .join(", ")}]`;

const placeWords = (
  { id, at }: PlacedFixing,
  isMoved: boolean,
  { shiftOf, layout, from }: MoveScene,
): string => {
  const unit = usualUnit(from.text);
  const shift = isMoved ? shiftOf(id) : { x: 0, y: 0 };
  const x = at.x - layout.nominal.minX + shift.x;
  const y = at.y - layout.nominal.minY + shift.y;
  return `x: ${lengthIn(unit, x)}, y: ${lengthIn(unit, y)}`;
};

const titleOf = (
  kind: "screw" | "dowel",
  on: MoveScene & { readonly ruled: readonly PlacedFixing[] },
): string => {
  const own = on.ruled.filter((fixing) => kindOf(fixing) === kind);
  const count = on.layout.fixings.filter((fixing) => kindOf(fixing) === kind).length;
  const places = own.map((fixing) => `${fixing.id} at ${placeWords(fixing, true, on)}`);
  return `Write down where all ${count} ${kind}s stand, ${places.join(", ")}`;
};
