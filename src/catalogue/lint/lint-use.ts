// How a part is used, against itself: turning and stops, knob and pointer, display and window, hand and family.

import { containsContour } from "../../geometry/containment.ts";
import { extent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { Boot } from "../hardware.ts";
import type { DisplayArea, Part, PartFamily, Turning } from "../part.ts";
import type { Catalogue } from "../record.ts";
import { shapeContour, shapeSize } from "../shape-contour.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function useFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  return [
    ...(part.turning === null ? [] : turningFaults(part.turning)),
    ...usualFaults(part, catalogue),
    ...(part.display === null ? [] : displayFaults(part, part.display)),
    ...unless(
      (part.hand === "none") === UNTOUCHED.includes(part.family),
      "hand",
      `a hand and a ${part.family} do not go together so`,
    ),
    ...unless(part.face.length > 0, "face", "nothing of it can be drawn on the face"),
    ...unless(
      new Set(part.contacts.map((contact) => contact.name)).size === part.contacts.length,
      "contacts",
      "two contacts have one name",
    ),
  ];
}

const UNTOUCHED: readonly PartFamily[] = [
  "lamp",
  "display",
  "instrument",
  "servo",
  "connector",
  "fuse-holder",
  "speaker",
];

const FULL_TURN = 360;

function turningFaults({ travel, step, positions }: Turning): readonly LintFault[] {
  if (step === null || positions === null) return [];
  const turned = travel ?? FULL_TURN;
  const gaps = travel === null ? positions : positions - 1;
  return unless(
    gaps * step === turned,
    "turning",
    `${positions} positions of ${step}° do not make ${turned}°`,
  );
}

function usualFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  return part.usual.flatMap((id) => {
    const fitted = catalogue.hardware.get(id);
    if (fitted === undefined) return [{ path: "usual", says: `there is no hardware called ${id}` }];
    if (fitted.kind === "boot") return bootFaults(part, fitted);
    if (fitted.kind !== "knob") return [];
    const { shaft, turning } = part;
    if (shaft === null) return [{ path: "usual", says: "a knob has no shaft to go on" }];
    const pointer = shaft.flatAt === null ? null : (shaft.flatAt + fitted.pointer) % FULL_TURN;
    return [
      ...unless(fitted.bore === shaft.diameter, "usual", `the bore of ${id} is ${fitted.bore}`),
      ...unless(
        pointer === null || turning === null || pointer === turning.first,
        "shaft.flatAt",
        "at the first stop the usual knob does not point at the first position",
      ),
    ];
  });
}

/** It is screwed on instead of the nut, and covers the lever. */
const bootFaults = (
  { hold, lever, openings: { front } }: Part,
  boot: Boot,
): readonly LintFault[] => [
  ...unless(
    hold.kind === "bush" && hold.thread === boot.thread,
    "usual",
    `the thread of ${boot.id} is ${boot.thread}`,
  ),
  ...unless(
    hold.kind !== "bush" || hold.length - boot.thickness >= hold.grip.most,
    "usual",
    `the foot of ${boot.id} leaves too little thread for the grip`,
  ),
  ...unless(
    front === null || shapeSize(front) >= boot.diameter,
    "openings.front",
    `${boot.id} does not go through it`,
  ),
  ...unless(
    lever !== null && (hold.kind !== "bush" || lever.length - hold.grip.least <= boot.height),
    "usual",
    `${boot.id} does not cover the lever`,
  ),
];

function displayFaults(part: Part, { window, active }: DisplayArea): readonly LintFault[] {
  const opening = placedContour(shapeContour(window.shape), placement(window.at.x, window.at.y));
  const lit = rectangle(
    extent(
      active.at.x - active.width / 2,
      active.at.y - active.height / 2,
      active.at.x + active.width / 2,
      active.at.y + active.height / 2,
    ),
  );
  const glass = part.bodies.find((body) => FRONTS.includes(body.role));
  const box = contourExtent(opening);
  const bounds =
    glass === undefined
      ? null
      : contourExtent(placedContour(shapeContour(glass.shape), placement(glass.at.x, glass.at.y)));
  const isInside =
    bounds !== null &&
    box.minX >= bounds.minX &&
    box.maxX <= bounds.maxX &&
    box.minY >= bounds.minY &&
    box.maxY <= bounds.maxY;
  return [
    ...unless(isInside, "display.window", "it shows more than glass or bezel"),
    // Round dials show a square area's corners to nobody.
    ...unless(
      window.shape.kind === "round"
        ? active.width <= window.shape.diameter
        : containsContour(opening, lit),
      "display.active",
      "the window hides part of it",
    ),
  ];
}

const FRONTS: readonly Part["bodies"][number]["role"][] = ["glass", "lens", "flange"];
