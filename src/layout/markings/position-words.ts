// Words at a switch's positions: beside a lever for up, down, left, right and centre; round a selector, each at its stop,
// for 1, 2 and so on; a lever's own names for its ends count too. A position that the part does not have is told.

import type { PositionsDesign, Side } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { type Extent, extent, joinedExtent } from "../../geometry/extent.ts";
import { degrees } from "../../geometry/quantity.ts";
import { clockDirection } from "../../geometry/trigonometry.ts";
import { UNKNOWN_POSITION } from "../codes.ts";
import { leverTravel } from "../lever-travel.ts";
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
  const own = leverSide(component, position);
  if (own !== null) {
    const clear = joinedExtent(reach, travelBox(component));
    return {
      side: own,
      shapes: sideText(word, clear, { style: scene.style, side: own }),
      ticks: [],
    };
  }
  const angle = stopAngle(component, position);
  if (angle === null) return null;
  const width = lineWidth(scene.style);
  const { tick, figure } = stopMarks(component, angle, { word, width, style: scene.style });
  // With a scale of its own the ticks are there already.
  const ticks = component.common.scale === null ? [tick] : [];
  return { side: null, shapes: figure, ticks };
};

/** By the name that the part's own record has for it: the first is thrown along the lever's line, the last the other way. */
const leverSide = ({ part, turn }: PlacedComponent, position: string): Side | null => {
  const { lever } = part;
  const index = lever?.positions.indexOf(position) ?? -1;
  if (lever === null || index < 0) return null;
  const isLast = index === lever.positions.length - 1;
  const across = index > 0 && !isLast ? QUARTER : 0;
  const clock = lever.line - turn + (isLast && index > 0 ? 2 * QUARTER : across);
  const quarters = Math.round(clock / QUARTER);
  return ROUND[((quarters % ROUND.length) + ROUND.length) % ROUND.length] ?? null;
};

const QUARTER = 90;
const ROUND: readonly Side[] = ["above", "right", "below", "left"];

/** Its words stand where the thrown lever does not come. */
const travelBox = ({ part, fitted, at, turn }: PlacedComponent): Extent => {
  const travel = leverTravel(part, fitted);
  const [along, half] = [travel?.reach ?? 0, (travel?.width ?? 0) / 2];
  const toward = clockDirection(degrees((travel?.line ?? 0) - turn));
  const [dx, dy] = [Math.abs(toward.x), Math.abs(toward.y)];
  const x = Math.max(along * dx, half);
  const y = Math.max(along * dy, half);
  return extent(at.x - x, at.y - y, at.x + x, at.y + y);
};

const unknownPosition = (
  component: PlacedComponent,
  position: string,
  positions: PositionsDesign,
): Finding => {
  const stops = component.part.turning?.positions ?? null;
  const own = component.part.lever?.positions ?? [];
  const names = [...new Set([...own, ...POSITION_SIDES.keys()])];
  const has = `${names.join(", ")}${stops === null ? "" : ` and 1 to ${stops}`}`;
  return finding(UNKNOWN_POSITION, {
    message: `${component.id}: ${component.part.id} has no position "${position}". It takes words at ${has}.`,
    span: spanOf(positions.written, position),
    subjects: [component.id],
  });
};
