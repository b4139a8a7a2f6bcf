// Legends of components: the component's own words beside it, and the words of a lever's positions next to the lever.
// Each text stands off what is already there on its side, so that position words come first and the legend beyond them.

import type { LegendSide } from "../../design/panel-design.ts";
import { LEGEND_SIDE } from "../../design/usual-values.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { type Extent, joinedExtent } from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import type { PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import type { LegendScene } from "./legend-scene.ts";
import { marking } from "./marking.ts";
import { positionWords } from "./position-words.ts";
import { sideText } from "./side-text.ts";
import { legendStyle } from "./style.ts";

export interface PlacedLegends {
  readonly markings: readonly PlacedMarking[];
  /** The component's reach with its legends: what a border goes round. */
  readonly reach: Extent;
  readonly findings: readonly Finding[];
}

/** Words at the positions, then what the scale measures, then the name. `reach` is what the component and its scale already cover. */
export const componentLegends = (
  component: PlacedComponent,
  reach: Extent,
  scene: LegendScene,
): PlacedLegends => {
  const words = positionWords(component, reach, scene);
  const measured = component.common.scale?.legend ?? null;
  const usual = { part: "legend", legend: component.legend, usualSide: usualSide(component) };
  const named = [{ part: "scale-legend", legend: measured, usualSide: SCALE_SIDE }, usual];
  const markings = [...words.markings];
  const findings = [...words.findings];
  let covered = words.reach;
  for (const { part, legend, usualSide: otherwise } of named) {
    if (legend === null) continue;
    const { style, findings: misses } = legendStyle(legend, scene.style, scene.context);
    const side = legend.side ?? otherwise;
    // A second gap keeps a component's name apart from the words that stand there already.
    const beyond = markings.some((word) => word.side === side) ? 2 : 1;
    const shapes = sideText(legend.text, covered, {
      style: { ...style, gap: mm(style.gap * beyond) },
      side,
      turn: legend.turn,
    });
    const head = {
      id: `${component.id}/${part}`,
      owner: component.id,
      kind: "legend" as const,
      layer: scene.layer,
      side,
      span: spanOf(legend.written, "text"),
    };
    const made = marking(head, shapes, { text: legend.text, capHeight: style.height });
    findings.push(...misses);
    if (made === null) continue;
    markings.push(made);
    covered = joinedExtent(covered, made.box);
  }
  return { markings, reach: covered, findings };
};

const SCALE_SIDE: LegendSide = LEGEND_SIDE;

/** The word of a lamp window stands on the face before it; any other legend above its component (NUREG-0700, labels; from memory, unverified). */
const usualSide = ({ part }: PlacedComponent): LegendSide =>
  part.family === "lamp" && part.openings.front === null ? "on" : LEGEND_SIDE;
