// What stands between the eye and a legend: a line of sight to the middle of each letter. A legend whose letters are half
// hidden or more from the same eye is hidden. The bodies themselves are asked, not their boxes.

import { extentCentre } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { pointOut } from "../../geometry/space/frame.ts";
import { boxGap, boxRound, type SpaceBox } from "../../geometry/space/space-box.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import type { PlacedPanel, PosedOperator } from "../../layout/console/console-layout.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import { metOnWay } from "../met-on-way.ts";
import { lettersOf } from "./letters.ts";

/** The nearest body that hides a marking of the panel from either eye; null where none does. */
export const hiddenBehind = (
  panel: PlacedPanel,
  eye: PosedOperator["eye"],
  bodies: readonly ConsoleBody[],
): ((marking: PlacedMarking) => ConsoleBody | null) => {
  const between = bodies.filter(
    (body) => mayHide(body, panel) && boxGap(body.box, roomBetween(panel, eye)) === 0,
  );
  const eyes = eye.small === eye.large ? [eye.small] : [eye.small, eye.large];
  return (marking) => {
    const others = between.filter((body) => !isItsOwn(body, marking, panel));
    const spots = spotsOf(marking, panel);
    for (const one of eyes) {
      const hider = hiderOf(spots, one, others);
      if (hider !== null) return hider;
    }
    return null;
  };
};

/** A panel's own sheets and what is printed behind them are judged on the panel; rails and cables lie behind. */
const mayHide = (body: ConsoleBody, panel: PlacedPanel): boolean => {
  if (body.role === "rail" || body.role === "cable" || body.role === "latch") return false;
  return body.panel !== panel.name || (body.role !== "layer" && body.role !== "print");
};

/**
 * The word on a lamp or a key is on it, and not behind it. A legend's own lever or knob, which moves, stands before it in one
 * position and not in another: what hides it for good is looked for behind that.
 */
const isItsOwn = (body: ConsoleBody, marking: PlacedMarking, panel: PlacedPanel): boolean =>
  (marking.side === "on" || body.role === "sweep") &&
  body.panel === panel.name &&
  body.thing === marking.owner;

const roomBetween = (panel: PlacedPanel, eye: PosedOperator["eye"]): SpaceBox => {
  const { minX, minY, maxX, maxY } = panel.layout.nominal;
  const corners = [
    vector(minX, minY, 0),
    vector(maxX, minY, 0),
    vector(minX, maxY, 0),
    vector(maxX, maxY, 0),
  ];
  return boxRound([
    eye.small,
    eye.large,
    ...corners.map((corner) => pointOut(panel.frame, corner)),
  ]);
};

/** Where the lines of sight begin: the middles of its letters. */
const spotsOf = (marking: PlacedMarking, panel: PlacedPanel): readonly Vector[] => {
  const z = panel.layout.layers.find(({ id }) => id === marking.layer)?.front ?? 0;
  return lettersOf(marking).map((letter) => {
    const { x, y } = extentCentre(letter);
    return pointOut(panel.frame, vector(x, y, z));
  });
};

const NO_ROOM: Mm = mm(0);

const hiderOf = (
  spots: readonly Vector[],
  eye: Vector,
  bodies: readonly ConsoleBody[],
): ConsoleBody | null => {
  const met = spots.flatMap(
    (from) => metOnWay({ from, to: eye, radius: NO_ROOM }, bodies)[0] ?? [],
  );
  if (met.length === 0 || 2 * met.length < spots.length) return null;
  return met.reduce((near, one) => (one.along < near.along ? one : near)).body;
};
