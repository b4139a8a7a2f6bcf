// What is round the panels: the envelope, its ribs and walls, and obstacles, as solids at their places.

import type {
  EnvelopeDesign,
  ObstacleDesign,
  ObstacleShape,
  RibDesign,
} from "../../design/console-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding, type Span } from "../../diagnostics/finding.ts";
import { intersection } from "../../geometry/boolean.ts";
import { type Contour, circle, type Point, point, type Region } from "../../geometry/contour.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { contourArea, contourExtent, reversedContour } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import { polygon, rectangle } from "../../geometry/shapes.ts";
import { loopFaults } from "../../geometry/simple.ts";
import type { Mesh } from "../../geometry/solid/mesh.ts";
import { layered, prism, type Solid, solidLayer, solidRegion } from "../../geometry/solid/solid.ts";
import { type Frame, turnedFrame, WORLD } from "../../geometry/space/frame.ts";
import { vector } from "../../geometry/space/vector.ts";
import { BAD_OUTLINE, RIB_OUTSIDE } from "./codes-of-console.ts";
import type { EnvelopeLayout, ObstacleLayout } from "./console-layout.ts";

export interface Surroundings {
  readonly envelope: EnvelopeLayout | null;
  readonly obstacles: readonly ObstacleLayout[];
  readonly findings: readonly Finding[];
}

export interface SurroundingsDesign {
  readonly envelope: EnvelopeDesign | null;
  readonly obstacles: readonly ObstacleDesign[];
  /** Meshes of the files that obstacles name, by path as written. What is not there has its finding from whoever read it. */
  readonly meshes: ReadonlyMap<string, Mesh>;
}

export const surroundingsOf = (design: SurroundingsDesign): Surroundings => {
  const findings: Finding[] = [];
  const inside = design.envelope === null ? null : insideOf(design.envelope, findings);
  const stood = (
    obstacles: readonly ObstacleDesign[],
    role: ObstacleLayout["role"],
  ): readonly ObstacleLayout[] =>
    obstacles.flatMap((obstacle) => obstacleOf(obstacle, { role, ...design, findings }));
  return {
    envelope: inside?.envelope ?? null,
    obstacles: [
      ...(inside?.ribs ?? []),
      ...stood(design.envelope?.walls ?? [], "wall"),
      ...stood(design.obstacles, "obstacle"),
    ],
    findings,
  };
};

interface Inside {
  readonly envelope: EnvelopeLayout;
  readonly ribs: readonly ObstacleLayout[];
}

/** The profile is drawn with x up and y forward, so that z runs to the left. */
const insideOf = (design: EnvelopeDesign, findings: Finding[]): Inside | null => {
  const { profile, across, ribs, written } = design;
  const span = spanOf(written, "profile");
  const corners = profile.map(([forward, up]) => point(up, forward));
  const outline = outlineOf(corners, {
    what: "The profile of the envelope",
    written: ({ x, y }) => [y, x],
    span,
    findings,
  });
  if (outline === null) return null;
  const [right, left] = across;
  const frame: Frame = {
    x: vector(0, 0, 1),
    y: vector(1, 0, 0),
    z: vector(0, 1, 0),
    origin: vector(0, right, 0),
  };
  const whole: Region = { outline, holes: [] };
  const across0 = left - right;
  return {
    envelope: { solid: prism(0, across0, solidRegion(whole)), frame, span: written.span },
    ribs: ribs.flatMap((rib) => ribOf(rib, { whole, across: across0, frame, findings })),
  };
};

const ribOf = (
  rib: RibDesign,
  inside: {
    readonly whole: Region;
    readonly across: number;
    readonly frame: Frame;
    readonly findings: Finding[];
  },
): readonly ObstacleLayout[] => {
  const { whole, across, frame, findings } = inside;
  const box = contourExtent(whole.outline);
  const top = rib.upTo ?? box.maxX;
  const slab = rectangle(extent(box.minX, rib.at, top, rib.at + rib.thickness));
  const regions = top <= box.minX ? [] : intersection([whole], [{ outline: slab, holes: [] }]);
  if (regions.length === 0) {
    findings.push(ribOutside(rib, box));
    return [];
  }
  const solid = layered([
    solidLayer(
      0,
      across,
      regions.map((region) => solidRegion(region)),
    ),
  ]);
  const { name, written } = rib;
  return [{ name, role: "rib", shape: { kind: "recipe", solid }, frame, span: written.span }];
};

/** `box`: of the profile, x up and y forward. */
const ribOutside = ({ name, at, thickness, upTo, written }: RibDesign, box: Extent): Finding => {
  const nothing = `Nothing of the rib ${name} stands in the console`;
  const isBelow = upTo !== null && upTo <= box.minX;
  const message = isBelow
    ? `${nothing}: it ends at ${millimetres(upTo)}, and the profile goes from ${millimetres(box.minX)} to ${millimetres(box.maxX)} up. up-to: ${millimetres(box.maxX)} is the most.`
    : `${nothing}: it goes from ${millimetres(at)} to ${millimetres(at + thickness)} forward, and the profile from ${millimetres(box.minY)} to ${millimetres(box.maxY)}. ${placeInside({ at, thickness }, box)}`;
  const span = spanOf(written, isBelow ? "up-to" : "at");
  return finding(RIB_OUTSIDE, { message, span, subjects: [name] });
};

const placeInside = (rib: Pick<RibDesign, "at" | "thickness">, box: Extent): string =>
  rib.at < box.minY
    ? `at: ${millimetres(box.minY)} is the first place for it.`
    : `at: ${millimetres(box.maxY - rib.thickness)} is the last place for it.`;

const millimetres = (value: number): string => `${decimal(value, 3)} mm`;

const obstacleOf = (
  design: ObstacleDesign,
  context: {
    readonly role: ObstacleLayout["role"];
    readonly meshes: ReadonlyMap<string, Mesh>;
    readonly findings: Finding[];
  },
): readonly ObstacleLayout[] => {
  const { name, at, turn, written } = design;
  const shape = shapeOf(design.shape, { ...context, name, span: written.span });
  if (shape === null) return [];
  const origin = vector(...at);
  const frame = turnedFrame({ ...WORLD, origin }, { about: WORLD.z, through: origin, by: turn });
  return [{ name, role: context.role, shape, frame, span: written.span }];
};

const shapeOf = (
  shape: ObstacleShape,
  context: {
    readonly meshes: ReadonlyMap<string, Mesh>;
    readonly findings: Finding[];
    readonly name: string;
    readonly span: Span;
  },
): ObstacleLayout["shape"] | null => {
  switch (shape.kind) {
    case "box": {
      const [forward, left, up] = shape.size;
      const base = rectangle(extent(-forward / 2, -left / 2, forward / 2, left / 2));
      return standing(base, up);
    }
    case "cylinder":
      return standing(circle(point(0, 0), shape.diameter / 2), shape.height);
    case "prism": {
      const corners = shape.corners.map(([forward, left]) => point(forward, left));
      const { findings, span } = context;
      const what = `The prism of ${context.name}`;
      const base = outlineOf(corners, { what, written: ({ x, y }) => [x, y], span, findings });
      return base === null ? null : standing(base, shape.height);
    }
    case "mesh": {
      const mesh = context.meshes.get(shape.file);
      return mesh === undefined ? null : { kind: "mesh", mesh };
    }
  }
};

const standing = (
  base: Contour,
  height: number,
): { readonly kind: "recipe"; readonly solid: Solid } => ({
  kind: "recipe",
  solid: prism(0, height, solidRegion({ outline: base, holes: [] })),
});

/** Counter-clockwise, whichever way it was written; null with a finding where it encloses nothing. */
const outlineOf = (
  corners: readonly Point[],
  context: {
    readonly what: string;
    /** A corner's two numbers in the order of the text. */
    readonly written: (corner: Point) => readonly [number, number];
    readonly span: Span;
    readonly findings: Finding[];
  },
): Contour | null => {
  const outline = polygon(corners);
  const [fault] = loopFaults(outline);
  if (fault === undefined) return contourArea(outline) < 0 ? reversedContour(outline) : outline;
  const place = context
    .written(fault.at)
    .map((value) => decimal(value, 3))
    .join(", ");
  context.findings.push(
    finding(BAD_OUTLINE, {
      message: `${context.what} does not go round a surface: ${fault.why} at ${place}. Write its corners one after the other.`,
      span: context.span,
    }),
  );
  return null;
};
