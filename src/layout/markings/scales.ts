// Scales round a knob or selector, and dials behind a needle. The first mark stands where the pointer stands at the first
// stop: the shaft's flat plus the knob's angle from flat to pointer, or the part's own first stop where nothing fixes the knob.

import type { DialDesign, ScaleDesign } from "../../design/panel-design.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { degrees } from "../../geometry/quantity.ts";
import { stepNoise } from "../../geometry/tolerance.ts";
import { SCALE_LABELS, SCALE_TOO_FINE } from "../codes.ts";
import type { PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import type { LegendScene } from "./legend-scene.ts";
import { joinedShapes, type MarkingHead, marking, textAt } from "./marking.ts";
import {
  figureAt,
  figureStyle,
  firstStop,
  knobCircle,
  MAJOR_TICK,
  type MarkCircle,
  MINOR_TICK,
  outward,
  TICK_GAP,
  tickAt,
} from "./scale-marks.ts";
import { lineWidth } from "./style.ts";

/** From pivot to unit, in radii: beyond the needle's tail. */
const UNIT_DROP = 0.62;
/** Radius of a dial whose part has no needle and that gives none. */
const USUAL_NEEDLE = 12;
/** Travel where the part does not say: most single-turn potentiometers. Common practice. */
const USUAL_TRAVEL = 300;
/** More marks than degrees are a slip of the pen, and so are more figures than seconds on a clock. */
const MOST_MARKS = 360;
const MOST_FIGURES = 60;

interface Marks extends MarkCircle {
  /** Clock angles on the panel. */
  readonly majors: readonly { readonly angle: number; readonly label: string }[];
  readonly minors: readonly number[];
}

export interface PlacedScale {
  readonly markings: readonly PlacedMarking[];
  readonly findings: readonly Finding[];
}

export const componentScale = (component: PlacedComponent, scene: LegendScene): PlacedScale => {
  const { scale, dial } = component.common;
  const placed = [
    ...(scale === null ? [] : [scaleMarks(component, scale, scene)]),
    ...(dial === null ? [] : [dialMarks(component, dial, scene)]),
  ];
  return {
    markings: placed.flatMap(({ markings }) => markings),
    findings: placed.flatMap(({ findings }) => findings),
  };
};

const scaleMarks = (
  component: PlacedComponent,
  scale: ScaleDesign,
  scene: LegendScene,
): PlacedScale => {
  const values = markValues(scale);
  if (values === null) return { markings: [], findings: [tooFine(component, scale)] };
  const first = firstStop(component);
  const angleOf = (value: number): number => first + scaleAngle(component, scale, value);
  const marks: Marks = {
    ...knobCircle(component),
    majors: values.majors.map((value, index) => ({
      angle: angleOf(value),
      label: scale.labels?.[index] ?? decimal(value, 6),
    })),
    minors: values.minors.map(angleOf),
  };
  return {
    markings: drawn(component, marks, { scene, kind: "scale", span: scale.written.span }),
    findings: labelFindings(component, scale, values.majors.length),
  };
};

/** A selector's marks follow its detents, one a major step; a pot's scale fills its travel. */
const scaleAngle = (component: PlacedComponent, scale: ScaleDesign, value: number): number => {
  const { turning } = component.part;
  if (turning?.step != null) return (Math.abs(value - scale.from) / scale.major) * turning.step;
  const share = (value - scale.from) / (scale.to - scale.from);
  return share * (turning?.travel ?? USUAL_TRAVEL);
};

const labelFindings = (
  component: PlacedComponent,
  scale: ScaleDesign,
  marks: number,
): readonly Finding[] => {
  const labels = scale.labels?.length ?? marks;
  if (labels === marks) return [];
  return [
    finding(SCALE_LABELS, {
      message: `${component.id}: its scale has ${marks} figures and ${labels} labels; give one a figure.`,
      span: scale.written.span,
      subjects: [component.id],
      measured: { value: labels, unit: "count" },
      limit: { value: marks, unit: "count" },
      source: { kind: "geometry", name: "figures from first to last" },
    }),
  ];
};

const dialMarks = (
  component: PlacedComponent,
  dial: DialDesign,
  scene: LegendScene,
): PlacedScale => {
  const values = markValues(dial);
  if (values === null) return { markings: [], findings: [tooFine(component, dial)] };
  const first = needleMiddle(component) - dial.sweep / 2;
  const angleOf = (value: number): number =>
    first + ((value - dial.from) / (dial.to - dial.from)) * dial.sweep;
  const marks: Marks = {
    centre: component.at,
    radius: (dial.radius ?? needleRadius(component)) + TICK_GAP,
    majors: values.majors.map((value) => ({ angle: angleOf(value), label: decimal(value, 6) })),
    minors: values.minors.map(angleOf),
  };
  const markings = drawn(component, marks, { scene, kind: "dial", span: dial.written.span });
  const unit = dialUnit(component, dial, { scene, marks });
  return { markings: unit === null ? markings : [...markings, unit], findings: [] };
};

/** Clock angle of the needle half way through its travel, as the part stands on the panel. */
const needleMiddle = ({ part, turn }: PlacedComponent): number => {
  const { turning } = part;
  return (turning?.travel == null ? 0 : turning.first + turning.travel / 2) - turn;
};

const needleRadius = (component: PlacedComponent): number => {
  const needle = component.bodies.find((body) => body.role === "needle");
  if (needle === undefined) return USUAL_NEEDLE;
  const { footprint } = needle;
  if (footprint.kind === "circle") return footprint.radius;
  return Math.max(
    ...footprint.vertices.map(({ x, y }) => {
      const dx = x - component.at.x;
      const dy = y - component.at.y;
      return Math.sqrt(dx * dx + dy * dy);
    }),
  );
};

/** The unit stands below the pivot, where no needle comes. */
const dialUnit = (
  component: PlacedComponent,
  dial: DialDesign,
  on: { readonly scene: LegendScene; readonly marks: Marks },
): PlacedMarking | null => {
  const { unit } = dial;
  if (unit === null) return null;
  const { scene, marks } = on;
  const at = outward(marks, degrees(180 - component.turn), marks.radius * UNIT_DROP);
  const style = figureStyle(scene.style);
  const head = headOf(component, { scene, kind: "dial", span: dial.written.span });
  return marking({ ...head, id: `${component.id}/unit` }, textAt(unit, at, { style }), {
    text: unit,
    capHeight: style.height,
  });
};

/** Values of the marks; null where there would be too many of them. */
const markValues = (
  scale: Pick<ScaleDesign, "from" | "to" | "major" | "minor">,
): { readonly majors: readonly number[]; readonly minors: readonly number[] } | null => {
  const span = Math.abs(scale.to - scale.from);
  const finest = Math.min(scale.major, scale.minor ?? scale.major);
  if (!(span > 0 && finest > 0) || span / finest > MOST_MARKS) return null;
  if (span / scale.major > MOST_FIGURES) return null;
  const majors = valuesBetween(scale, scale.major);
  const minors = scale.minor === null ? [] : valuesBetween(scale, scale.minor);
  return { majors, minors: minors.filter((value) => !majors.includes(value)) };
};

const valuesBetween = (
  scale: Pick<ScaleDesign, "from" | "to">,
  step: number,
): readonly number[] => {
  const span = scale.to - scale.from;
  const count = Math.floor(Math.abs(span) / step + stepNoise);
  const sign = span < 0 ? -1 : 1;
  return Array.from({ length: count + 1 }, (_, index) => rounded(scale.from + sign * index * step));
};

/** Without the noise of its sum. */
const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

const FIGURES = { most: MOST_FIGURES, what: "figures", name: "seconds of a clock" };
const MARKS = { most: MOST_MARKS, what: "marks", name: "degrees of a circle" };

const tooFine = (component: PlacedComponent, scale: ScaleDesign | DialDesign): Finding => {
  const span = Math.abs(scale.to - scale.from);
  const areFigures = span / scale.major > MOST_FIGURES;
  const step = areFigures ? scale.major : Math.min(scale.major, scale.minor ?? scale.major);
  const key = areFigures || scale.minor === null ? "major" : "minor";
  const steps = Math.ceil(span / step - stepNoise);
  const { most, what, name } = areFigures ? FIGURES : MARKS;
  return finding(SCALE_TOO_FINE, {
    message: `${component.id}: from ${decimal(scale.from, 6)} to ${decimal(scale.to, 6)} in steps of ${decimal(step, 6)} would give ${decimal(steps, 0)} ${what}, and ${most} are the most. ${key}: ${decimal(Math.ceil((span / most) * 1e6) / 1e6, 6)} or more.`,
    span: scale.written.span,
    subjects: [component.id],
    measured: { value: steps, unit: "count" },
    limit: { value: most, unit: "count" },
    source: { kind: "geometry", name },
  });
};

interface Drawing {
  readonly scene: LegendScene;
  readonly kind: "scale" | "dial";
  readonly span: Finding["span"];
}

const headOf = (component: PlacedComponent, { scene, kind, span }: Drawing): MarkingHead => ({
  id: `${component.id}/${kind}`,
  owner: component.id,
  kind,
  layer: scene.layer,
  side: null,
  span,
});

const drawn = (
  component: PlacedComponent,
  marks: Marks,
  drawing: Drawing,
): readonly PlacedMarking[] => {
  const { scene } = drawing;
  const style = figureStyle(scene.style);
  const width = lineWidth(scene.style);
  const ticks = [
    ...marks.majors.map(({ angle }) =>
      tickAt(marks, degrees(angle), { length: MAJOR_TICK, width }),
    ),
    ...marks.minors.map((angle) => tickAt(marks, degrees(angle), { length: MINOR_TICK, width })),
  ];
  const figures = marks.majors.map(({ angle, label }) =>
    figureAt(marks, degrees(angle), { word: label, style }),
  );
  const text = marks.majors.map(({ label }) => label).join(" ");
  const head = headOf(component, drawing);
  const made = [
    marking(head, joinedShapes(ticks), null),
    marking({ ...head, id: `${head.id}-figures` }, joinedShapes(figures), {
      text,
      capHeight: style.height,
      words: figures.flatMap(({ box }) => box ?? []),
    }),
  ];
  return made.filter((found): found is PlacedMarking => found !== null);
};
