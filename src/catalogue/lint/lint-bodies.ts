// The bodies of a part: real, on the right side of the seat, and able to go through the hole from the side that the
// part is fitted from.

import { containsContour } from "../../geometry/containment.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { Body, BodyRole, Part } from "../part.ts";
import { shapeContour } from "../shape-contour.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function bodyFaults(part: Part): readonly LintFault[] {
  const lowest = Math.min(...part.bodies.map((body) => body.from));
  return [
    ...part.bodies.flatMap((body, index) =>
      unless(body.from < body.to, `bodies.${index}`, "its lower end is not below its upper end"),
    ),
    ...unless(lowest < 0, "bodies", "nothing of it lies behind the seat"),
    ...seatFaults(part),
    ...enteringFaults(part),
    ...leverFaults(part),
    ...unless(
      part.latch === null || part.bodies.some(({ role, to }) => role === "plug" && to <= 0),
      "latch",
      "a latch without a plug behind",
    ),
  ];
}

/** Something bears on the layer: a flange in front, a shoulder behind, too large for the hole. */
function seatFaults(part: Part): readonly LintFault[] {
  if (part.hold.kind === "behind") return [];
  const bearing =
    part.hold.seat === "front"
      ? part.bodies.filter((body) => body.role === "flange" && body.from === 0)
      : part.bodies.filter((body) => SHOULDERS.includes(body.role) && body.to === 0);
  const hole = contourExtent(shapeContour(part.openings.clamp));
  const isStopped = bearing.some((body) => {
    const box = contourExtent(shapeContour(body.shape));
    return (
      box.maxX - box.minX > hole.maxX - hole.minX || box.maxY - box.minY > hole.maxY - hole.minY
    );
  });
  return unless(
    isStopped,
    "bodies",
    part.hold.seat === "front"
      ? "no flange on the seat is larger than the hole"
      : "no shoulder on the seat is larger than the hole",
  );
}

const SHOULDERS: readonly BodyRole[] = ["case", "flange", "board", "glass"];

/** What comes through the hole when the part is fitted; plug, cable, wires and needle are put on afterwards. */
function enteringFaults(part: Part): readonly LintFault[] {
  const hole = shapeContour(part.openings.clamp);
  return part.bodies.flatMap((body, index) =>
    unless(
      !hasToEnter(part, body) ||
        containsContour(
          hole,
          placedContour(shapeContour(body.shape), placement(body.at.x, body.at.y)),
        ),
      `bodies.${index}`,
      `the ${body.role} does not go through the hole`,
    ),
  );
}

const FROM_FRONT: readonly BodyRole[] = ["bush", "case", "tails"];
const FROM_BEHIND: readonly BodyRole[] = ["bush", "shaft", "lever", "button", "lens"];

const hasToEnter = (part: Part, body: Body): boolean =>
  part.hold.seat === "front"
    ? part.hold.kind === "bush" && body.to <= 0 && FROM_FRONT.includes(body.role)
    : body.to > 0 && FROM_BEHIND.includes(body.role);

function leverFaults(part: Part): readonly LintFault[] {
  const foot = part.hold.kind === "bush" && part.hold.seat === "behind" ? part.hold.length : 0;
  return [
    ...unless(
      part.lever === null || part.lever.length > foot,
      "lever.length",
      "it ends in its bush",
    ),
    ...unless(
      part.shaft === null || part.shaft.length > foot,
      "shaft.length",
      "it ends in its bush",
    ),
  ];
}
