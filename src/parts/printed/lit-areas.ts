// The areas that a spacer lights: what rim, collars, bosses, joints and the walls between circuits leave of it, each with
// its lanes and its cable's way out.

import type { LightingDesign, LitAreaDesign } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { containsPoint } from "../../geometry/containment.ts";
import type { Region } from "../../geometry/contour.ts";
import { type Extent, extentCentre, grownExtent, joinedExtent } from "../../geometry/extent.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { type CablePassage, cablePassages } from "./cable-passage.ts";
import { NO_CABLE_WAY, NO_LANE, UNKNOWN_AREA } from "./codes.ts";
import { openedRegions, plainRegion } from "./grown-regions.ts";
import type { LampSource } from "./lamp-source.ts";
import { subtracted } from "./region-sums.ts";
import { type Lane, lanesOf } from "./strip-lanes.ts";

export interface LitArea {
  readonly circuit: string;
  /** Free of everything, the passage's block too. */
  readonly region: Region;
  readonly lanes: readonly Lane[];
  /** null where there is no lane, or no room. */
  readonly passage: CablePassage | null;
}

/** Slits narrower than this are filled: no light comes out of them, and a nozzle can't keep them open (common practice). */
export const LEAST_CHAMBER = 2;

export interface CircuitArea {
  readonly circuit: string;
  readonly owners: readonly string[];
  readonly box: Extent;
  readonly wall: Region;
}

export interface LightScene {
  readonly layout: PanelLayout;
  readonly lighting: LightingDesign;
  readonly source: LampSource;
  readonly wall: Mm;
  /** From the LEDs to what they light. */
  readonly distance: number;
  /** What lines the walls: nothing may stand in it. */
  readonly lining: number;
}

/** Areas on circuits of their own, each with a wall round the box of what stands in it. */
export const circuitAreas = (
  lighting: LightingDesign,
  layout: PanelLayout,
  wall: Mm,
): { readonly areas: readonly CircuitArea[]; readonly findings: readonly Finding[] } => {
  const findings: Finding[] = [];
  const areas = lighting.apart.flatMap((design) => {
    findings.push(...strangers(design, layout));
    const boxes = boxesOf(design, layout);
    if (boxes.length === 0) return [];
    const box = grownExtent(boxes.reduce(joinedExtent), design.gap);
    const outline = rectangle(grownExtent(box, wall));
    const ring = { outline, holes: [rectangle(box)] };
    return [{ circuit: design.circuit, owners: design.around, box, wall: ring }];
  });
  return { areas, findings };
};

const boxesOf = ({ around }: LitAreaDesign, layout: PanelLayout): readonly Extent[] => {
  const members = layout.components.filter(
    ({ id, entry }) => around.includes(id) || around.includes(entry),
  );
  const faces = members.flatMap(({ face }) => face.map(contourExtent));
  const ids = members.map(({ id }) => id);
  const legends = layout.markings.filter(({ owner }) => ids.includes(owner));
  return [...faces, ...legends.map(({ box }) => box)];
};

const strangers = (design: LitAreaDesign, layout: PanelLayout): readonly Finding[] =>
  design.around
    .filter((name) => !layout.lost.includes(name))
    .filter((name) => !layout.components.some(({ id, entry }) => id === name || entry === name))
    .map((name) =>
      finding(UNKNOWN_AREA, {
        message: `The area of circuit ${design.circuit} goes round ${name}, which is not on the panel.`,
        span: spanOf(design.written, "around"),
        subjects: [name],
      }),
    );

/** Lanes and passages in each free area, from left to right. */
export const litAreas = (
  free: readonly Region[],
  areas: readonly CircuitArea[],
  scene: LightScene,
): { readonly lit: readonly LitArea[]; readonly findings: readonly Finding[] } => {
  const laid = free.map((region) => litArea(region, circuitOf(region, areas, scene), scene));
  const isDark = laid.every(({ lanes }) => lanes.length === 0);
  const findings = isDark
    ? [noLane(scene)]
    : laid
        .filter(({ lanes, passage }) => lanes.length > 0 && passage === null)
        .map((area) => noWay(area, scene));
  return { lit: laid, findings };
};

const circuitOf = (
  region: Region,
  areas: readonly CircuitArea[],
  { lighting }: LightScene,
): string => {
  const corner = extentCentre(contourExtent(region.outline));
  const inside = areas.find(
    ({ box }) => containsPoint(rectangle(box), corner) && isWithin(region, box),
  );
  return inside?.circuit ?? lighting.circuit;
};

const isWithin = (region: Region, box: Extent): boolean => {
  const own = contourExtent(region.outline);
  return (
    own.minX >= box.minX && own.maxX <= box.maxX && own.minY >= box.minY && own.maxY <= box.maxY
  );
};

/** The cable's way goes where the lanes leave room; where they leave none it goes first. */
const litArea = (region: Region, circuit: string, scene: LightScene): LitArea => {
  const lanes = lanesIn(region, scene);
  const plain = { circuit, region, lanes, passage: null };
  if (lanes.length === 0) return plain;
  const channels = lanes.map(({ box }) => plainRegion(rectangle(grownExtent(box, LEAST_CHAMBER))));
  const beside = passedArea(plain, subtracted([region], channels), scene);
  if (beside !== null) return beside;
  const first = passedArea(plain, [region], scene);
  if (first === null) return plain;
  const shorter = lanesIn(first.region, scene);
  return shorter.length === 0 ? plain : { ...first, lanes: shorter };
};

const lanesIn = (region: Region, scene: LightScene): readonly Lane[] =>
  insetRegions([region], scene.lining).flatMap((inner) =>
    lanesOf(inner, scene.source, scene.distance),
  );

/** The block may not cut the area in two: its mouth would then serve one half only. */
const passedArea = (
  area: LitArea,
  free: readonly Region[],
  { wall, lining }: LightScene,
): LitArea | null => {
  const candidates = insetRegions(free, lining).flatMap((region) => cablePassages(region, wall));
  for (const passage of candidates.slice(0, MOST_TRIED)) {
    const rest = subtracted([area.region], [plainRegion(passage.block)]);
    if (rest.length !== 1) continue;
    const left = openedRegions(rest, LEAST_CHAMBER);
    const [only] = left;
    if (only !== undefined && left.length === 1) return { ...area, region: only, passage };
  }
  return null;
};

/** Places beyond these differ by millimetres from ones that were tried. */
const MOST_TRIED = 40;

const noLane = ({ lighting, source }: LightScene): Finding =>
  finding(NO_LANE, {
    message: `No lane of the lit spacer takes ${source.id}: one length is ${decimal(source.length, 2)} mm and its joint ${decimal(source.joint, 1)} mm, ${decimal(source.width, 1)} mm wide. Take a strip that is cut at each LED, or LED boards.`,
    span: spanOf(lighting.written, "strip"),
  });

const noWay = (area: LitArea, { lighting }: LightScene): Finding => {
  const { x, y } = extentCentre(contourExtent(area.region.outline));
  return finding(NO_CABLE_WAY, {
    message: `The lit area of circuit ${area.circuit} at ${decimal(x, 1)}, ${decimal(y, 1)} has no room for its cable's way out through the floor. Move a component by a few millimetres, or lead the cable out by hand and seal it.`,
    span: spanOf(lighting.written, "circuit"),
  });
};
