// What is said about fixings that the house rule set: where they are, so that nobody takes them for the builder's own,
// and where one was wanted and there was no room.

import type { FixingsDesign } from "../design/panel-design.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { Point } from "../geometry/contour.ts";
import { decimal } from "../geometry/number.ts";
import { FIXING_PLACES, FIXING_ROOM } from "./codes.ts";
import type { SetFixings } from "./fixings.ts";

export const fixingFindings = (design: FixingsDesign, set: SetFixings): readonly Finding[] => [
  ...noRoom(design, set),
  ...chosenPlaces(design, set),
];

const noRoom = (design: FixingsDesign, { unset }: SetFixings): readonly Finding[] => {
  if (unset.length === 0) return [];
  const wanted = unset.map(({ kind, near }) => `a ${kind} near ${written(near)}`);
  return [
    finding(FIXING_ROOM, {
      message: `There is no free spot within reach for ${wanted.join(", ")} mm. Make room there, or give the places with at: and dowels-at:.`,
      span: design.written.span,
      subjects: ["fixings"],
    }),
  ];
};

const chosenPlaces = (design: FixingsDesign, { fixings }: SetFixings): readonly Finding[] => {
  const chosen = fixings.filter(
    ({ kind }) => (kind === "screw" ? design.at : design.dowelsAt) === null,
  );
  if (chosen.length === 0) return [];
  const places = chosen.map(({ id, at }) => `${id} ${written(at)}`);
  return [
    finding(FIXING_PLACES, {
      message: `No places are given for the fixings; they were set at ${places.join(", ")} mm.`,
      span: design.written.span,
    }),
  ];
};

const written = (at: Point): string => `(${decimal(at.x, 3)}, ${decimal(at.y, 3)})`;
