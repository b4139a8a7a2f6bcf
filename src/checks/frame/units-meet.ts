// Units of a frame that want the same room: rows of bays side by side, facing or at an angle, with their cheeks.

import { replaceValue } from "../../design/edit.ts";
import { source } from "../../design/source.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { point } from "../../geometry/contour.ts";
import { decimal } from "../../geometry/number.ts";
import { dot, vector } from "../../geometry/space/vector.ts";
import { tenths, upToTenth } from "../../geometry/tenths.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { convexMeet } from "../../parts/frame/convex.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import {
  floorOf,
  type UnitOverlap,
  type UnitWay,
  unitOverlaps,
} from "../../parts/frame/unit-overlaps.ts";
import type { UnitPlan } from "../../parts/frame/unit-plan.ts";
import { measureMm, millimetres } from "../words.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-units",
  severity: "fault",
  title: "units of a frame that want the same room",
  why: "Bays that do not stand one behind another have cheeks of their own, and these stand outside the rails: a sheet on each side, and beyond the bays at both ends. Where they would meet, move the bays of one unit along the floor. Side by side, cheek to cheek is near enough.",
  example:
    "bays:\n  left: { mount: console-rail, at: [0, 100, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }\n  right: { mount: console-rail, at: [0, -100, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }\nframe: { type: side-console, sheet: birch-ply-12 }",
};

export const unitsMeet: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) =>
    unitOverlaps(plan.units).map((overlap) => meeting(overlap, plan.units, texts)),
};

const meeting = (
  overlap: UnitOverlap,
  units: readonly UnitPlan[],
  texts: PlanFacts["texts"],
): Finding => {
  const { first, second, ways } = overlap;
  const { by } = ways[0]!;
  const move = freeMove(overlap, units);
  const bays = baysOf(second);
  return finding(entry, {
    message: `${second.name.words} and ${first.name.words} want the same room of the floor, their cheeks included: ${millimetres(by, 0)} of it, and 0 mm can be shared. ${move === null ? `They stand free ${millimetres(by, 0)} farther apart; the others would have to make room.` : moveWords(move)}`,
    span: spanOf(bays[0]!.layout.design.written, "at"),
    related: [
      { what: first.name.words, span: spanOf(baysOf(first)[0]!.layout.design.written, "at") },
    ],
    subjects: [...baysOf(first), ...bays].map(({ id }) => id),
    measured: measureMm(by),
    limit: measureMm(0),
    source: { kind: "geometry", name: "the cheeks of the other unit" },
    remedies: move === null ? [] : [moveRemedy(move, texts)],
  });
};

const baysOf = ({ sections }: UnitPlan): readonly FrameBay[] =>
  sections.flatMap(({ bays }) => bays);

interface Move extends UnitWay {
  readonly unit: UnitPlan;
}

/** The shortest that leads into no other unit; the one that is written later goes where both could. */
const freeMove = (
  { first, second, ways }: UnitOverlap,
  units: readonly UnitPlan[],
): Move | null => {
  const moves = ways.flatMap(({ toward, by }): readonly Move[] => [
    rounded({ unit: second, toward, by }),
    rounded({ unit: first, toward: point(-toward.x, -toward.y), by }),
  ]);
  return moves.find((move) => isFree(move, units)) ?? null;
};

/** Cheeks stand at whole tenths across their unit. What goes askew to that may come to stand a tenth wider on both sides. */
const rounded = ({ unit, toward, by }: Move): Move => {
  const { forward } = unit.profile;
  const along = Math.abs(dot(forward, vector(toward.x, toward.y, 0)));
  const isSquare = Math.min(along, 1 - along) < samePlace;
  const isPlain = Math.min(Math.abs(toward.x), Math.abs(toward.y)) < samePlace;
  const round = upToTenth(by);
  return { unit, toward, by: isSquare && isPlain ? round : round + tenths(2) };
};

const isFree = ({ unit, toward, by }: Move, units: readonly UnitPlan[]): boolean => {
  const moved = floorOf(unit).map((corners) =>
    corners.map(({ x, y }) => point(x + toward.x * by, y + toward.y * by)),
  );
  return units.every(
    (other) =>
      other === unit ||
      floorOf(other).every((floor) => moved.every((corners) => !convexMeet(corners, floor))),
  );
};

const moveWords = (move: Move): string =>
  `Move ${baysOf(move.unit)
    .map((bay) => `${bay.id} to at: ${placeAfter(bay, move)}`)
    .join(", ")}.`;

const moveRemedy = (move: Move, texts: PlanFacts["texts"]): Remedy => {
  const bays = baysOf(move.unit);
  const edits = bays.flatMap((bay) => {
    const span = spanOf(bay.layout.design.written, "at");
    const text = texts.get(span.file);
    return text === undefined
      ? []
      : [replaceValue(source(span.file, text), span, placeAfter(bay, move))];
  });
  return {
    title: bays.map((bay) => `at: ${placeAfter(bay, move)} (${bay.id})`).join(", "),
    edits,
  };
};

const placeAfter = ({ layout }: FrameBay, { toward, by }: Move): string => {
  const [x, y, z] = layout.design.at;
  const places = [x + toward.x * by, y + toward.y * by, z].map((value) => decimal(value, 3));
  return `[${places.join(", ")}]`;
};
