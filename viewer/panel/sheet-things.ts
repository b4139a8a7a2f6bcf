// Everything on the sheet that can be picked: components, markings, windows, screws and dowels, each with its box and the
// shape that a hand takes hold of. Pure: the layout and the picture's boxes in, plain things out, in the order of Tab.

import { entryName } from "../../src/design/entry-name.ts";
import type { MarkingDesign, PanelDesign } from "../../src/design/panel-design.ts";
import type { Span } from "../../src/diagnostics/finding.ts";
import type { Point } from "../../src/geometry/contour.ts";
import { type Extent, extent, extentCentre } from "../../src/geometry/extent.ts";
import { memberIds } from "../../src/layout/member-ids.ts";
import type { PanelLayout, PlacedFixing } from "../../src/layout/panel-layout.ts";
import { setByRule } from "../../src/layout/set-by-rule.ts";

export interface SheetThing {
  /** Instance id; `entry` is what is moved with one statement. */
  readonly id: string;
  readonly entry: string;
  readonly kind: "component" | MarkingDesign["kind"] | "screw" | "dowel";
  /** What it is, for people. */
  readonly words: string;
  readonly at: Point;
  readonly box: Extent;
  readonly grip: Grip;
  /** Where its text stands: of a component without its name before it. */
  readonly span: Span;
}

/** What a hand takes hold of where the picture has no piece of its own for it. */
export type Grip =
  | { readonly kind: "picture" }
  | { readonly kind: "area" }
  | { readonly kind: "ring" }
  | { readonly kind: "round"; readonly radius: number }
  | { readonly kind: "run"; readonly from: Point; readonly to: Point };

export const sheetThings = (
  layout: PanelLayout,
  boxes: Readonly<Record<string, Extent>>,
): readonly SheetThing[] => [
  ...layout.components.map(
    ({ id, entry, at, part, written }): SheetThing => ({
      id,
      entry,
      kind: "component",
      words: part.title,
      at,
      box: boxes[id] ?? extent(at.x, at.y, at.x, at.y),
      grip: { kind: "picture" },
      span: written.span,
    }),
  ),
  ...layout.design.markings.flatMap((marking) => markingsThings(marking, layout)),
  ...layout.fixings.map((fixing) => fixingThing(fixing, layout)),
];

/** Those that could be placed: one, or each member of a pattern. */
function markingsThings(marking: MarkingDesign, layout: PanelLayout): readonly SheetThing[] {
  const pattern = "pattern" in marking ? marking.pattern : null;
  return memberIds(marking.id, pattern).flatMap(
    (id, index) => markingThing(marking, { id, index, layout }) ?? [],
  );
}

interface Member {
  readonly id: string;
  readonly index: number;
  readonly layout: PanelLayout;
}

function markingThing(marking: MarkingDesign, member: Member): SheetThing | null {
  const { id, layout } = member;
  const { id: entry, kind, written } = marking;
  const places = layout.ownPlaces.filter((own) => own.id === id).map(({ at }) => at);
  const box = boxOf(marking, member, places[0]);
  if (box === null) return null;
  const [from = extentCentre(box), to] = places;
  const isGroup = kind === "border" || kind === "bracket";
  const grip: Grip =
    to !== undefined ? { kind: "run", from, to } : isGroup ? { kind: "ring" } : { kind: "area" };
  const at = kind === "legend" || kind === "window" ? from : extentCentre(box);
  const words = wordsOf(marking, member.index);
  return { id, entry, kind, words, at, box, grip, span: written.span };
}

function boxOf(
  marking: MarkingDesign,
  { id, layout }: Member,
  at: Point | undefined,
): Extent | null {
  if (marking.kind !== "window")
    return layout.markings.find((one) => one.id === id && one.owner === id)?.box ?? null;
  if (at === undefined) return null;
  const [across, up] = [marking.width / 2, marking.height / 2];
  return extent(at.x - across, at.y - up, at.x + across, at.y + up);
}

function wordsOf(marking: MarkingDesign, member: number): string {
  switch (marking.kind) {
    case "legend":
      return `legend "${marking.legends[member]?.text ?? ""}"`;
    case "line":
    case "arrow":
      return marking.kind;
    case "border":
    case "bracket":
      return `${marking.kind} round ${marking.around.join(", ")}`;
    case "window":
      return `window in ${marking.layers.join(", ")}`;
  }
}

const FIXING_WORDS: Readonly<Record<PlacedFixing["kind"], string>> = {
  screw: "screw",
  "dowel-round": "dowel, round hole",
  "dowel-slotted": "dowel, slotted hole",
};

function fixingThing(fixing: PlacedFixing, layout: PanelLayout): SheetThing {
  const { id, entry, at, diameter, span } = fixing;
  const radius = diameter / 2;
  const own = layout.ownPlaces.find((place) => place.id === id);
  const isRuled = setByRule(layout).includes(fixing);
  return {
    id,
    entry,
    kind: fixing.kind === "screw" ? "screw" : "dowel",
    words: `${FIXING_WORDS[fixing.kind]}${isRuled ? ", set by the rule" : ""}`,
    at,
    box: extent(at.x - radius, at.y - radius, at.x + radius, at.y + radius),
    grip: { kind: "round", radius },
    span: own?.place.written.span ?? span,
  };
}

/** Borders and brackets among these stand for what they go round. */
export const withMembers = (
  entries: readonly string[],
  { markings }: PanelDesign,
): readonly string[] => [
  ...new Set([
    ...entries,
    ...markings.flatMap((marking) =>
      (marking.kind === "border" || marking.kind === "bracket") && entries.includes(marking.id)
        ? marking.around.map(entryName)
        : [],
    ),
  ]),
];

/** Those whose components all go along. */
export const groupsAlong = (
  ids: ReadonlySet<string>,
  { design, components }: PanelLayout,
): readonly string[] =>
  design.markings.flatMap((marking) => {
    if (marking.kind !== "border" && marking.kind !== "bracket") return [];
    const around = components.filter(
      ({ id, entry }) => marking.around.includes(id) || marking.around.includes(entry),
    );
    return around.length > 0 && around.every(({ id }) => ids.has(id)) ? [marking.id] : [];
  });
