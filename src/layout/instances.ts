// Entries of the design turned into instances: each component, each member of a row, column, grid or ring,
// with the part and hardware that it stands for. Places come later; here a member only knows its offset in its pattern.

import type { Hardware } from "../catalogue/hardware.ts";
import { partAsMeasured } from "../catalogue/library.ts";
import { unknownPaths } from "../catalogue/own-records.ts";
import type { Part } from "../catalogue/part.ts";
import type { Catalogue } from "../catalogue/record.ts";
import type {
  ComponentCommon,
  ComponentEntry,
  LegendDesign,
  PatternDesign,
  PlaceDesign,
} from "../design/panel-design.ts";
import { spanOf, type Written } from "../design/written.ts";
import type { Finding, Span } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { degrees } from "../geometry/quantity.ts";
import { clockDirection } from "../geometry/trigonometry.ts";
import { UNKNOWN_HARDWARE, UNKNOWN_PART } from "./codes.ts";
import { type LayoutContext, unknownName } from "./context.ts";

/** One line of the design: a single component, or a pattern with its members. */
export interface Entry {
  readonly id: string;
  readonly place: PlaceDesign;
  readonly part: Part;
  readonly fitted: readonly Hardware[];
  readonly common: ComponentCommon;
  readonly members: readonly Member[];
  readonly written: Written;
  readonly span: Span;
}

export interface Member {
  readonly id: string;
  /** From the pattern's datum: the first member of a row, column or grid, the centre of a ring. */
  readonly offset: Point;
  readonly legend: LegendDesign | null;
}

export const entriesOf = (
  components: readonly ComponentEntry[],
  context: LayoutContext,
): {
  readonly entries: readonly Entry[];
  readonly lost: readonly string[];
  readonly findings: readonly Finding[];
} => {
  const findings: Finding[] = [];
  const lost: string[] = [];
  const entries: Entry[] = [];
  for (const component of components) {
    const entry = component.kind === "unreadable" ? null : readEntry(component, context, findings);
    if (entry === null) lost.push(component.id);
    else entries.push(entry);
  }
  return { entries, lost, findings };
};

const readEntry = (
  component: Exclude<ComponentEntry, { readonly kind: "unreadable" }>,
  context: LayoutContext,
  findings: Finding[],
): Entry | null => {
  const { parts } = context.catalogue;
  const part = parts.get(component.part);
  if (part === undefined) {
    const span = spanOf(component.written, "part");
    const options = { span, known: parts.keys(), subjects: [component.id] };
    findings.push(unknownName(UNKNOWN_PART, component.part, options));
    return null;
  }
  if (component.measured !== null) findings.push(...unknownPaths(part, component.measured));
  return {
    id: component.id,
    place: component.at,
    part: component.measured === null ? part : partAsMeasured(part, component.measured),
    fitted: fittedOf(component, { part, catalogue: context.catalogue, findings }),
    common: component,
    members: membersOf(component),
    written: component.written,
    span: component.written.span,
  };
};

/** What the design fits, and what the part usually wears where the design says nothing of that kind. */
const fittedOf = (
  component: ComponentCommon & { readonly id: string },
  on: { readonly part: Part; readonly catalogue: Catalogue; readonly findings: Finding[] },
): readonly Hardware[] => {
  const { hardware } = on.catalogue;
  const chosen = component.fittedWith.flatMap((fitted) => {
    const found = hardware.get(fitted.part);
    if (found !== undefined) return [found];
    const options = { span: fitted.span, known: hardware.keys(), subjects: [component.id] };
    on.findings.push(unknownName(UNKNOWN_HARDWARE, fitted.part, options));
    return [];
  });
  const usual = on.part.usual.flatMap((id) => hardware.get(id) ?? []);
  return [...chosen, ...usual.filter(({ kind }) => !chosen.some((one) => one.kind === kind))];
};

const membersOf = (
  component: Exclude<ComponentEntry, { readonly kind: "unreadable" }>,
): readonly Member[] =>
  component.kind === "component"
    ? [{ id: component.id, offset: point(0, 0), legend: component.legend }]
    : patternOffsets(component.pattern).map((offset, index) => ({
        id: `${component.id}.${index + 1}`,
        offset,
        legend: component.legends[index] ?? null,
      }));

/** Offsets in reading order: left to right, top to bottom, clockwise. */
export const patternOffsets = (pattern: PatternDesign): readonly Point[] => {
  switch (pattern.kind) {
    case "row":
      return counted(pattern.count, (index) => point(index * pattern.pitch, 0));
    case "column":
      return counted(pattern.count, (index) => point(0, -index * pattern.pitch));
    case "grid":
      return counted(pattern.rows * pattern.columns, (index) =>
        point(
          (index % pattern.columns) * pattern.pitch,
          -Math.floor(index / pattern.columns) * pattern.rowPitch,
        ),
      );
    case "ring":
      return counted(pattern.count, (index) => {
        const toward = clockDirection(degrees(pattern.from + index * pattern.step));
        return point(pattern.radius * toward.x, pattern.radius * toward.y);
      });
  }
};

const counted = (count: number, offset: (index: number) => Point): readonly Point[] =>
  Array.from({ length: count }, (_, index) => offset(index));
