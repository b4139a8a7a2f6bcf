// The trims of a panel's displays, and the filters that lie in them. A trim is one printed piece, front on the bed.

import type { Finding } from "../../diagnostics/finding.ts";
import type { Contour } from "../../geometry/contour.ts";
import { type Extent, extent, leastInset } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { type Placement, placedContour, placedPoint, placement } from "../../geometry/transform.ts";
import type { PanelLayout, PlacedComponent } from "../../layout/panel-layout.ts";
import { thicknessOf } from "../../layout/stack.ts";
import type { SheetPart } from "../sheet-part.ts";
import { bareFacts, solidBox, wallFact } from "./bare-facts.ts";
import { fittedSheet } from "./fitted-sheet.ts";
import { fittedPrint, fittedStock } from "./fitted-stock.ts";
import { tidy } from "./opaque-wall.ts";
import { type PrintedContext, type PrintedMaker, printerFor } from "./printed-context.ts";
import type { BossFact } from "./printed-facts.ts";
import { bedFindings, singlePart } from "./single-part.ts";
import type { TrimFact, TrimPart } from "./trim-facts.ts";
import { trimFindings } from "./trim-findings.ts";
import { type TrimScene, type TrimSizes, trimSizes } from "./trim-sizes.ts";
import { type TrimShape, trimShape } from "./trim-solid.ts";

export interface Trims {
  readonly parts: readonly TrimPart[];
  /** The filters, to be cut. */
  readonly sheets: readonly SheetPart[];
  readonly findings: readonly Finding[];
}

export const trimsOf: PrintedMaker = (layout, context) => trimsWithFilters(layout, context);

export const trimsWithFilters = (layout: PanelLayout, context: PrintedContext): Trims => {
  const made = layout.components
    .filter(({ common }) => common.trim !== null)
    .map((component) => trimOf(component, layout, context));
  return {
    parts: made.flatMap(({ parts }) => parts),
    sheets: made.flatMap(({ sheets }) => sheets),
    findings: made.flatMap(({ findings }) => findings),
  };
};

const NO_TRIM: Trims = { parts: [], sheets: [], findings: [] };

const trimOf = (
  component: PlacedComponent,
  layout: PanelLayout,
  context: PrintedContext,
): Trims => {
  const design = component.common.trim;
  if (design === null) return NO_TRIM;
  const asked = { written: design.written, owner: component.id };
  const print = fittedPrint(design.print, { ...asked, key: "print" }, { layout, context });
  const filter =
    design.filter === null
      ? null
      : fittedStock(design.filter, { ...asked, key: "filter" }, context);
  const missing = [print, filter].flatMap((found) =>
    found?.kind === "missing" ? [found.finding] : [],
  );
  if (print.kind === "missing" || filter?.kind === "missing")
    return { ...NO_TRIM, findings: missing };
  const printer = printerFor("trim", context);
  const sheet = filter?.stock ?? null;
  const thickness =
    sheet === null
      ? null
      : thicknessOf(sheet, context.catalogue.materials.get(sheet.material) ?? null);
  const scene = { layout, component, design, stock: print.stock, printer, filter: thickness };
  const sizes = trimSizes(scene);
  const findings = trimFindings(scene, sizes);
  if (findings.some(({ severity }) => severity === "fault")) return { ...NO_TRIM, findings };
  const at = placement(component.at.x, component.at.y, component.turn);
  const shape = trimShape(sizes, at);
  const part = trimPart(scene, sizes, shape);
  const sheets =
    sheet === null || shape.filter === null
      ? []
      : [
          fittedSheet(
            {
              id: `${layout.name}-${component.id}-filter`,
              title: `${layout.design.title}, filter of ${component.id}`,
              stock: sheet,
              pieces: [{ feature: `${component.id}/filter`, contour: shape.filter }],
            },
            layout,
            context,
          ),
        ];
  return { parts: [part], sheets, findings: [...findings, ...bedFindings(part)] };
};

const trimPart = (scene: TrimScene, sizes: TrimSizes, shape: TrimShape): TrimPart => {
  const { layout, component, design, stock, printer } = scene;
  const at = placement(component.at.x, component.at.y, component.turn);
  const { wall } = sizes;
  const facts = bareFacts(solidBox(shape.solid), {
    walls: [
      wallFact("box", [component.id], { thickness: tidy(sizes.wallLines * wall.line), wall }),
    ],
    bosses: screwFacts(scene, sizes),
  });
  const part = singlePart({
    id: `${layout.name}-${component.id}-trim`,
    panel: layout.name,
    title: `${layout.design.title}, trim of ${component.id}`,
    revision: layout.design.revision,
    role: "trim",
    owner: component.id,
    stock,
    printer,
    solid: shape.solid,
    bedSide: "front",
    facts,
    span: design.written.span,
  });
  return { ...part, role: "trim", trim: trimFact(scene, sizes, { ...shape, at }) };
};

const screwFacts = ({ component }: TrimScene, sizes: TrimSizes): readonly BossFact[] => {
  const { screw, heights, plan } = sizes;
  if (screw === null) return [];
  const at = placement(component.at.x, component.at.y, component.turn);
  return plan.screws.map((place) => {
    const wall = Math.min(
      place.x < plan.seat.minX ? sizes.room.minX - place.x : place.x - sizes.room.maxX,
      place.x < plan.seat.minX ? place.x - sizes.body.minX : sizes.body.maxX - place.x,
    );
    return {
      owner: component.id,
      at: placedPoint(place, at),
      kind: "thread-forming",
      thread: "m2",
      hole: screw,
      outside: mm(2 * wall),
      wall: tidy(wall - screw.modelled / 2),
      depth: tidy(heights.holes - heights.rear),
      below: tidy(heights.front - heights.holes),
      insert: null,
    };
  });
};

const trimFact = (
  { component, design }: TrimScene,
  sizes: TrimSizes,
  { inner, body, room, filter, at }: TrimShape & { readonly at: Placement },
): TrimFact => {
  const { plan, heights } = sizes;
  const leak = sizes.isGlassBehind ? plan.window : plan.display;
  return {
    owner: component.id,
    lip: {
      asked: design.lip,
      toRead: toRead(component, plan.display),
      inner,
      leak: leakContour(leak, at),
      overlap: tidy(leastInset(leak, sizes.inner)),
      play: sizes.play,
      isGlassBehind: sizes.isGlassBehind,
      thickness: tidy(heights.front - heights.lip),
    },
    fit: {
      fixing: design.fixing,
      opening: placedContour(plan.opening, at),
      body,
      fit: sizes.fit,
      clearance: sizes.clearance,
      flangeOverlap: tidy(leastInset(plan.flangeBox, plan.openingBox)),
      screws: plan.screws.map((screw) => placedPoint(screw, at)),
      screwDepth: sizes.screw === null ? null : tidy(heights.holes - heights.rear),
    },
    seat:
      heights.lip > heights.rear
        ? {
            filter: design.filter,
            room,
            sheet: filter,
            clearance: sizes.filterClearance,
            ledge: tidy(leastInset(sizes.filter ?? sizes.room, sizes.inner)),
            depth: tidy(heights.lip - heights.rear),
          }
        : null,
  };
};

const toRead = ({ part }: PlacedComponent, display: Extent): Mm | null => {
  if (part.display === null) return null;
  const { width, height, at } = part.display.active;
  const read = extent(at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2);
  return tidy(leastInset(display, read));
};

const leakContour = (box: Extent, at: Placement): Contour => placedContour(rectangle(box), at);
