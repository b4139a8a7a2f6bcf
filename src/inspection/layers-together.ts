// The files of one panel laid on each other, each turned over as its own words say and set on its dowels: what belongs to
// one component must lie on one axis through every layer, and all files must be of one revision.

import { type Point, point } from "../geometry/contour.ts";
import { closedGap, registerAllowance } from "./allowance.ts";
import { shiftOfBox } from "./beside.ts";
import { between } from "./edge.ts";
import { type ExpectedFeature, statedKerf } from "./expectation.ts";
import { lineBeside } from "./kerf-opinion.ts";
import type { MatchedLine } from "./matching.ts";
import { type InspectionRow, length, roundedDifference } from "./row.ts";
import type { UnderstoodFile } from "./written-file.ts";

export const layersTogether = (files: readonly UnderstoodFile[]): readonly InspectionRow[] => {
  const panels = Array.from(new Set(files.map(({ part }) => part.panel))).toSorted();
  return panels.flatMap((panel) => {
    const own = files.filter(({ part }) => part.panel === panel);
    const layers = onDowels(own.map(layerOf));
    return [
      ...layers.map((layer) => registerRow(layer, layers)),
      ...own.map((file) => revisionRow(file, own)),
    ];
  });
};

interface Layer {
  readonly file: string;
  /** Part and set-up: the same sheet in another format is not another witness. */
  readonly sheet: string;
  /** Axes by what they belong to. */
  readonly axes: ReadonlyMap<string, Point>;
  readonly roundDowel: Point | null;
}

const layerOf = (file: UnderstoodFile): Layer => {
  const { reading, setUp, part } = file;
  const axes = new Map<string, Point>();
  let roundDowel: Point | null = null;
  for (const [index, feature] of reading.features.entries()) {
    const matched = reading.matching.byFeature[index] ?? [];
    const axis = feature.kind === "cut" ? axisOf(feature, matched, statedKerf(setUp)) : null;
    const belongs = belongsTo(feature.feature);
    if (axis === null || belongs === null) continue;
    const place = turnedAsSaid(axis, file);
    axes.set(belongs.owner, place);
    if (belongs.isDowel && feature.isRound) roundDowel ??= place;
  }
  return { file: file.file, sheet: `${part.id} ${setUp.id}`, axes, roundDowel };
};

const axisOf = (
  feature: ExpectedFeature,
  matched: readonly MatchedLine[],
  kerf: number,
): Point | null => {
  const only = matched[0];
  if (only === undefined || matched.length > 1 || only.line.gap > closedGap) return null;
  const { line, expected } = only;
  const target = lineBeside(expected.edges, expected.box, (expected.side * kerf) / 2);
  const shift = shiftOfBox(line.box, target.box);
  return point(feature.centre.x + shift.x, feature.centre.y + shift.y);
};

/** Laid down as the file's own words say, whatever its lines turned out to be. */
const turnedAsSaid = (axis: Point, { read, reading, setUp }: UnderstoodFile): Point => {
  const saysRear = (read.statements.faceUp ?? setUp.faceUp) === "rear";
  if (saysRear === reading.lie.lie.mirrored) return axis;
  return point(setUp.sheet.minX + setUp.sheet.maxX - axis.x, axis.y);
};

/** What one layer opens for the axis of a component; screws, tabs and windows beside it have axes of their own. */
const ON_THE_AXIS: readonly string[] = [
  "clamp",
  "front-clearance",
  "rear-clearance",
  "fixing",
  "dowel",
  "mount",
];

/** `brake/clamp@backing` belongs to `brake`, `meter/screw.2@face` to `meter/screw.2`; the outline to nobody. */
const belongsTo = (
  feature: string,
): { readonly owner: string; readonly isDowel: boolean } | null => {
  const found = /^(.+)\/([^/@]+)(?:@[^@]*)?$/.exec(feature);
  const [owner, purpose] = [found?.[1], found?.[2]];
  if (owner === undefined || purpose === undefined) return null;
  const isOnAxis = ON_THE_AXIS.includes(purpose);
  return { owner: isOnAxis ? owner : `${owner}/${purpose}`, isDowel: purpose === "dowel" };
};

/** Every layer moved so that its round dowel hole lies on that of the first layer that has one. */
const onDowels = (layers: readonly Layer[]): readonly Layer[] => {
  const datum = layers.find(({ roundDowel }) => roundDowel !== null)?.roundDowel ?? null;
  return layers.map((layer) => {
    if (datum === null || layer.roundDowel === null) return layer;
    const x = datum.x - layer.roundDowel.x;
    const y = datum.y - layer.roundDowel.y;
    const axes = Array.from(
      layer.axes,
      ([owner, at]) => [owner, point(at.x + x, at.y + y)] as const,
    );
    return { ...layer, axes: new Map(axes) };
  });
};

/** A layer agrees where another layer has the same axis; of three, the odd one out is the one that is named. */
const registerRow = (layer: Layer, layers: readonly Layer[]): InspectionRow => {
  const others = layers.filter(({ sheet }) => sheet !== layer.sheet);
  let worst: { readonly owner: string; readonly apart: number } | null = null;
  for (const [owner, axis] of layer.axes) {
    const apart = others
      .flatMap(({ axes }) => axes.get(owner) ?? [])
      .reduce((least, other) => Math.min(least, between(axis, other)), Number.POSITIVE_INFINITY);
    if (apart === Number.POSITIVE_INFINITY) continue;
    if (worst === null || apart > worst.apart) worst = { owner, apart };
  }
  return {
    file: layer.file,
    feature: "layers",
    what: "register",
    expected: `axes within ${length(registerAllowance)} of the other layers`,
    measured:
      worst === null ? "shares no axis" : `${length(worst.apart)} at most, at ${worst.owner}`,
    difference: worst === null ? null : roundedDifference(worst.apart),
    passed: worst === null || worst.apart <= registerAllowance,
  };
};

const revisionRow = (file: UnderstoodFile, files: readonly UnderstoodFile[]): InspectionRow => {
  const expected = commonRevision(files);
  const measured = file.read.statements.revision ?? "not said";
  return {
    file: file.file,
    feature: "layers",
    what: "revision",
    expected,
    measured,
    difference: null,
    passed: measured === expected,
  };
};

/** The revision that most sheets carry; of two that are carried equally often, the later. */
const commonRevision = (files: readonly UnderstoodFile[]): string => {
  const counts = new Map<string, number>();
  for (const { read } of files) {
    const revision = read.statements.revision ?? "not said";
    counts.set(revision, (counts.get(revision) ?? 0) + 1);
  }
  let common = { revision: "", count: 0 };
  for (const revision of Array.from(counts.keys()).toSorted()) {
    const count = counts.get(revision) ?? 0;
    if (count >= common.count) common = { revision, count };
  }
  return common.revision;
};
