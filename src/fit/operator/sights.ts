// Each legend as the eye sees it: true distance, obliquity, and the angle that its capitals fill, their height foreshortened
// by the sine of the angle between the letters' own up and the line of sight.

import { extentCentre } from "../../geometry/extent.ts";
import type { Degrees, Mm } from "../../geometry/quantity.ts";
import { degrees, mm } from "../../geometry/quantity.ts";
import { directionOut, type Frame, pointOut } from "../../geometry/space/frame.ts";
import {
  dot,
  minus,
  unitVector,
  type Vector,
  vector,
  vectorLength,
} from "../../geometry/space/vector.ts";
import { arcCosine, direction, toDegrees } from "../../geometry/trigonometry.ts";
import type { PlacedPanel, PosedOperator } from "../../layout/console/console-layout.ts";
import { legendOf } from "../../layout/legend-of.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import { arcMinutes } from "../../standards/characters.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { SightFact } from "../fit-facts.ts";
import { hiddenBehind } from "./hidden.ts";
import { wordsBox } from "./letters.ts";

export const sightFacts = (
  operator: PosedOperator,
  panels: readonly PlacedPanel[],
  bodies: readonly ConsoleBody[],
): readonly SightFact[] =>
  panels.flatMap((panel) => {
    const hiding = hiddenBehind(panel, operator.eye, bodies);
    return panel.layout.markings.filter(isLettered).map((marking) => ({
      ...legendSight(marking, panel, operator),
      hiddenBy: hiding(marking),
    }));
  });

/** What of a sight is told by places alone. */
export type LegendSight = Omit<SightFact, "hiddenBy">;

export const legendSights = (
  operator: PosedOperator,
  panels: readonly PlacedPanel[],
): readonly LegendSight[] =>
  panels.flatMap((panel) =>
    panel.layout.markings
      .filter(isLettered)
      .map((marking) => legendSight(marking, panel, operator)),
  );

const legendSight = (
  marking: Lettered,
  panel: PlacedPanel,
  operator: PosedOperator,
): LegendSight => {
  const owner = panel.layout.components.find(({ id }) => id === marking.owner);
  const alert = legendOf(marking, panel.layout)?.alert ?? "none";
  return {
    panel: panel.name,
    marking: marking.id,
    owner: marking.owner,
    isImportant: owner?.common.important ?? false,
    isAlerting: alert !== "none",
    capHeight: marking.capHeight,
    ...smallerSeen(marking, panel, operator.eye),
    span: marking.span,
  };
};

type Lettered = PlacedMarking & {
  readonly capHeight: NonNullable<PlacedMarking["capHeight"]>;
};

const isLettered = (marking: PlacedMarking): marking is Lettered =>
  marking.capHeight !== null && marking.fills.length + marking.strokes.length > 0;

type Seen = Pick<SightFact, "distance" | "obliquity" | "arcMinutes" | "eye">;

const smallerSeen = (marking: Lettered, panel: PlacedPanel, eye: PosedOperator["eye"]): Seen => {
  const { x, y } = extentCentre(wordsBox(marking));
  const z = panel.layout.layers.find(({ id }) => id === marking.layer)?.front ?? 0;
  const at = pointOut(panel.frame, vector(x, y, z));
  const letter = { at, up: lettersUp(marking, panel), normal: panel.frame.z };
  const small = seenFrom(eye.small, letter, marking.capHeight);
  const large = seenFrom(eye.large, letter, marking.capHeight);
  return large.arcMinutes < small.arcMinutes
    ? { ...large, eye: "large" }
    : { ...small, eye: "small" };
};

/** Up on the panel, unless the legend is turned. */
const lettersUp = (marking: PlacedMarking, { layout, frame }: PlacedPanel): Vector => {
  const up = direction(degrees((legendOf(marking, layout)?.turn ?? 0) + 90));
  return directionOut(frame, vector(up.x, up.y, 0));
};

interface Letter {
  readonly at: Vector;
  /** Unit vectors. */
  readonly up: Vector;
  readonly normal: Frame["z"];
}

/** A capital seen from an eye that is somewhere else: a closed form. */
export const seenFrom = (
  eye: Vector,
  { at, up, normal }: Letter,
  capHeight: Mm,
): Omit<Seen, "eye"> => {
  const toEye = minus(eye, at);
  const distance = mm(vectorLength(toEye));
  const sight = unitVector(toEye);
  const along = dot(up, sight);
  const foreshortened = mm(capHeight * Math.sqrt(Math.max(0, 1 - along * along)));
  return {
    distance,
    obliquity: angleBetween(sight, normal),
    arcMinutes: arcMinutes(foreshortened, distance),
  };
};

const angleBetween = (a: Vector, b: Vector): Degrees =>
  toDegrees(arcCosine(Math.max(-1, Math.min(1, dot(a, b)))));
