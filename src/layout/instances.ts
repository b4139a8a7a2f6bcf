// Entries of the design turned into instances: each component, each member of a row, column, grid or ring,
// with the part and hardware that it stands for. Places come later; here a member only knows its offset in its pattern.

import type { Hardware } from "../catalogue/hardware.ts";
import { partAsMeasured } from "../catalogue/library.ts";
import { limitOfFigures } from "../catalogue/limit-of-figures.ts";
import { unknownPaths } from "../catalogue/own-records.ts";
import type { Part } from "../catalogue/part.ts";
import type { Catalogue } from "../catalogue/record.ts";
import { shapeSize } from "../catalogue/shape-contour.ts";
import { fromSameWords } from "../design/moved-words.ts";
import type {
  ComponentCommon,
  ComponentEntry,
  LegendDesign,
  PlaceDesign,
} from "../design/panel-design.ts";
import { patternCount } from "../design/pattern-count.ts";
import { spanOf, type Written } from "../design/written.ts";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { decimal } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";
import { HOLE_SIZE, MEASURED_SHAPE, UNKNOWN_HARDWARE, UNKNOWN_PART } from "./codes.ts";
import { type LayoutContext, unknownName } from "./context.ts";
import { asCutContour } from "./cut-outs.ts";
import { undrawable } from "./drawable.ts";
import { patternOffsets } from "./pattern-offsets.ts";

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
    const made = component.kind === "unreadable" ? null : madeEntry(component, context);
    findings.push(...(made?.findings ?? []));
    if (made === null || made.entry === null) lost.push(component.id);
    else entries.push(made.entry);
  }
  return { entries, lost, findings };
};

const madeEntry = madeOnceWith((component: Readable, context: LayoutContext) => {
  const findings: Finding[] = [];
  const entry = readEntry(component, context, findings);
  return { entry: entry === null ? null : fromSameWords(entry, component), findings };
});

const readEntry = (
  component: Readable,
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
  const measured = measuredPart(component, part, findings);
  if (measured === null) return null;
  return {
    id: component.id,
    place: component.at,
    part: measured,
    fitted: fittedOf(component, { part, catalogue: context.catalogue, findings }),
    common: { ...component, holeAsCut: holeAsCut(component, measured, findings) },
    members: membersOf(component),
    written: component.written,
    span: component.written.span,
  };
};

type Readable = Exclude<ComponentEntry, { readonly kind: "unreadable" }>;

/** The part with what was measured on it; null where the two together can't be drawn. */
const measuredPart = (component: Readable, part: Part, findings: Finding[]): Part | null => {
  const { measured } = component;
  if (measured !== null) findings.push(...unknownPaths(part, measured));
  const whole = measured === null ? part : partAsMeasured(part, measured);
  const [fault] = undrawable(whole);
  if (fault === undefined) return whole;
  findings.push(
    finding(MEASURED_SHAPE, {
      message: `${component.id}: with the measured sizes, ${fault.path} of ${part.id} can't be drawn: ${fault.says}.`,
      span: measured?.written.span ?? spanOf(component.written, "part"),
      subjects: [component.id],
    }),
  );
  return null;
};

const holeAsCut = (component: Readable, part: Part, findings: Finding[]): Mm | null => {
  const { holeAsCut: size } = component;
  if (size === null || asCutContour(part.openings.clamp, size) !== null) return size;
  const least = shapeSize(part.openings.clamp);
  findings.push(
    finding(HOLE_SIZE, {
      message: `${component.id}: cut at ${decimal(size, 3)} mm, the hole of ${part.id} loses its shape; its record makes it ${decimal(least, 3)} mm.`,
      span: spanOf(component.written, "hole"),
      subjects: [component.id],
      measured: { value: size, unit: "mm" },
      limit: { value: least, unit: "mm" },
      source: limitOfFigures(part.figures),
    }),
  );
  return null;
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

const membersOf = (component: Readable): readonly Member[] =>
  component.kind === "component"
    ? [{ id: component.id, offset: point(0, 0), legend: component.legend }]
    : patternOffsets(component.pattern).map((offset, index) => ({
        id: `${component.id}.${index + 1}`,
        offset,
        legend: component.legends[index] ?? null,
      }));

/** How many things an entry stands for. */
export const memberCount = (component: ComponentEntry): number => {
  if (component.kind === "unreadable") return 0;
  if (component.kind === "component") return 1;
  return patternCount(component.pattern);
};
