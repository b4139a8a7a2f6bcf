// A blanking panel for free modules: a panel with nothing on it. As a sheet it is laid out and cut like any panel; as a
// print it is a plate with a stiffening frame behind, where the mount leaves room for one.

import type { Mount } from "../../catalogue/mount.ts";
import type { BlankingUse } from "../../design/console-design.ts";
import type { PanelDesign } from "../../design/panel-design.ts";
import type { StockDesign } from "../../design/workshop-design.ts";
import type { Size } from "../../design/written.ts";
import { difference } from "../../geometry/boolean.ts";
import { type Contour, circle } from "../../geometry/contour.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { layered } from "../../geometry/solid/solid.ts";
import type { CutOut, PanelLayout } from "../../layout/panel-layout.ts";
import { bareFacts, wallFact } from "./bare-facts.ts";
import { plainRegion } from "./grown-regions.ts";
import { type OpaqueWall, opaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { allowedHole } from "./print-allowance.ts";
import { type PrintedContext, printerFor, printStock } from "./printed-context.ts";
import type { PrintedParts } from "./printed-part.ts";
import { noPrintedStock } from "./printed-stock.ts";
import { layerOf } from "./region-sums.ts";
import { bedFindings, singlePart } from "./single-part.ts";
import { spacerOutline } from "./spacer-outline.ts";

export interface BlankingRequest {
  readonly use: BlankingUse;
  /** Its name among the panels; the use's own `as` where it has one. */
  readonly name: string;
  readonly mount: Mount;
  readonly sheet: string;
  readonly workshop: string | null;
  readonly file: string;
}

/** The panel that `layoutPanel` and `sheetPartsOf` make a blanking sheet of. */
export const blankingDesign = (request: BlankingRequest): PanelDesign => {
  const { use, mount, file } = request;
  const length: Size = use.length;
  const counts = mount.counts;
  return {
    kind: "panel",
    written: use.written,
    file,
    name: use.as ?? request.name,
    title: "Blanking panel",
    revision: "A",
    dated: null,
    workshop: request.workshop,
    catalogue: [],
    mount: mount.id,
    width: counts === "width" ? length : null,
    height:
      counts === "height" ? length : { kind: "length", mm: mount.fixedHeight ?? mm(0), unit: "mm" },
    viewingDistance: mm(700),
    stack: [
      {
        kind: "sheet",
        id: "blank",
        sheet: request.sheet,
        finish: null,
        workedFrom: "front",
        windows: "none",
        windowMargin: mm(0),
        written: use.written,
      },
    ],
    fixings: null,
    components: [],
    spares: [],
    markings: [],
    lettering: { font: "overpass-semibold", height: mm(3.5), gap: mm(2) },
    depth: null,
    box: null,
    photo: null,
    note: null,
    unread: [],
  };
};

/** A plate that a quarter-turn stud can clamp: common practice. */
const PLATE = 3;
/** Frame behind it, against warping: common practice. */
const FRAME = 6;

/** The same panel printed, front face down. `layout` is the blanking sheet's. */
export const printedBlanking = (
  layout: PanelLayout,
  /** `stock`: what it is printed of; null: what the workshop prints with. */
  context: PrintedContext & { readonly stock: StockDesign | null },
): PrintedParts => {
  const stock = context.stock ?? printStock(layout, context);
  const [sheet] = layout.layers;
  if (stock === null || sheet === undefined)
    return { parts: [], findings: [noPrintedStock(layout.name, layout.design.written.span)] };
  const printer = printerFor("blanking", context);
  const wall = opaqueWall(stock, printer);
  const thickness = tidy(wholeSteps(PLATE, wall.layer) * wall.layer);
  const rear = tidy(-thickness);
  const holes = sheet.cutOuts.map((cutOut) => printedHole(cutOut, { printer }));
  const plate = difference([plainRegion(layout.outline)], holes);
  const frame = frameOf(layout, wall);
  const deep = frame.length === 0 ? rear : tidy(rear - wholeSteps(FRAME, wall.layer) * wall.layer);
  const part = singlePart({
    id: `${layout.name}-blank`,
    panel: layout.name,
    title: layout.design.title,
    revision: layout.design.revision,
    role: "blanking",
    owner: layout.name,
    stock,
    printer,
    solid: layered([
      ...(frame.length === 0 ? [] : [layerOf(deep, rear, { regions: frame, loops: "exact" })]),
      layerOf(rear, 0, { regions: plate, loops: "clear" }),
    ]),
    bedSide: "front",
    facts: {
      ...bareFacts(
        { plan: contourExtent(layout.outline), rear: deep, front: 0 },
        {
          walls:
            frame.length === 0
              ? []
              : [wallFact("skirt", [layout.name], { thickness: wall.thickness, wall })],
        },
      ),
      floor: {
        thickness,
        layers: wholeSteps(PLATE, wall.layer),
        layer: wall.layer,
        opaqueFrom: wall.opaqueFrom,
      },
    },
    span: layout.design.written.span,
  });
  return { parts: [part], findings: bedFindings(part) };
};

const frameOf = (layout: PanelLayout, wall: OpaqueWall): ReturnType<typeof difference> => {
  const outline = spacerOutline(layout);
  if (outline === null) return [];
  const inner = insetRegions([plainRegion(outline)], wall.thickness).map(
    (region) => region.outline,
  );
  return inner.length === 0 ? [] : difference([plainRegion(outline)], inner);
};

/** Round holes get the printer's allowance; others are cut as the mount has them. */
const printedHole = (
  { contour, purpose }: CutOut,
  { printer }: { readonly printer: Parameters<typeof allowedHole>[2] },
): Contour =>
  contour.kind === "circle"
    ? circle(contour.centre, allowedHole(2 * contour.radius, purpose, printer).modelled / 2)
    : contour;
