// Which layers a component holds together, and the plane that its shoulder bears on.

import type { Part } from "../catalogue/part.ts";
import type { ComponentCommon } from "../design/panel-design.ts";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { CLAMPS_APART, UNKNOWN_LAYER } from "./codes.ts";
import { unknownName } from "./context.ts";
import type { Range } from "./panel-layout.ts";
import { sumOf } from "./range.ts";
import { type BareLayer, finishedThickness, lastRigidSheet } from "./stack.ts";

/** Indices into the stack, front to back. */
export interface Clamped {
  readonly first: number;
  readonly last: number;
}

/** The layers named by `clamps`, or the last rigid sheet; with a finding where they are unknown or apart. */
export const clampedLayers = (
  common: ComponentCommon,
  layers: readonly BareLayer[],
  subject: { readonly id: string; readonly span: Span },
): { readonly clamped: Clamped; readonly findings: readonly Finding[] } => {
  const fallback = lastRigidSheet(layers);
  const usual = { first: fallback, last: fallback };
  if (common.clamps.length === 0) return { clamped: usual, findings: [] };
  const indices = common.clamps.map((id) => layers.findIndex((layer) => layer.id === id));
  const missing = common.clamps.filter((_, index) => indices[index] === -1);
  if (missing.length > 0) {
    const options = {
      span: subject.span,
      known: layers.map(({ id }) => id),
      subjects: [subject.id],
    };
    return {
      clamped: usual,
      findings: missing.map((id) => unknownName(UNKNOWN_LAYER, id, options)),
    };
  }
  const first = Math.min(...indices);
  const last = Math.max(...indices);
  const sheets = layers.slice(first, last + 1);
  const touching =
    last - first + 1 === new Set(indices).size && sheets.every(({ kind }) => kind === "sheet");
  if (touching) return { clamped: { first, last }, findings: [] };
  return { clamped: usual, findings: [apart(common.clamps, layers, subject)] };
};

const apart = (
  clamps: readonly string[],
  layers: readonly BareLayer[],
  subject: { readonly id: string; readonly span: Span },
): Finding =>
  finding(CLAMPS_APART, {
    message: `${subject.id} clamps ${clamps.join(" and ")}, which don't lie on each other as sheets. The stack is ${layers.map(({ id }) => id).join(", ")}, front to back.`,
    span: subject.span,
    subjects: [subject.id],
  });

/** z of the plane that the part's shoulder or flange bears on, at nominal thickness. */
export const seatPlane = (part: Part, clamped: Clamped, layers: readonly BareLayer[]): Mm => {
  const { hold } = part;
  if (hold.seat === "front") return layers[clamped.first]?.front ?? mm(0);
  const rear = layers[clamped.last]?.rear ?? mm(0);
  return mm(rear - setBack(part, clamped, layers));
};

/**
 * How far behind the rear of what it clamps a part's seat lies: on spacers, or because its glass comes to rest on the
 * rear of the layer in front, whose window is smaller than the glass.
 */
export const setBack = (part: Part, clamped: Clamped, layers: readonly BareLayer[]): Mm => {
  const { hold, display } = part;
  if (hold.kind === "screws") return hold.standOff;
  if (hold.kind !== "behind" || display === null) return mm(0);
  const inFront = layers[clamped.first - 1];
  const rear = layers[clamped.last]?.rear ?? mm(0);
  return mm(inFront === undefined ? 0 : Math.max(0, rear - (inFront.rear - display.proud)));
};

/** Thickness of the layers from `first` to `last`, paint included. */
export const thicknessBetween = (
  layers: readonly BareLayer[],
  first: number,
  last: number,
): Range => sumOf(layers.slice(first, last + 1).map((layer) => finishedThicknessOf(layer)));

const finishedThicknessOf = (layer: BareLayer): Range =>
  layer.kind === "sheet" ? finishedThickness(layer) : layer.thickness;
