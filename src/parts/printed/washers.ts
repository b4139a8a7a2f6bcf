// Light-tight washers: under a nut, filling the opening that the next sheet has round it, with a rim that lines that opening
// where nut and spanner leave room for one. For components that ask for it.

import type { Nut } from "../../catalogue/hardware.ts";
import type { StockDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { difference } from "../../geometry/boolean.ts";
import { containsContour } from "../../geometry/containment.ts";
import { type Contour, circle } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { layered } from "../../geometry/solid/solid.ts";
import type { LayerLayout, PanelLayout, PlacedComponent } from "../../layout/panel-layout.ts";
import { bareFacts, wallFact } from "./bare-facts.ts";
import { NO_WASHER_ROOM } from "./codes.ts";
import { plainRegion } from "./grown-regions.ts";
import { opaqueWall, tidy } from "./opaque-wall.ts";
import { allowedHole, clearancesOf } from "./print-allowance.ts";
import {
  type PrintedContext,
  type PrintedMaker,
  printerFor,
  printStock,
} from "./printed-context.ts";
import type { PrintedPart, PrintedParts } from "./printed-part.ts";
import { noPrintedStock } from "./printed-stock.ts";
import { layerOf } from "./region-sums.ts";
import { singlePart } from "./single-part.ts";

export const washersOf: PrintedMaker = (layout, context): PrintedParts => {
  const parts: PrintedPart[] = [];
  const findings: Finding[] = [];
  const stock = printStock(layout, context);
  for (const component of layout.components) {
    if (!component.common.lightTight) continue;
    if (stock === null) {
      const span = spanOf(component.written, "washer");
      findings.push(noPrintedStock(`the washer of ${component.id}`, span));
      continue;
    }
    const seat = washerSeat(component, layout, context);
    const washer = seat === null ? null : washerOf({ component, layout, context, stock }, seat);
    if (washer === null) findings.push(noWasher(component));
    else parts.push(washer);
  }
  return { parts, findings };
};

/** Where a washer lies, and what it closes. */
interface WasherSeat {
  readonly opening: Contour;
  /** z of the face that it lies on, and of the far face of the sheet that it lines. */
  readonly face: number;
  readonly rim: number;
  readonly bush: number;
  readonly nut: Nut;
}

/** On the nut's side of what is clamped, inside the next sheet's opening. */
const washerSeat = (
  component: PlacedComponent,
  layout: PanelLayout,
  { catalogue }: PrintedContext,
): WasherSeat | null => {
  const { hold } = component.part;
  if (hold.kind !== "bush") return null;
  const nut = catalogue.hardware.get(hold.nut);
  if (nut?.kind !== "nut") return null;
  const isInFront = hold.seat === "behind";
  const { first, last } = component.clamped;
  const clamped = layout.layers[isInFront ? first : last];
  const next = layout.layers[isInFront ? first - 1 : last + 1];
  const opening = next === undefined ? null : openingIn(next, component);
  if (clamped === undefined || next === undefined || opening === null) return null;
  return {
    opening,
    face: isInFront ? clamped.front : clamped.rear,
    rim: isInFront ? next.front : next.rear,
    bush: hold.diameter,
    nut,
  };
};

const openingIn = (layer: LayerLayout, component: PlacedComponent): Contour | null =>
  layer.cutOuts.find(
    ({ owner, purpose }) =>
      owner === component.id && (purpose === "front-clearance" || purpose === "rear-clearance"),
  )?.contour ?? null;

interface WasherScene {
  readonly component: PlacedComponent;
  readonly layout: PanelLayout;
  readonly context: PrintedContext;
  readonly stock: StockDesign;
}

const washerOf = (scene: WasherScene, seat: WasherSeat): PrintedPart | null => {
  const { component, layout, context, stock } = scene;
  const printer = printerFor("washer", context);
  const wall = opaqueWall(stock, printer);
  const fit = clearancesOf(printer);
  const hole = allowedHole(seat.bush + 2 * fit.sliding, "sliding fit on the bush", printer);
  const bore = circle(component.at, hole.modelled / 2);
  const [filled] = insetRegions([plainRegion(seat.opening)], fit.sliding);
  if (filled === undefined || !leavesRing(filled.outline, bore, 2 * wall.line)) return null;
  const toward = seat.rim > seat.face ? 1 : -1;
  const plate = tidy(seat.face + toward * wall.floor);
  const discLayer = layerBetween(seat.face, plate, difference([filled], [bore]));
  const reach = toward * (seat.rim - plate);
  const inner = insetRegions([filled], wall.thickness)[0]?.outline ?? null;
  const nut = circle(component.at, seat.nut.acrossCorners / 2 + fit.loose);
  const hasRim = inner !== null && reach > 0 && containsContour(inner, nut);
  const rimLayer = hasRim
    ? [layerBetween(plate, tidy(seat.rim), difference([filled], [inner]))]
    : [];
  const layers = toward > 0 ? [discLayer, ...rimLayer] : [...rimLayer, discLayer];
  const ends = [seat.face, hasRim ? seat.rim : plate];
  const box = {
    plan: contourExtent(filled.outline),
    rear: Math.min(...ends),
    front: Math.max(...ends),
  };
  const walls = hasRim
    ? [wallFact("collar", [component.id], { thickness: wall.thickness, wall })]
    : [];
  return singlePart({
    id: `${layout.name}-${component.id}-washer`,
    panel: layout.name,
    title: `${layout.design.title}, light-tight washer of ${component.id}`,
    revision: layout.design.revision,
    role: "washer",
    owner: component.id,
    stock,
    printer,
    solid: layered(layers),
    bedSide: toward > 0 ? "rear" : "front",
    facts: {
      ...bareFacts(box, { walls }),
      floor: {
        thickness: wall.floor,
        layers: wall.floorLayers,
        layer: wall.layer,
        opaqueFrom: wall.opaqueFrom,
      },
    },
    span: spanOf(component.written, "washer"),
  });
};

const layerBetween = (
  a: number,
  b: number,
  regions: Parameters<typeof layerOf>[2]["regions"],
): ReturnType<typeof layerOf> =>
  layerOf(Math.min(a, b), Math.max(a, b), { regions, loops: "clear" });

const leavesRing = (outline: Contour, bore: Contour, least: number): boolean =>
  containsContour(outline, bore) && contourDistance(outline, bore).gap >= least;

const noWasher = (component: PlacedComponent): Finding =>
  finding(NO_WASHER_ROOM, {
    message: `${component.id} asks for a light-tight washer, and there is nothing that it would close: no sheet beside the clamped one has an opening round its nut with room for a ring of two printed lines. Leave washer: out.`,
    span: spanOf(component.written, "washer"),
    subjects: [component.id],
  });
