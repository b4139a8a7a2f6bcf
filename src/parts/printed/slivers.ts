// What no printer makes of a part: areas of a layer that stand alone and are nowhere as wide as one printed line, as a pocket that
// breaks through an edge leaves them. They are left out of the part's layers, and told.

import { type Finding, finding } from "../../diagnostics/finding.ts";
import type { Region } from "../../geometry/contour.ts";
import { extentCentre } from "../../geometry/extent.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { contourExtent, contourLength, regionArea } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import {
  type Solid,
  type SolidLayer,
  type SolidRegion,
  solidLayer,
} from "../../geometry/solid/solid.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import { SLIVER_LEFT_OUT } from "./codes.ts";
import { tidy, USUAL_LINE } from "./opaque-wall.ts";
import type { PrintedBody, PrintedPart, PrintedParts } from "./printed-part.ts";

/** The part without its slivers, and one finding for all of them. */
export const withoutSlivers = (part: PrintedPart): PrintedParts => {
  const line = part.printer?.line ?? USUAL_LINE;
  const whole = part.bodies.map((body) => sweptBody(body, line));
  const isCut = part.pieces.some(({ bodies }) => bodies !== part.bodies);
  const pieces = isCut
    ? part.pieces.map(({ bodies }) => bodies.map((body) => sweptBody(body, line)))
    : [whole];
  const slivers = pieces.flat().flatMap((body) => body.slivers);
  if (slivers.length === 0 && whole.every((body) => body.slivers.length === 0))
    return { parts: [part], findings: [] };
  const bodies = whole.map(({ body }) => body);
  const swept: PrintedPart = {
    ...part,
    bodies,
    pieces: part.pieces.map((piece, index) => ({
      ...piece,
      bodies: isCut ? pieces[index]!.map(({ body }) => body) : bodies,
    })),
  };
  return { parts: [swept], findings: slivers.length === 0 ? [] : [leftOut(part, slivers, line)] };
};

interface Sliver {
  readonly region: Region;
  readonly from: number;
  readonly to: number;
}

interface SweptBody {
  readonly body: PrintedBody;
  readonly slivers: readonly Sliver[];
}

/** Solids of other kinds are made of plain shapes: no pocket cuts them. */
const sweptBody = (body: PrintedBody, line: number): SweptBody => {
  const { solid } = body;
  if (solid.kind !== "layered") return { body, slivers: [] };
  const layers = solid.layers.map((layer) => sweptLayer(layer, line));
  const slivers = layers.flatMap((layer) => layer.slivers);
  const swept: Solid = { ...solid, layers: layers.map(({ layer }) => layer) };
  return slivers.length === 0 ? { body, slivers } : { body: { ...body, solid: swept }, slivers };
};

/** An area that is alone in its layer stays: without it what lies above would hang in the air. */
const sweptLayer = (
  layer: SolidLayer,
  line: number,
): { readonly layer: SolidLayer; readonly slivers: readonly Sliver[] } => {
  const { from, to, regions } = layer;
  const kept = regions.filter((region) => !isSliver(plainOf(region), line));
  if (kept.length === regions.length || kept.length === 0) return { layer, slivers: [] };
  const slivers = regions
    .filter((region) => !kept.includes(region))
    .map((region) => ({ region: plainOf(region), from, to }));
  return { layer: solidLayer(from, to, kept), slivers };
};

const plainOf = ({ outline, holes }: SolidRegion): Region => ({
  outline: outline.contour,
  holes: holes.map(({ contour }) => contour),
});

/** No circle as wide as a line finds room in it. */
const isSliver = (region: Region, line: number): boolean =>
  !isSurelyWider(region, line) && insetRegions([region], line / 2).length === 0;

/**
 * The largest circle in an area without holes has a radius of at least area over length of the boundary: drawn in step by
 * step, the boundary grows no longer and sweeps the whole area. Saves drawing in nearly every area.
 */
const isSurelyWider = (region: Region, line: number): boolean =>
  region.holes.length === 0 && regionArea(region) > (line / 2) * contourLength(region.outline);

const leftOut = (part: PrintedPart, slivers: readonly Sliver[], line: number): Finding => {
  const wide = slivers.map((sliver) => ({ sliver, width: widthOf(sliver.region, line) }));
  const { sliver, width } = wide.reduce((most, one) => (one.width > most.width ? one : most));
  const at = extentCentre(contourExtent(sliver.region.outline));
  const volume = slivers.reduce(
    (sum, { region, from, to }) => sum + regionArea(region) * (to - from),
    0,
  );
  const place = `${decimal(at.x, 2)}, ${decimal(at.y, 2)}`;
  const whose = part.printer === null ? USUAL : part.printer.id;
  return finding(SLIVER_LEFT_OUT, {
    message: `${part.owner}: what stands in it leaves a sliver at ${place} that is nowhere wider than ${decimal(width, 3)} mm, and one line of ${whose} is ${decimal(line, 2)} mm. Nothing narrower is printed: it is left out of the part, ${decimal(roundedUp(volume, VOLUME_STEP), 4)} mm³ of it in all.`,
    span: part.span,
    subjects: [part.owner],
    measured: { value: width, unit: "mm" },
    limit: { value: line, unit: "mm" },
    source:
      part.printer === null
        ? { kind: "practice", name: `one line of ${USUAL}` }
        : { kind: "machine", name: part.printer.id },
  });
};

const USUAL = "a 0.4 mm nozzle";

/** Steps that a width is found to, and a volume is said in: mm and mm³. Both are said as the step above. */
const WIDTH_STEP = 0.001;
const VOLUME_STEP = 0.0001;

/** Of the largest circle that finds room, up to the next step; less than a line. */
const widthOf = (region: Region, line: number): number => {
  let [low, high] = [0, line];
  while (high - low > WIDTH_STEP / 2) {
    const middle = (low + high) / 2;
    if (insetRegions([region], middle / 2).length === 0) high = middle;
    else low = middle;
  }
  return roundedUp(high, WIDTH_STEP);
};

const roundedUp = (value: number, step: number): number =>
  tidy(Math.ceil(value / step - arithmeticNoise) * step);
