// The printed parts of a panel in section, each body as its recipe is where the cut passes: pockets, collars, channels, rims and
// bosses. What belongs to the stack is cut in steps, a component's own trim, box or washer with its component.

import { intersection, unionRegions } from "../geometry/boolean.ts";
import type { Contour, Region } from "../geometry/contour.ts";
import { extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { degrees } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { recipeExtent } from "../geometry/solid/recipe-extent.ts";
import { planeAcrossX, solidSection } from "../geometry/solid/solid-section.ts";
import { placedRegion, placement } from "../geometry/transform.ts";
import type { PrintedBody, PrintedPart, PrintedRole } from "../parts/printed/printed-part.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { type Hatch, regionHatch } from "./hatch.ts";
import { areas, HAIR, outlined, stroked, THIN } from "./items.ts";
import { beyondRegions } from "./section-beyond.ts";
import type { SectionPlane } from "./section-planes.ts";
import { type SectionStep, sectionSteps } from "./section-steps.ts";

export interface PrintedCut {
  readonly part: PrintedPart;
  readonly bodies: readonly {
    readonly body: PrintedBody;
    /** On the sheet: z runs to the left from `zero`, y up. */
    readonly regions: readonly Region[];
    /** What is seen of it beyond the cut, in outline. */
    readonly beyond: readonly Region[];
  }[];
}

/** Of the parts that this view shows, those that the cut meets. */
export const printedCuts = (
  parts: readonly PrintedPart[],
  plane: SectionPlane,
  zero: number,
): readonly PrintedCut[] =>
  parts.flatMap((part) => {
    const steps = stepsThrough(part, plane);
    const bodies = part.bodies.flatMap((body) => {
      const regions = steppedSection(body, steps).map((region) => onSheet(region, zero));
      const x = steps[0]?.x ?? plane.x;
      const beyond = beyondRegions(body.solid, x).map((region) => onSheet(region, zero));
      return regions.length === 0 ? [] : [{ body, regions, beyond }];
    });
    return bodies.length === 0 ? [] : [{ part, bodies }];
  });

/** Below all that is cut: the thin lines of what stands behind it. */
export const beyondItems = (cuts: readonly PrintedCut[]): readonly DrawingItem[] => {
  const contours = cuts.flatMap(({ bodies }) =>
    bodies.flatMap(({ beyond }) => beyond.flatMap(({ outline, holes }) => [outline, ...holes])),
  );
  return contours.length === 0 ? [] : [outlined(contours, { ink: "printed", width: HAIR })];
};

/** True where a part comes with a component: it is in front of what the component is drawn with. */
export const isOfComponent = ({ part }: PrintedCut): boolean => !OF_THE_STACK.includes(part.role);

/** How far any of them stands in front of the panel. */
export const printedProud = (parts: readonly PrintedPart[], plane: SectionPlane): number =>
  Math.max(
    0,
    ...parts
      .filter((part) => stepsThrough(part, plane).length > 0)
      .flatMap(({ bodies }) => bodies.map(({ solid }) => recipeExtent(solid).maxZ)),
  );

export const printedItems = ({ bodies }: PrintedCut): readonly DrawingItem[] =>
  bodies.flatMap(({ body, regions }) => {
    const look = LOOKS[body.colour] ?? OTHER_LOOK;
    return [
      areas(regions, look.ink),
      stroked(
        regions.flatMap((region) => regionHatch(region, look.hatch)),
        { ink: look.hatching, width: HAIR },
      ),
      outlined(
        regions.flatMap(({ outline, holes }) => [outline, ...holes]),
        { ink: "line", width: THIN },
      ),
    ];
  });

export const cutOutlines = ({ bodies }: PrintedCut): readonly Contour[] =>
  bodies.flatMap(({ regions }) => regions.map(({ outline }) => outline));

/** Made in place of the panel, or to measure a printer by: no part of the panel. */
const ELSEWHERE: readonly PrintedRole[] = ["blanking", "test-piece"];

const stepsThrough = (part: PrintedPart, plane: SectionPlane): readonly SectionStep[] => {
  if (ELSEWHERE.includes(part.role)) return [];
  const own = plane.components.find(({ id }) => id === part.owner);
  if (own !== undefined) return [{ x: own.at.x, low: -Infinity, high: Infinity }];
  const isOfPattern = plane.components.some(({ entry }) => entry === part.owner);
  return isOfPattern || OF_THE_STACK.includes(part.role) ? sectionSteps(plane) : [];
};

const OF_THE_STACK: readonly PrintedRole[] = ["spacer", "liner", "tray", "angled-box"];

const steppedSection = (
  { solid }: PrintedBody,
  steps: readonly SectionStep[],
): readonly Region[] => {
  const cuts = steps.map((step) => {
    const whole = solidSection(solid, planeAcrossX(step.x));
    return steps.length === 1 ? whole : intersection(whole, bandOf(step, whole));
  });
  return cuts.length === 1 ? cuts.flat() : unionRegions(cuts.flat());
};

/** In the section x is the panel's y. Nothing where the part does not reach the step. */
const bandOf = ({ low, high }: SectionStep, regions: readonly Region[]): readonly Region[] => {
  const boxes = regions.map(({ outline }) => contourExtent(outline));
  const [first, ...others] = boxes;
  if (first === undefined) return [];
  const whole = grownExtent(others.reduce(joinedExtent, first), 1);
  const from = Math.max(low, whole.minX);
  const to = Math.min(high, whole.maxX);
  if (to <= from) return [];
  return [{ outline: rectangle(extent(from, whole.minY, to, whole.maxY)), holes: [] }];
};

const QUARTER_TURN = degrees(90);

/** Along and up become up and to the left. */
const onSheet = (region: Region, zero: number): Region =>
  placedRegion(region, placement(zero, 0, QUARTER_TURN));

interface PrintLook {
  readonly ink: Ink;
  readonly hatching: Ink;
  readonly hatch: Hatch;
}

/** Walls are a few lines thick: the hatch is fine, crossed, and light on black plastic. */
const FINE: Hatch = { pitch: 0.7, lean: "crossed" };

const LOOKS: Readonly<Record<string, PrintLook>> = {
  black: { ink: "opaque", hatching: "faint", hatch: FINE },
  white: { ink: "paper", hatching: "line", hatch: FINE },
};

const OTHER_LOOK: PrintLook = { ink: "printed", hatching: "line", hatch: FINE };
