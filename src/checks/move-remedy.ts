// A remedy that moves a component by changing the one number that places it along an axis: the nearest round number at
// which it stands well. Where no number places it (centred, in line), or none within reach does, nothing is offered.

import { dragOf } from "../design/drag-table.ts";
import { spanOf } from "../design/written.ts";
import type { Remedy } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { type MoveAxis, movedWith } from "../layout/moved-with.ts";
import type { PlacedComponent } from "../layout/panel-layout.ts";
import { type PlaceFacts, placeTester, type Shift } from "./place-trouble.ts";
import { roundUnit } from "./round-length.ts";
import type { PanelFacts } from "./rule.ts";

export interface Way {
  readonly axis: MoveAxis;
  /** Right and up are 1. */
  readonly toward: 1 | -1;
}

/** Nobody wants to hear of a place farther off than this, in steps. */
const MOST_STEPS = 100;

/** What a place is tried against, and what an edit of it wants. */
export type MoveFacts = PlaceFacts & Pick<PanelFacts, "edit" | "texts">;

/** A component, a way for it to go, and what else is asked of its new place. */
export interface WantedMove {
  readonly component: PlacedComponent;
  readonly way: Way;
  readonly suits: (shift: Shift) => boolean;
}

export const moveRemedy = (component: PlacedComponent, way: Way, facts: MoveFacts): Remedy | null =>
  moveRemedyWhere({ component, way, suits: () => true }, facts);

const moveRemedyWhere = (wanted: WantedMove, facts: MoveFacts): Remedy | null => {
  const { component, way } = wanted;
  const number = dragOf(component.place[way.axis]);
  if (number.kind === "held" || component.place.written.keys[number.key] === undefined) return null;
  const span = spanOf(component.place.written, number.key);
  const unit = roundUnit(facts, span);
  const value = firstThatWorks({ ...wanted, facts }, { ...number, unit });
  if (value === null) return null;
  const text = `${decimal(value, 5)} ${unit.name}`;
  return { title: `${number.key}: ${text} (${component.entry})`, edits: [facts.edit(span, text)] };
};

interface PlacingNumber {
  readonly key: string;
  readonly value: number;
  /** Which way the component goes where the number grows. */
  readonly sign: 1 | -1;
}

/** In the unit that the number is written in. */
const firstThatWorks = (
  move: WantedMove & { readonly facts: MoveFacts },
  number: PlacingNumber & { readonly unit: { readonly mm: number; readonly step: number } },
): number | null => {
  const { component, way, suits, facts } = move;
  const { step, mm } = number.unit;
  const grows = number.sign === way.toward;
  const written = number.value / mm / step;
  const start = grows ? Math.floor(written + samePlace) + 1 : Math.ceil(written - samePlace) - 1;
  const standsWell = placeTester(
    movedWith([component.entry], way.axis, facts.layout.components),
    shiftAlong(way.axis, (MOST_STEPS + 1) * step * mm),
    facts,
  );
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const value = (start + (grows ? count : -count)) * step;
    if (value <= 0) return null;
    const by = (value * mm - number.value) * number.sign;
    const shift = shiftAlong(way.axis, by);
    if (suits(shift) && standsWell(shift)) return value;
  }
  return null;
};

const shiftAlong = (axis: MoveAxis, by: number): Shift =>
  axis === "across" ? { x: by, y: 0 } : { x: 0, y: by };

/** The first of the ways on which something works. */
export const firstMove = (
  ways: readonly Way[],
  { component, suits }: Omit<WantedMove, "way">,
  facts: MoveFacts,
): readonly Remedy[] => {
  for (const way of ways) {
    const remedy = moveRemedyWhere({ component, way, suits }, facts);
    if (remedy !== null) return [remedy];
  }
  return [];
};
