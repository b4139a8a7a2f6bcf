// Ticks and figures round an axis, at clock angles from a first mark: what scales, dials and the stops of a selector share.

import { shapeSize } from "../../catalogue/shape-contour.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { type Degrees, degrees, type Mm, mm } from "../../geometry/quantity.ts";
import { clockDirection } from "../../geometry/trigonometry.ts";
import type { PlacedComponent } from "../panel-layout.ts";
import { lineShape, type MarkingShapes, textAt } from "./marking.ts";
import type { TextStyle } from "./style.ts";
import { textBlock } from "./text-block.ts";

/** From knob or needle to the ticks; tick lengths: common practice for 20 to 30 mm knobs. */
export const TICK_GAP = 1.2;
export const MAJOR_TICK = 2.5;
export const MINOR_TICK = 1.5;
const FIGURE_GAP = 0.9;
/** Figures are smaller than the panel's legends by this share; the visual-angle check still judges them. */
const FIGURE_SHARE = 0.85;

/** The circle that marks stand on. */
export interface MarkCircle {
  readonly centre: Point;
  /** Inner end of the ticks. */
  readonly radius: number;
}

/** Clock angle of the pointer at the first stop, as the part stands on the panel. */
export const firstStop = (component: PlacedComponent): number => {
  const { shaft, turning } = component.part;
  const knob = component.fitted.find((hardware) => hardware.kind === "knob");
  const isFixed = shaft !== null && shaft.flatAt !== null && knob?.kind === "knob";
  const upright = isFixed ? (shaft.flatAt ?? 0) + knob.pointer : (turning?.first ?? 0);
  return upright - component.turn;
};

/** Clock angle of a numbered stop; null where the part has none of that number. */
export const stopAngle = (component: PlacedComponent, position: string): number | null => {
  const { turning } = component.part;
  const stop = /^[1-9]\d?$/.test(position) ? Number(position) : 0;
  if (turning?.step == null || turning.positions === null) return null;
  if (stop < 1 || stop > turning.positions) return null;
  return firstStop(component) + (stop - 1) * turning.step;
};

/** Round the knob, or what stands in its place: shaft, or the opening that the face has for the nut. */
export const knobCircle = (component: PlacedComponent): MarkCircle => {
  const { shaft, openings } = component.part;
  const knob = component.fitted.find((hardware) => hardware.kind === "knob");
  const cover =
    knob?.kind === "knob"
      ? knob.diameter
      : Math.max(shaft?.diameter ?? 0, shapeSize(openings.clamp), openings.covered);
  const open =
    component.clamped.first > 0 && openings.front !== null ? shapeSize(openings.front) : 0;
  return { centre: component.at, radius: Math.max(cover, open) / 2 + TICK_GAP };
};

/** Tick and word of one stop of a selector. */
export const stopMarks = (
  component: PlacedComponent,
  angle: number,
  options: { readonly word: string; readonly width: Mm; readonly style: TextStyle },
): { readonly tick: MarkingShapes; readonly figure: MarkingShapes } => {
  const on = knobCircle(component);
  const { word, width, style } = options;
  return {
    tick: tickAt(on, degrees(angle), { length: MAJOR_TICK, width }),
    figure: figureAt(on, degrees(angle), { word, style }),
  };
};

export const figureStyle = (style: TextStyle): TextStyle => ({
  ...style,
  height: mm(style.height * FIGURE_SHARE),
});

export const tickAt = (
  on: MarkCircle,
  angle: Degrees,
  size: { readonly length: number; readonly width: Mm },
): MarkingShapes => {
  const half = size.width / 2;
  return lineShape(
    outward(on, angle, on.radius + half),
    outward(on, angle, on.radius + size.length - half),
    size.width,
  );
};

/** A figure stands so far out that its box clears the longest tick along its own direction. */
export const figureAt = (
  on: MarkCircle,
  angle: Degrees,
  what: { readonly word: string; readonly style: TextStyle },
): MarkingShapes => {
  const toward = clockDirection(angle);
  const { box } = textBlock(what.word, what.style, "middle");
  const reach = Math.abs(toward.x * box.maxX) + Math.abs(toward.y * box.maxY);
  const radius = on.radius + MAJOR_TICK + FIGURE_GAP + reach;
  return textAt(what.word, outward(on, angle, radius), { style: what.style });
};

export const outward = ({ centre }: MarkCircle, angle: Degrees, radius: number): Point => {
  const toward = clockDirection(angle);
  return point(centre.x + toward.x * radius, centre.y + toward.y * radius);
};
