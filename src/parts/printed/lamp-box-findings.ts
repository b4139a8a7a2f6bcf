// What a lamp box has to say: windows that are no grid, walls without room, or LEDs without seats.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { NO_OPAQUE_WALL } from "./codes.ts";
import { LAMP_BOX_LEDS, LAMP_BOX_PATTERN } from "./lamp-box-codes.ts";
import type { LampBoxScene, LampBoxSizes, LampCell } from "./lamp-box-sizes.ts";

/** Walls and LEDs of a box whose windows are a grid. */
export const lampBoxFindings = (scene: LampBoxScene, sizes: LampBoxSizes): readonly Finding[] => [
  ...thinWalls(scene, sizes),
  ...noSeats(scene, sizes),
];

/** null where rows and columns are all there and upright. */
export const patternFinding = (
  members: readonly PlacedComponent[],
  counts: { readonly columns: number; readonly rows: number },
): Finding | null => {
  const [first] = members;
  const design = first?.common.lampBox ?? null;
  if (first === undefined || design === null) return null;
  const isUpright = first.turn % QUARTER === 0;
  if (isUpright && counts.columns * counts.rows === members.length) return null;
  return finding(LAMP_BOX_PATTERN, {
    message: isUpright
      ? `The ${members.length} windows of ${first.entry} stand in ${counts.columns} columns and ${counts.rows} rows that they do not fill. A lamp box needs a row, a column or a grid.`
      : `The windows of ${first.entry} are turned by ${decimal(first.turn, 2)} degrees. A lamp box needs them upright or lying.`,
    span: design.written.span,
    subjects: [first.entry],
  });
};

const QUARTER = 90;

const entryOf = ({ members }: LampBoxScene): string => members[0]?.entry ?? "";

const thinWalls = (scene: LampBoxScene, sizes: LampBoxSizes): readonly Finding[] => {
  const { wall, innerLines, outerLines } = sizes;
  const least = Math.min(
    outerLines,
    ...[innerLines.across, innerLines.up].filter((lines) => lines !== null),
  );
  if (least >= wall.lines) return [];
  const thickness = least * wall.line;
  const short = wall.thickness - thickness;
  return [
    finding(NO_OPAQUE_WALL, {
      message: `The windows of ${entryOf(scene)} leave ${decimal(thickness, 2)} mm between cells (${least} lines of ${decimal(wall.line, 2)} mm), and neighbours light one another: a wall of ${scene.stock.id} needs ${decimal(wall.thickness, 2)} mm (${wall.lines} lines). Widen the pitch by ${decimal(short, 2)} mm.`,
      span: scene.design.written.span,
      subjects: [entryOf(scene)],
      measured: { value: thickness, unit: "mm" },
      limit: { value: wall.thickness, unit: "mm" },
      source: { kind: "workshop", name: `${scene.stock.id}: opaque-from` },
    }),
  ];
};

const noSeats = (scene: LampBoxScene, sizes: LampBoxSizes): readonly Finding[] => {
  const [cell] = sizes.cells;
  if (cell === undefined) return [];
  const needed = sizes.rim.modelled + 2 * sizes.wall.line;
  const room = leastRoom(cell);
  if (room >= needed - samePlace) return [];
  const { leds } = scene.design;
  return [
    finding(LAMP_BOX_LEDS, {
      message: `${leds} LEDs in a cell of ${decimal(extentWidth(cell.inside), 2)} x ${decimal(extentHeight(cell.inside), 2)} mm stand ${decimal(room, 2)} mm apart; the seats of ${scene.led.part.id} need ${decimal(needed, 2)} mm. Write fewer leds, or a smaller led.`,
      span: spanOf(scene.design.written, "leds"),
      subjects: [entryOf(scene)],
      measured: { value: room, unit: "mm" },
      limit: { value: needed, unit: "mm" },
      source: limitOfFigures(scene.led.part.figures),
    }),
  ];
};

/** Between neighbouring LEDs, and twice from the outer ones to the cell's sides. */
const leastRoom = ({ inside, leds, pitch }: LampCell): number =>
  Math.min(
    pitch.across ?? extentWidth(inside),
    pitch.up ?? extentHeight(inside),
    ...leds.flatMap(({ x, y }) => [
      2 * (x - inside.minX),
      2 * (inside.maxX - x),
      2 * (y - inside.minY),
      2 * (inside.maxY - y),
    ]),
  );
