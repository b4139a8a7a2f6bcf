// The design file that a person would have written: the first of a row by its distances from the edges, the others
// beside it; further rows below the row above.

import { quoted } from "../design/quoted.ts";
import { decimal } from "../geometry/number.ts";
import type { PlacedRow } from "./composition.ts";
import type { Unit } from "./unit.ts";

export interface PanelHead {
  readonly name: string;
  readonly title: string;
  readonly mount: string;
  readonly workshop: string | null;
  /** "11 modules", "120 mm". */
  readonly height: string | null;
  readonly width: string | null;
  readonly viewingDistance: string;
  readonly stack: readonly string[];
  readonly fixings: string | null;
  readonly font: string;
}

export const panelText = (head: PanelHead, rows: readonly PlacedRow[]): string =>
  [...headLines(head), "", "components:", ...componentLines(rows), ...borderLines(rows), ""].join(
    "\n",
  );

const headLines = (head: PanelHead): readonly string[] => [
  "consolewright: 1",
  "kind: panel",
  `name: ${quoted(head.name)}`,
  `title: ${quoted(head.title)}`,
  "revision: A",
  ...(head.workshop === null ? [] : [`workshop: ${quoted(head.workshop)}`]),
  `mount: ${head.mount}`,
  ...(head.width === null ? [] : [`width: ${head.width}`]),
  ...(head.height === null ? [] : [`height: ${head.height}`]),
  `viewing-distance: ${head.viewingDistance}`,
  "",
  "stack:                        # front to back",
  ...head.stack.map((layer) => `  - ${layer}`),
  ...(head.fixings === null ? [] : [`fixings: ${head.fixings}`]),
  `lettering: { font: ${head.font} }`,
];

const componentLines = (rows: readonly PlacedRow[]): readonly string[] => {
  const lines: string[] = [];
  rows.forEach((placed, index) => {
    const above = rows[index - 1];
    const isNewGroup = placed.group !== above?.group;
    if (isNewGroup && placed.group !== "") lines.push(`  # ${oneLine(placed.group)}`);
    placed.row.units.forEach((unit, member) => {
      lines.push(...unitLines(unit, placeOf(placed, member, isNewGroup ? null : above)));
    });
  });
  return lines;
};

/** A comment stays one line whatever the list held. */
const oneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();

const placeOf = (
  placed: PlacedRow,
  member: number,
  above: PlacedRow | null | undefined,
): string => {
  const previous = placed.row.units[member - 1];
  if (previous !== undefined) {
    const distance = (placed.row.offsets[member] ?? 0) - (placed.row.offsets[member - 1] ?? 0);
    return `{ right-of: ${previous.id}, centres: ${millimetres(distance)} }`;
  }
  const first = above?.row.units[0];
  if (above == null || first === undefined)
    return `{ left: ${millimetres(placed.left)}, top: ${millimetres(placed.top)} }`;
  return `{ left: ${millimetres(placed.left)}, below: ${first.id}, centres: ${millimetres(placed.top - above.top)} }`;
};

const millimetres = (value: number): string => `${decimal(value, 3)} mm`;

const unitLines = (unit: Unit, at: string): readonly string[] => [
  `  ${unit.id}:`,
  `    part: ${unit.part.id}`,
  ...unit.fitted.flatMap((hardware) =>
    hardware.kind === "knob" ||
    hardware.kind === "cap" ||
    hardware.kind === "guard" ||
    hardware.kind === "bezel"
      ? [`    ${hardware.kind}: ${hardware.id}`]
      : [],
  ),
  `    at: ${at}`,
  ...(unit.legend === null ? [] : [`    legend: ${quoted(unit.legend)}`]),
  ...(unit.group === "" ? [] : [`    group: ${quoted(unit.group)}`]),
  ...(unit.line.note === null ? [] : [`    note: ${quoted(unit.line.note)}`]),
];

/** A border round each named group of two or more. */
const borderLines = (rows: readonly PlacedRow[]): readonly string[] => {
  const groups = new Map<string, string[]>();
  for (const { group, row } of rows)
    if (group !== "")
      groups.set(group, [...(groups.get(group) ?? []), ...row.units.map(({ id }) => id)]);
  const bordered = [...groups].filter(([, ids]) => ids.length > 1);
  if (bordered.length === 0) return [];
  return [
    "",
    "markings:",
    ...bordered.map(
      ([group, ids]) =>
        `  - border: { around: [${ids.join(", ")}], gap: ${millimetres(BORDER_GAP)}, legend: ${quoted(group)} }`,
    ),
  ];
};

/** Between a group and the border round it. */
export const BORDER_GAP = 4;
