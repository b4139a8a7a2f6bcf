// Scales round a knob or selector, and dials behind a needle. The first mark stands where the pointer stands at the first
// stop: the shaft's flat plus the knob's angle from flat to pointer, or the part's own first stop where nothing fixes the knob.

import type { DialDesign, ScaleDesign } from "../../design/panel-design.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { decimal } from "../../geometry/number.ts";
import { type Degrees, degrees, type Mm, mm } from "../../geometry/quantity.ts";
import { clockDirection } from "../../geometry/trigonometry.ts";
import { SCALE_TOO_FINE } from "../codes.ts";
import type { PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import type { LegendScene } from "./legends.ts";
import { joinedShapes, lineShape, type MarkingShapes, marking, textAt } from "./marking.ts";
import { lineWidth, type TextStyle } from "./style.ts";
import { textBlock } from "./text-block.ts";

/** From knob or needle to the ticks; tick lengths: common practice for 20 to 30 mm knobs. */
const TICK_GAP = 1.2;
const MAJOR_TICK = 2.5;
const MINOR_TICK = 1.5;
const FIGURE_GAP = 0.9;
/** Figures are smaller than the panel's legends by this share; the visual-angle check still judges them. */
const FIGURE_SHARE = 0.85;
/** From pivot to unit, in radii: beyond the needle's tail. */
const UNIT_DROP = 0.62;
/** More marks than degrees are a slip of the pen. */
const MOST_MARKS = 360;

interface Marks {
  readonly centre: Point;
  readonly radius: number;
  readonly first: number;
  readonly travel: number;
  readonly turn: Degrees;
  readonly majors: readonly { readonly share: number; readonly label: string }[];
  readonly minors: readonly number[];
}

export interface PlacedScale {
  readonly markings: readonly PlacedMarking[];
  readonly findings: readonly Finding[];
}

export const componentScale = (component: PlacedComponent, scene: LegendScene): PlacedScale => {
  const { scale, dial } = component.common;
  if (scale !== null) return scaleMarks(component, scale, scene);
  if (dial !== null) return dialMarks(component, dial, scene);
  return { markings: [], findings: [] };
};

const scaleMarks = (
  component: PlacedComponent,
  scale: ScaleDesign,
  scene: LegendScene,
): PlacedScale => {
  const counts = markCounts(scale);
  if (counts === null) return { markings: [], findings: [tooFine(component, scale)] };
  const majors = counts.majors.map((value, index) => ({
    share: (value - scale.from) / (scale.to - scale.from),
    label: scale.labels?.[index] ?? decimal(value, 6),
  }));
  const minors = counts.minors.map((value) => (value - scale.from) / (scale.to - scale.from));
  const marks: Marks = {
    centre: component.at,
    radius: knobRadius(component) + TICK_GAP,
    first: firstMark(component),
    travel: scaleTravel(component, majors.length),
    turn: component.turn,
    majors,
    minors,
  };
  return {
    markings: drawn(component, marks, { scene, kind: "scale", span: scale.written.span }),
    findings: [],
  };
};

const dialMarks = (
  component: PlacedComponent,
  dial: DialDesign,
  scene: LegendScene,
): PlacedScale => {
  const counts = markCounts(dial);
  if (counts === null) return { markings: [], findings: [tooFine(component, dial)] };
  const share = (value: number): number => (value - dial.from) / (dial.to - dial.from);
  const marks: Marks = {
    centre: component.at,
    radius: (dial.radius ?? needleRadius(component)) + TICK_GAP,
    first: -dial.sweep / 2,
    travel: dial.sweep,
    turn: component.turn,
    majors: counts.majors.map((value) => ({ share: share(value), label: decimal(value, 6) })),
    minors: counts.minors.map(share),
  };
  const ticks = drawn(component, marks, { scene, kind: "dial", span: dial.written.span });
  const unit =
    dial.unit === null
      ? null
      : dialUnit(component, dial.unit, { scene, dial, radius: marks.radius });
  return { markings: unit === null ? ticks : [...ticks, unit], findings: [] };
};

/** The unit stands below the pivot, where no needle comes. */
const dialUnit = (
  component: PlacedComponent,
  unit: string,
  options: { readonly scene: LegendScene; readonly dial: DialDesign; readonly radius: number },
): PlacedMarking | null => {
  const { scene, dial, radius } = options;
  const down = clockDirection(degrees(180 - component.turn));
  const at = point(
    component.at.x + down.x * radius * UNIT_DROP,
    component.at.y + down.y * radius * UNIT_DROP,
  );
  const head = {
    id: `${component.id}/unit`,
    owner: component.id,
    kind: "dial" as const,
    layer: scene.layer,
    side: null,
    span: dial.written.span,
  };
  const style = figureStyle(scene.style);
  return marking(head, textAt(unit, at, { style }), { text: unit, capHeight: style.height });
};

/** Values of the marks; null where there would be more than a circle has degrees. */
const markCounts = (
  scale: Pick<ScaleDesign, "from" | "to" | "major" | "minor">,
): { readonly majors: readonly number[]; readonly minors: readonly number[] } | null => {
  const span = Math.abs(scale.to - scale.from);
  const finest = Math.min(scale.major, scale.minor ?? scale.major);
  if (!(span > 0) || !(finest > 0) || span / finest > MOST_MARKS) return null;
  const majors = valuesBetween(scale, scale.major);
  const minors = scale.minor === null ? [] : valuesBetween(scale, scale.minor);
  return { majors, minors: minors.filter((value) => !majors.includes(value)) };
};

const valuesBetween = (
  scale: Pick<ScaleDesign, "from" | "to">,
  step: number,
): readonly number[] => {
  const span = scale.to - scale.from;
  const count = Math.floor(Math.abs(span) / step + STEP_NOISE);
  const sign = span < 0 ? -1 : 1;
  return Array.from({ length: count + 1 }, (_, index) => rounded(scale.from + sign * index * step));
};

/** 0.1 added ten times falls short of 1 by the last bit. */
const STEP_NOISE = 1e-9;

const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

const tooFine = (component: PlacedComponent, scale: ScaleDesign | DialDesign): Finding =>
  finding(SCALE_TOO_FINE, {
    message: `${component.id}: from ${decimal(scale.from, 6)} to ${decimal(scale.to, 6)} in steps of ${decimal(Math.min(scale.major, scale.minor ?? scale.major), 6)} would give more marks than the ${MOST_MARKS} degrees of a circle.`,
    span: scale.written.span,
    subjects: [component.id],
    limit: { value: MOST_MARKS, unit: "count" },
    source: { kind: "geometry", name: "degrees of a circle" },
  });

/** Clock angle of the pointer at the first stop. */
const firstMark = (component: PlacedComponent): number => {
  const { shaft, turning } = component.part;
  const knob = component.fitted.find((hardware) => hardware.kind === "knob");
  if (shaft?.flatAt != null && knob?.kind === "knob") return shaft.flatAt + knob.pointer;
  return turning?.first ?? 0;
};

/** A selector's marks follow its detents; a pot's scale fills its travel. */
const scaleTravel = (component: PlacedComponent, marks: number): number => {
  const turning = component.part.turning;
  if (turning?.step != null) return turning.step * (marks - 1);
  return turning?.travel ?? 300;
};

const knobRadius = (component: PlacedComponent): number => {
  const knob = component.fitted.find((hardware) => hardware.kind === "knob");
  if (knob?.kind === "knob") return knob.diameter / 2;
  return (component.part.shaft?.diameter ?? 6) / 2;
};

const needleRadius = (component: PlacedComponent): number => {
  const needle = component.bodies.find((body) => body.role === "needle");
  if (needle === undefined) return 12;
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

const figureStyle = (style: TextStyle): TextStyle => ({
  ...style,
  height: mm(style.height * FIGURE_SHARE),
});

const drawn = (
  component: PlacedComponent,
  marks: Marks,
  options: {
    readonly scene: LegendScene;
    readonly kind: "scale" | "dial";
    readonly span: Finding["span"];
  },
): readonly PlacedMarking[] => {
  const { scene, kind, span } = options;
  const style = figureStyle(scene.style);
  const width = lineWidth(scene.style);
  const ticks = [
    ...marks.majors.map(({ share }) => tick(marks, share, { length: MAJOR_TICK, width })),
    ...marks.minors.map((share) => tick(marks, share, { length: MINOR_TICK, width })),
  ];
  const head = { owner: component.id, kind, layer: scene.layer, side: null, span };
  const figures = marks.majors.map((major) => figure(marks, major, style));
  const text = marks.majors.map(({ label }) => label).join(" ");
  const made = [
    marking({ ...head, id: `${component.id}/${kind}` }, joinedShapes(ticks), null),
    marking({ ...head, id: `${component.id}/${kind}-figures` }, joinedShapes(figures), {
      text,
      capHeight: style.height,
    }),
  ];
  return made.filter((found): found is PlacedMarking => found !== null);
};

const clockAngle = (marks: Marks, share: number): Degrees =>
  degrees(marks.first + share * marks.travel - marks.turn);

const tick = (
  marks: Marks,
  share: number,
  size: { readonly length: number; readonly width: Mm },
): MarkingShapes => {
  const toward = clockDirection(clockAngle(marks, share));
  const at = (radius: number): Point =>
    point(marks.centre.x + toward.x * radius, marks.centre.y + toward.y * radius);
  const half = size.width / 2;
  return lineShape(at(marks.radius + half), at(marks.radius + size.length - half), size.width);
};

/** A figure stands so far out that its box clears the longest tick along its own direction. */
const figure = (
  marks: Marks,
  major: { readonly share: number; readonly label: string },
  style: TextStyle,
): MarkingShapes => {
  const toward = clockDirection(clockAngle(marks, major.share));
  const { box } = textBlock(major.label, style, "middle");
  const reach = Math.abs(toward.x * box.maxX) + Math.abs(toward.y * box.maxY);
  const radius = marks.radius + MAJOR_TICK + FIGURE_GAP + reach;
  return textAt(
    major.label,
    point(marks.centre.x + toward.x * radius, marks.centre.y + toward.y * radius),
    { style },
  );
};
