// Words at a switch's positions: beside a lever for up, down, left, right and centre; round a selector, each at its stop,
// for 1, 2 and so on. A position that the part does not have is told.

import type { PositionsDesign, Side } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { type Extent, joinedExtent } from "../../geometry/extent.ts";
import { UNKNOWN_POSITION } from "../codes.ts";
import type { PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import type { LegendScene } from "./legend-scene.ts";
import { type MarkingHead, type MarkingShapes, marking } from "./marking.ts";
import { stopAngle, stopMarks } from "./scale-marks.ts";
import { sideText } from "./side-text.ts";
import { lineWidth } from "./style.ts";

export interface PlacedWords {
  readonly markings: readonly PlacedMarking[];
  /** The component's reach with its words. */
  readonly reach: Extent;
  readonly findings: readonly Finding[];
}

export const positionWords = (
  component: PlacedComponent,
  reach: Extent,
  scene: LegendScene,
): PlacedWords => {
  const { positions } = component.common;
  if (positions === null) return { markings: [], reach, findings: [] };
  const markings: PlacedMarking[] = [];
  const findings: Finding[] = [];
  for (const [position, word] of Object.entries(positions.labels)) {
    const head = headOf(component, position, scene);
    const placed = wordAt(component, { position, word, reach }, scene);
    if (placed === null) findings.push(unknownPosition(component, position, positions));
    else {
      const capHeight = scene.style.height;
      const made = marking({ ...head, side: placed.side }, placed.shapes, {
        text: word,
        capHeight,
      });
      markings.push(...(made === null ? [] : [made]));
      markings.push(...placed.ticks.flatMap((tick) => tickMarking(head, tick)));
    }
  }
  return {
    markings,
    reach: markings.map(({ box }) => box).reduce(joinedExtent, reach),
    findings,
  };
};

const headOf = (component: PlacedComponent, position: string, scene: LegendScene): MarkingHead => ({
  id: `${component.id}/${position}`,
  owner: component.id,
  kind: "legend",
  layer: scene.layer,
  side: null,
  span:
    component.common.positions === null
      ? component.span
      : spanOf(component.common.positions.written, position),
});

const tickMarking = (head: MarkingHead, tick: MarkingShapes): readonly PlacedMarking[] => {
  const made = marking({ ...head, id: `${head.id}-tick`, kind: "scale" }, tick, null);
  return made === null ? [] : [made];
};

interface PlacedWord {
  readonly side: Side | null;
  readonly shapes: MarkingShapes;
  readonly ticks: readonly MarkingShapes[];
}

/** Which side of the lever a position's word stands on. Seen from the front, whatever way the part is turned. */
const POSITION_SIDES: ReadonlyMap<string, Side> = new Map([
  ["up", "above"],
  ["down", "below"],
  ["left", "left"],
  ["right", "right"],
  ["centre", "right"],
]);

const wordAt = (
  component: PlacedComponent,
  what: { readonly position: string; readonly word: string; readonly reach: Extent },
  scene: LegendScene,
): PlacedWord | null => {
  const { position, word, reach } = what;
  const side = POSITION_SIDES.get(position);
  if (side !== undefined)
    return { side, shapes: sideText(word, reach, { style: scene.style, side }), ticks: [] };
  const angle = stopAngle(component, position);
  if (angle === null) return null;
  const width = lineWidth(scene.style);
  const { tick, figure } = stopMarks(component, angle, { word, width, style: scene.style });
  // With a scale of its own the ticks are there already.
  const ticks = component.common.scale === null ? [tick] : [];
  return { side: null, shapes: figure, ticks };
};

const unknownPosition = (
  component: PlacedComponent,
  position: string,
  positions: PositionsDesign,
): Finding => {
  const stops = component.part.turning?.positions ?? null;
  const has =
    stops === null
      ? "up, down, left, right and centre"
      : `up, down, left, right, centre and 1 to ${stops}`;
  return finding(UNKNOWN_POSITION, {
    message: `${component.id}: ${component.part.id} has no position "${position}". It takes words at ${has}.`,
    span: spanOf(positions.written, position),
    subjects: [component.id],
  });
};
