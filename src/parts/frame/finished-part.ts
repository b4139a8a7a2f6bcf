// A piece becomes a part of the frame: numbered, drawn from its own lower left corner, with its grain, and as a sheet part in
// one set-up, good face up, so that cut files and their inspection take it as any other.

import type { MachineDesign, StockDesign } from "../../design/workshop-design.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { extentCentre, extentHeight, extentWidth, grownExtent } from "../../geometry/extent.ts";
import { contourArea, contourExtent, reversedContour } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { pointOut } from "../../geometry/space/frame.ts";
import { vector } from "../../geometry/space/vector.ts";
import { type Placement, placedContour, placedPoint, placement } from "../../geometry/transform.ts";
import { cutWidthOf } from "../../layout/markings/style.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { kerfSetting } from "../kerf.ts";
import type { Operation, SheetPart } from "../sheet-part.ts";
import { CUTTING_SERVICE } from "../sheet-parts.ts";
import { witness } from "../witness.ts";
import type { FramePart } from "./frame-part.ts";
import { SHEET_MARGIN } from "./frame-practice.ts";
import type { Piece } from "./piece.ts";
import type { UnitName } from "./unit-names.ts";

export interface Making {
  readonly console: string;
  readonly title: string;
  readonly revision: string;
  readonly stock: StockDesign;
  readonly thickness: number;
  /** null: a cutting service. */
  readonly machine: MachineDesign | null;
  readonly lettering: Lettering;
  readonly unit: UnitName;
}

export const finishedPart = (piece: Piece, number: number, making: Making): FramePart => {
  const box = contourExtent(piece.outline);
  const at = placement(-box.minX, -box.minY);
  const holes = piece.holes.map(({ feature, contour }) => ({
    feature,
    contour: clockwise(placedContour(contour, at)),
  }));
  const region: Region = {
    outline: placedContour(piece.outline, at),
    holes: holes.map(({ contour }) => contour),
  };
  const grained = making.stock.material === "plywood";
  const long = extentWidth(box) >= extentHeight(box) ? "x" : "y";
  return {
    kind: "frame-part",
    id: piece.id,
    number,
    role: piece.role,
    title: titleOf(piece, making),
    unit: making.unit.number,
    section: piece.section,
    stock: making.stock,
    thickness: mm(making.thickness),
    region,
    grain: grained ? long : null,
    frame: { ...piece.frame, origin: pointOut(piece.frame, vector(box.minX, box.minY, 0)) },
    holes,
    sheetPart: sheetPart(piece, { making, region, holes, number, at }),
  };
};

/** A rib or a rail is of a bay, and no two units have one of the same name. */
const titleOf = ({ title, role }: Piece, { unit }: Making): string =>
  role === "rib" || role === "rail-bar" ? title : `${title}${unit.ofBoard}`;

const clockwise = (contour: Contour): Contour =>
  contour.kind === "loop" && contourArea(contour) > 0 ? reversedContour(contour) : contour;

interface Drawn {
  readonly making: Making;
  readonly region: Region;
  readonly holes: FramePart["holes"];
  readonly number: number;
  readonly at: Placement;
}

const sheetPart = (piece: Piece, drawn: Drawn): SheetPart => {
  const { making, region, number } = drawn;
  const machine = making.machine ?? CUTTING_SERVICE;
  const outline = contourExtent(region.outline);
  const id = `${making.console}-${piece.id}`;
  const labels = [`${id} REV ${making.revision}`, `${number}`];
  const mark = witness(
    { faceUp: "front", labels, width: cutWidthOf(machine) },
    outline,
    making.lettering,
  );
  return {
    kind: "sheet-part",
    id,
    panel: making.console,
    layer: piece.id,
    title: `${making.title}, ${number} ${titleOf(piece, making)}`,
    revision: making.revision,
    stock: making.stock,
    thickness: mm(making.thickness),
    setUps: [
      {
        id: "1-cut",
        machine,
        faceUp: "front",
        instructions: ["Good face up.", "Datum: lower left corner of the outline's box."],
        operations: [...(mark === null ? [] : [mark]), ...cuts(drawn, machine)],
        sheet: grownExtent(outline, SHEET_MARGIN),
        kerf: kerfSetting(machine, making.stock),
      },
    ],
    handOperations: piece.handOperations.map((operation) => ({
      ...operation,
      at: operation.at === null ? null : placedPoint(operation.at, drawn.at),
    })),
  };
};

/** Small holes first, the outline last: a piece that is loose moves. */
const cuts = ({ region, holes }: Drawn, machine: MachineDesign): readonly Operation[] => {
  const inner = holes
    .map(({ feature, contour }) => ({ feature, contour, area: Math.abs(contourArea(contour)) }))
    .sort((a, b) => a.area - b.area || (a.feature < b.feature ? -1 : 1))
    .map(
      ({ feature, contour }): Operation => ({
        kind: "cut",
        process:
          machine.kind === "drill-bench" && contour.kind === "circle" ? "drill" : "cut-inner",
        feature,
        centre: centreOf(contour),
        contour: contour.kind === "loop" ? reversedContour(contour) : contour,
      }),
    );
  return [
    ...inner,
    {
      kind: "cut",
      process: "cut-outer",
      feature: "outline",
      centre: centreOf(region.outline),
      contour: region.outline,
    },
  ];
};

const centreOf = (contour: Contour): ReturnType<typeof extentCentre> =>
  contour.kind === "circle" ? contour.centre : extentCentre(contourExtent(contour));
