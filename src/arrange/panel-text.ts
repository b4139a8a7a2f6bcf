// The design file that a person would have written: the first of a row by its distances from the edges, the others
// beside it; further rows below the row above.

import { quoted } from "../design/quoted.ts";
import { decimal } from "../geometry/number.ts";
import { LEAST_RUN, type Row, runsOf } from "./blocks.ts";
import type { PlacedRow } from "./composition.ts";
import type { Unit } from "./unit.ts";

export interface PanelHead {
  readonly name: string;
  readonly title: string;
  readonly mount: string;
  readonly workshop: string | null;
  readonly catalogue: string | null;
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
  ...(head.catalogue === null ? [] : [`catalogue: [${quoted(head.catalogue)}]`]),
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
    const items = itemsOf(placed.row);
    items.forEach((item, place) => {
      const at = placeOf(placed, {
        item,
        before: items[place - 1],
        above: isNewGroup ? null : above,
      });
      lines.push(...itemLines(item, at));
    });
  });
  return lines;
};

/** What stands under one name: a thing, or three and more of one kind as a row. */
interface Item {
  readonly id: string;
  readonly units: readonly Unit[];
  /** Distances of its members from the first axis of the panel's row. */
  readonly offsets: readonly number[];
}

const itemsOf = ({ units, offsets }: Row): readonly Item[] =>
  runsOf(units).flatMap(({ first, count }): readonly Item[] => {
    const members = units.slice(first, first + count);
    const places = offsets.slice(first, first + count);
    if (count >= LEAST_RUN) return [{ id: rowId(members), units: members, offsets: places }];
    return members.map((unit, index) => ({
      id: unit.id,
      units: [unit],
      offsets: places.slice(index, index + 1),
    }));
  });

/** A line of the list that takes several rows names each by its first member. */
const rowId = (members: readonly Unit[]): string => {
  const [first] = members;
  if (first === undefined) return "";
  return members.length === first.line.quantity ? first.rowId : first.id;
};

/** A comment stays one line whatever the list held. */
const oneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();

const placeOf = (
  placed: PlacedRow,
  among: {
    readonly item: Item;
    readonly before: Item | undefined;
    readonly above: PlacedRow | null | undefined;
  },
): string => {
  const { item, before, above } = among;
  if (before !== undefined) {
    const distance = (item.offsets[0] ?? 0) - (before.offsets.at(-1) ?? 0);
    return `{ right-of: ${before.id}, centres: ${millimetres(distance)} }`;
  }
  const first = above == null ? undefined : itemsOf(above.row)[0];
  if (above == null || first === undefined)
    return `{ left: ${millimetres(placed.left)}, top: ${millimetres(placed.top)} }`;
  return `{ left: ${millimetres(placed.left)}, below: ${first.id}, centres: ${millimetres(placed.top - above.top)} }`;
};

const millimetres = (value: number): string => `${decimal(value, 3)} mm`;

const itemLines = ({ id, units, offsets }: Item, at: string): readonly string[] => {
  const [unit] = units;
  if (unit === undefined) return [];
  const pitch = (offsets[1] ?? 0) - (offsets[0] ?? 0);
  const kind =
    units.length === 1
      ? `part: ${unit.part.id}`
      : `row: { part: ${unit.part.id}, count: ${units.length}, pitch: ${millimetres(pitch)} }`;
  return [
    `  ${id}:`,
    `    ${kind}`,
    ...unit.fitted.flatMap((hardware) =>
      FITTED_KINDS.some((fitted) => fitted === hardware.kind)
        ? [`    ${hardware.kind}: ${hardware.id}`]
        : [],
    ),
    `    at: ${at}`,
    ...legendLines(units),
    ...(unit.group === "" ? [] : [`    group: ${quoted(unit.group)}`]),
    ...(unit.line.note === null ? [] : [`    note: ${quoted(unit.line.note)}`]),
  ];
};

const FITTED_KINDS = ["knob", "cap", "guard", "bezel"] as const;

const legendLines = (units: readonly Unit[]): readonly string[] => {
  if (units.every(({ legend }) => legend === null)) return [];
  const legends = units.map(legendText);
  if (legends.length === 1) return [`    legend: ${legends.join("")}`];
  return [`    legends: [${legends.join(", ")}]`];
};

const legendText = ({ legend, gap }: Unit): string =>
  gap === null || legend === null
    ? quoted(legend ?? "")
    : `{ text: ${quoted(legend)}, gap: ${millimetres(gap)} }`;

/** A border round each named group of two or more. */
const borderLines = (rows: readonly PlacedRow[]): readonly string[] => {
  const groups = new Map<string, Item[]>();
  for (const { group, row } of rows)
    if (group !== "") groups.set(group, [...(groups.get(group) ?? []), ...itemsOf(row)]);
  const bordered = [...groups].filter(
    ([, items]) => items.flatMap(({ units }) => units).length > 1,
  );
  if (bordered.length === 0) return [];
  return [
    "",
    "markings:",
    ...bordered.map(
      ([group, items]) =>
        `  - border: { around: [${items.map(({ id }) => id).join(", ")}], gap: ${millimetres(BORDER_GAP)}, legend: ${quoted(group)} }`,
    ),
  ];
};

/** Between a group and the border round it. */
export const BORDER_GAP = 4;
