// Controller trays: a plate behind the stack on posts at its fixings, with what holds each board, room for every plug, and
// slots for cable ties. The boards' fronts lie where the stack's depth says.

import type { Board } from "../../catalogue/board.ts";
import type { LayerDesign, TrayBoard } from "../../design/panel-design.ts";
import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { nearestNames } from "../../diagnostics/nearest.ts";
import { difference, intersection } from "../../geometry/boolean.ts";
import { containsContour } from "../../geometry/containment.ts";
import { type Contour, point, type Region } from "../../geometry/contour.ts";
import { contoursOverlap } from "../../geometry/distance.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import { mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { placedContour } from "../../geometry/transform.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import { bareFacts } from "./bare-facts.ts";
import { boardHolding } from "./board-holding.ts";
import { latchFact } from "./board-latch.ts";
import {
  onTray,
  outward,
  type PlacedBoard,
  placedBoard,
  plugRoom,
  withoutBoard,
} from "./board-places.ts";
import { type Boss, bossesOf, measuredBoss } from "./bosses.ts";
import { NO_BOARD_ROOM, UNKNOWN_BOARD } from "./codes.ts";
import { plainRegion } from "./grown-regions.ts";
import { type OpaqueWall, opaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { edgeRoom } from "./pocket-edge.ts";
import { bodyPockets, POCKET_CLEARANCE, type Pocket } from "./pockets.ts";
import {
  type PrintedContext,
  type PrintedMaker,
  printerFor,
  printStock,
} from "./printed-context.ts";
import type { BoardFact } from "./printed-facts.ts";
import type { PrintedPart, PrintedParts } from "./printed-part.ts";
import { noPrintedStock } from "./printed-stock.ts";
import { subtracted } from "./region-sums.ts";
import { bedFindings, singlePart } from "./single-part.ts";
import { withoutSlivers } from "./slivers.ts";
import { noRoom } from "./spacer-findings.ts";
import { spacerOutline } from "./spacer-outline.ts";
import { platedSolid, type Upright } from "./upright.ts";

export const traysOf: PrintedMaker = (layout, context): PrintedParts => {
  const stock = printStock(layout, context);
  const made = layout.layers.flatMap((layer) =>
    layer.design.kind === "tray"
      ? [
          stock === null
            ? { parts: [], findings: [noPrintedStock(layer.id, layer.design.written.span)] }
            : trayOf({ layout, layer, design: layer.design, stock, context }),
        ]
      : [],
  );
  return {
    parts: made.flatMap(({ parts }) => parts),
    findings: made.flatMap(({ findings }) => findings),
  };
};

interface TrayScene {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly design: LayerDesign & { readonly kind: "tray" };
  readonly stock: StockDesign;
  readonly context: PrintedContext;
}

/** A plate that carries boards without giving: common practice. */
const PLATE = 2.4;
/** Least air under a board: solder and its wires (common practice). */
const LEAST_STANDOFF = 4;
/** From what stands behind a board's longest lead to the plate, and from a board to the tray's edge: a millimetre of air, common practice. */
const BELOW_LEADS = 1;
const EDGE = 1;

const trayOf = (scene: TrayScene): PrintedParts => {
  const { layout, layer, stock, context } = scene;
  const outline = spacerOutline(layout);
  if (outline === null) return { parts: [], findings: [noRoom(layer, layout)] };
  const printer = printerFor(layer.id, context);
  const wall = opaqueWall(stock, printer);
  const known = boardsOf(scene);
  const top = plateTop(layer, known.boards, wall);
  const rear = tidy(top - wholeSteps(PLATE, wall.layer) * wall.layer);
  const front = tidy(layer.front);
  const base = { layout, layer, context, printer, wall, front, rear };
  const { bosses, findings } = bossesOf(base);
  const rooms = bodyPockets(layout, { front: mm(top), rear, index: layer.index });
  const laid = laidBoards({ ...scene, outline, bosses, rear, boards: known.boards });
  const plan: TrayPlan = {
    ...scene,
    printer,
    wall,
    outline,
    front,
    top,
    rear,
    bosses,
    rooms,
    placed: laid.placed,
  };
  const part = trayPart(plan);
  const swept = withoutSlivers(part);
  return {
    parts: swept.parts,
    findings: [
      ...known.findings,
      ...findings,
      ...laid.findings,
      ...bedFindings(part),
      ...swept.findings,
    ],
  };
};

interface UsedBoard {
  readonly board: Board;
  readonly use: TrayBoard;
}

const boardsOf = ({
  design,
  context,
}: TrayScene): { readonly boards: readonly UsedBoard[]; readonly findings: readonly Finding[] } => {
  const { boards: known } = context.catalogue;
  const boards = design.boards.flatMap((use) => {
    const board = known.get(use.board);
    return board === undefined ? [] : [{ board, use }];
  });
  const findings = design.boards
    .filter(({ board }) => !known.has(board))
    .map(({ board: id, span }) => {
      const nearest = nearestNames(id, [...known.keys()], 3);
      const hint = nearest.length === 0 ? "" : ` Nearest: ${nearest.join(", ")}.`;
      return finding(UNKNOWN_BOARD, {
        message: `There is no board called "${id}".${hint}`,
        span,
        subjects: [design.id],
      });
    });
  return { boards, findings };
};

/** Low enough for the board that needs most: all boards' fronts lie in one plane. */
const plateTop = (layer: LayerLayout, boards: readonly UsedBoard[], wall: OpaqueWall): number => {
  const needs = boards.map(
    ({ board: { thickness, tallestBack } }) =>
      thickness + Math.max(LEAST_STANDOFF, tallestBack + BELOW_LEADS),
  );
  const deep = Math.max(LEAST_STANDOFF, ...needs);
  return tidy(layer.rear - wholeSteps(deep, wall.layer) * wall.layer);
};

interface TrayPlan extends TrayScene {
  readonly printer: PrinterDesign | null;
  readonly wall: OpaqueWall;
  readonly outline: Contour;
  readonly front: number;
  /** z of the plate's two faces. */
  readonly top: number;
  readonly rear: number;
  readonly bosses: readonly Boss[];
  /** What stands through the plate. */
  readonly rooms: readonly Pocket[];
  readonly placed: readonly PlacedBoard[];
}

const laidBoards = (
  scene: TrayScene & {
    readonly outline: Contour;
    readonly bosses: readonly Boss[];
    readonly rear: number;
    readonly boards: readonly UsedBoard[];
  },
): { readonly placed: readonly PlacedBoard[]; readonly findings: readonly Finding[] } => {
  const { layout, layer, boards } = scene;
  const placed: PlacedBoard[] = [];
  const findings: Finding[] = [];
  let free = insetRegions([plainRegion(scene.outline)], EDGE);
  free = difference(
    free,
    scene.bosses.map(({ outside }) => outside),
  );
  for (const { board, use } of boards) {
    // Only bodies that come as deep as this board's own parts are in its way.
    const depth = {
      front: mm(layer.rear + board.tallestFront),
      rear: mm(scene.rear),
      index: layer.index,
    };
    const bodies = bodyPockets(layout, depth).flatMap(({ regions }) => regions);
    const found = placedBoard(board, subtracted(free, bodies), use.turn);
    if (found === null) findings.push(noBoardRoom({ board, use }, scene));
    else {
      placed.push(found);
      free = withoutBoard(free, found);
    }
  }
  return { placed, findings };
};

const trayPart = (plan: TrayPlan): PrintedPart => {
  const { layout, layer, outline, rear, top, front, wall, printer } = plan;
  const openings = plan.rooms.flatMap(({ regions }) => regions);
  const plate = subtracted([plainRegion(outline)], openings);
  const held = plan.placed.map((placed) =>
    boardHolding(placed, { printer, wall, rear, top, front: layer.rear }),
  );
  const boards = plan.placed.map((placed) => boardFact(placed, plan, plate));
  const uprights: readonly Upright[] = [
    ...plan.bosses.flatMap((boss) => postOf(boss, plan)),
    ...held.flatMap((one) => one.uprights),
    ...boards.flatMap(({ ties }) => ties),
  ];
  const facts = bareFacts(
    { plan: contourExtent(outline), rear, front },
    {
      bosses: [
        ...plan.bosses.map((boss) => measuredBoss(boss, { outline, pockets: openings })),
        ...held.flatMap((one) => one.bosses),
      ],
    },
  );
  return singlePart({
    id: `${layout.name}-${layer.id}`,
    panel: layout.name,
    title: `${layout.design.title}, ${layer.id}`,
    revision: layout.design.revision,
    role: "tray",
    owner: layer.id,
    stock: plan.stock,
    printer,
    solid: platedSolid({ regions: plate, rear, top }, uprights),
    bedSide: "rear",
    facts: {
      ...facts,
      boards: boards.map(({ fact }) => fact),
      pockets: plan.rooms.map((pocket) => ({
        owner: pocket.owner,
        contours: pocket.regions.map((region) => region.outline),
        clearance: mm(POCKET_CLEARANCE),
        from: mm(rear),
        to: mm(top),
        edge: edgeRoom(pocket, outline),
      })),
      flatness: { longest: facts.flatness.longest, thickness: tidy(top - rear) },
    },
    span: layer.design.written.span,
  });
};

/** From the plate to the layer in front, inside the tray's outline. */
const postOf = (boss: Boss, { top, front, outline }: TrayPlan): readonly Upright[] => {
  const inside = containsContour(outline, boss.outside) ? [boss.outside] : clipped(boss, outline);
  return [
    ...inside.map((contour): Upright => ({ does: "stand", contour, from: top, to: front })),
    { does: "cut", contour: boss.hole, from: boss.holeFrom, to: front },
  ];
};

const clipped = ({ outside }: Boss, outline: Contour): readonly Contour[] =>
  intersection([plainRegion(outside)], [plainRegion(outline)]).map((region) => region.outline);

/** A cable tie's two slots, their length along the cable's side, and how far apart they lie: common practice. */
const TIE = { slot: 2.5, length: 5, apart: 8, beyondPlug: 4 } as const;

const boardFact = (
  placed: PlacedBoard,
  plan: TrayPlan,
  plate: readonly Region[],
): { readonly fact: BoardFact; readonly ties: readonly Upright[] } => {
  const { board } = placed;
  const ties: Upright[] = [];
  const connectors = board.connectors.map((connector) => {
    const room = plugRoom(connector, "with-bend");
    const slots = tieSlots(placed, connector);
    const hasRoom = slots.length > 0 && slots.every((slot) => isOnPlate(slot, plan, plate));
    if (hasRoom)
      for (const contour of slots)
        ties.push({ does: "cut", contour, from: plan.rear, to: plan.top });
    const boxes = slots.map(contourExtent);
    return {
      name: connector.name,
      at: onTray(connector.at, placed),
      room: room === null ? null : contourExtent(placedContour(rectangle(room), placed.at)),
      height: mm(
        connector.side === "up"
          ? connector.height + connector.plug.depth + connector.bend
          : Math.max(connector.height, connector.plug.height),
      ),
      latch: latchFact(connector, placed, plan.layer.rear),
      tie: hasRoom ? middleOf(boxes) : null,
    };
  });
  return {
    ties,
    fact: {
      board: board.id,
      box: placed.box,
      turn: placed.at.turn,
      holding: board.holding,
      front: plan.layer.rear,
      from: mm(plan.layer.rear - board.thickness - board.tallestBack),
      to: mm(plan.layer.rear + board.tallestFront),
      connectors,
    },
  };
};

const middleOf = (boxes: readonly Extent[]): BoardFact["connectors"][number]["tie"] => {
  const [a, b] = boxes;
  if (a === undefined || b === undefined) return null;
  return point((a.minX + a.maxX + b.minX + b.maxX) / 4, (a.minY + a.maxY + b.minY + b.maxY) / 4);
};

/** Beside the cable, just beyond its plug. */
const tieSlots = (
  placed: PlacedBoard,
  connector: Board["connectors"][number],
): readonly Contour[] => {
  const out = outward(connector);
  if (out === null) return [];
  const away = connector.overhang + connector.plug.depth + TIE.beyondPlug;
  return [-1, 1].map((side) => {
    const middle = point(
      connector.at.x + out.x * away - out.y * side * (TIE.apart / 2),
      connector.at.y + out.y * away + out.x * side * (TIE.apart / 2),
    );
    const along = out.x === 0 ? TIE.slot : TIE.length;
    const across = out.x === 0 ? TIE.length : TIE.slot;
    const slot = extent(
      middle.x - along / 2,
      middle.y - across / 2,
      middle.x + along / 2,
      middle.y + across / 2,
    );
    return placedContour(rectangle(slot), placed.at);
  });
};

const isOnPlate = (slot: Contour, plan: TrayPlan, plate: readonly Region[]): boolean =>
  plate.some(
    (region) =>
      containsContour(region.outline, slot) &&
      region.holes.every((hole) => !contoursOverlap(hole, slot)),
  ) &&
  plan.bosses.every(({ outside }) => !contoursOverlap(outside, slot)) &&
  plan.placed.every(({ box }) => !contoursOverlap(rectangle(box), slot));

const noBoardRoom = ({ board, use }: UsedBoard, { layer }: TrayScene): Finding =>
  finding(NO_BOARD_ROOM, {
    message: `${layer.id} has no free place for ${board.id}${use.turn === null ? "" : ` turned by ${decimal(use.turn, 0)} deg`}: ${decimal(board.width, 1)} x ${decimal(board.height, 1)} mm and its plugs, clear of posts and of bodies that reach ${decimal(-layer.rear - board.tallestFront, 1)} mm deep. More behind: lets the bodies pass in front of it.`,
    span: use.span,
    subjects: [layer.id],
  });
