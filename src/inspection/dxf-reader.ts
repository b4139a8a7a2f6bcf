// Reads a written DXF cut file, of 2007 or R12: units, comments, and CIRCLE, LWPOLYLINE and POLYLINE entities with their
// layers. Written from the DXF reference (group codes of the ENTITIES section). Anything else that is drawn is a stranger.

import { type Point, point, type Vertex, vertex } from "../geometry/contour.ts";
import { extent } from "../geometry/extent.ts";
import { type DxfGroups, dxfGroups, groupNumber, groupText } from "./dxf-groups.ts";
import { edgeOfCircle, edgesOfVertices } from "./edge.ts";
import { loopOfEdges } from "./loop.ts";
import type { Edge, ReadFile, ReadItem, ReadUnits } from "./read-file.ts";
import { statementsIn } from "./statements.ts";

export const readDxf = (text: string, corner: Point): ReadFile => {
  const groups = dxfGroups(text);
  const records = recordsOf(groups);
  const read = records.map((record, index) =>
    entityOf(record, { records, next: index + 1, corner }),
  );
  return {
    format: "dxf",
    statements: statementsIn(commentsOf(groups)),
    units: unitsOf(groups),
    items: read.filter((entity) => entity.kind === "item").map(({ item }) => item),
    strangers: read.filter((entity) => entity.kind === "stranger").map(({ name }) => name),
  };
};

const commentsOf = (groups: DxfGroups): readonly string[] =>
  groups.codes.flatMap((code, index) => (code === COMMENT ? [groupText(groups, index)] : []));

const COMMENT = 999;
/** $INSUNITS: 4 is millimetres, 1 inches, 0 says nothing (DXF reference, HEADER section). */
const UNIT_SIZES: ReadonlyMap<string, number> = new Map([
  ["1", 25.4],
  ["2", 304.8],
  ["4", 1],
  ["5", 10],
  ["6", 1000],
]);

const unitsOf = (groups: DxfGroups): ReadUnits => {
  const units = variableOf(groups, "$INSUNITS", 70);
  const across = variableOf(groups, "$EXTMAX", 10);
  const up = variableOf(groups, "$EXTMAX", 20);
  return {
    stated: units === null ? "no $INSUNITS" : `$INSUNITS ${units}`,
    millimetres: units === null ? null : (UNIT_SIZES.get(units) ?? null),
    sheet: across === null || up === null ? null : extent(0, 0, Number(across), Number(up)),
  };
};

/** Value of a header variable under one of its codes. */
const variableOf = (groups: DxfGroups, name: string, code: number): string | null => {
  const start = groups.codes.findIndex((own, at) => own === 9 && groupText(groups, at) === name);
  if (start < 0) return null;
  for (let at = start + 1; at < groups.codes.length; at += 1) {
    const own = groups.codes[at];
    if (own === 9 || own === 0) return null;
    if (own === code) return groupText(groups, at);
  }
  return null;
};

/** The pairs of one entity: from the one behind its name up to `end`. */
interface DxfRecord {
  readonly name: string;
  readonly groups: DxfGroups;
  readonly start: number;
  readonly end: number;
}

/** The records of the ENTITIES section. */
const recordsOf = (groups: DxfGroups): readonly DxfRecord[] => {
  const { codes } = groups;
  const heading = codes.findIndex(
    (code, at) =>
      code === 2 &&
      groupText(groups, at) === "ENTITIES" &&
      at > 0 &&
      groupText(groups, at - 1) === "SECTION",
  );
  if (heading < 0) return [];
  const records: DxfRecord[] = [];
  let at = nextRecord(codes, heading + 1);
  while (at < codes.length) {
    const name = groupText(groups, at);
    if (name === "ENDSEC") break;
    const end = nextRecord(codes, at + 1);
    records.push({ name, groups, start: at + 1, end });
    at = end;
  }
  return records;
};

const nextRecord = (codes: readonly number[], start: number): number => {
  let at = start;
  while (at < codes.length && codes[at] !== 0) at += 1;
  return at;
};

type Entity =
  | { readonly kind: "item"; readonly item: ReadItem }
  | { readonly kind: "stranger"; readonly name: string }
  | { readonly kind: "part-of-another" };

/** Where a record's followers begin (an R12 polyline's vertices are records of their own), and where the sheet's corner lies. */
interface Surroundings {
  readonly records: readonly DxfRecord[];
  readonly next: number;
  readonly corner: Point;
}

const entityOf = (record: DxfRecord, around: Surroundings): Entity => {
  const { corner } = around;
  switch (record.name) {
    case "CIRCLE":
      return itemOf(record, [edgeOfCircle(placeOf(record, corner), numberOf(record, 40))]);
    case "LWPOLYLINE":
      return itemOf(record, edgesOfVertices(lightVertices(record, corner), isClosed(record)));
    case "POLYLINE":
      return itemOf(record, edgesOfVertices(heavyVertices(around), isClosed(record)));
    case "VERTEX":
    case "SEQEND":
      return { kind: "part-of-another" };
    default:
      return { kind: "stranger", name: record.name };
  }
};

const itemOf = (record: DxfRecord, edges: readonly Edge[]): Entity => {
  const loop = loopOfEdges(edges);
  const process = textOf(record, 8) ?? "none";
  const isRead = loop !== null && Number.isFinite(loop.box.maxX + loop.box.maxY);
  return {
    kind: "item",
    item: { process, feature: null, loops: isRead ? [loop] : [], look: null },
  };
};

/** Bit 1 of group 70. */
const isClosed = (record: DxfRecord): boolean => numberOf(record, 70, 0) % 2 === 1;

/** In an LWPOLYLINE each 10 starts a vertex; the 20 and 42 that follow belong to it. */
const lightVertices = (record: DxfRecord, corner: Point): readonly Vertex[] => {
  const { groups, start, end } = record;
  const vertices: Vertex[] = [];
  let open = { x: Number.NaN, y: Number.NaN, bulge: 0 };
  let isOpen = false;
  const close = (): void => {
    if (isOpen) vertices.push(vertex(open.x + corner.x, open.y + corner.y, open.bulge));
  };
  for (let at = start; at < end; at += 1) {
    const code = groups.codes[at];
    if (code === 10) {
      close();
      open = { x: groupNumber(groups, at), y: Number.NaN, bulge: 0 };
      isOpen = true;
    } else if (code === 20) open.y = groupNumber(groups, at);
    else if (code === 42) open.bulge = groupNumber(groups, at);
  }
  close();
  return vertices;
};

/** The VERTEX records up to SEQEND. */
const heavyVertices = ({ records, next, corner }: Surroundings): readonly Vertex[] => {
  const vertices: Vertex[] = [];
  for (let at = next; records[at]?.name === "VERTEX"; at += 1) {
    const record = records[at]!;
    const { x, y } = placeOf(record, corner);
    vertices.push(vertex(x, y, numberOf(record, 42, 0)));
  }
  return vertices;
};

const placeOf = (record: DxfRecord, corner: Point): Point =>
  point(numberOf(record, 10) + corner.x, numberOf(record, 20) + corner.y);

const placeInRecord = ({ groups, start, end }: DxfRecord, code: number): number | null => {
  for (let at = start; at < end; at += 1) if (groups.codes[at] === code) return at;
  return null;
};

const textOf = (record: DxfRecord, code: number): string | null => {
  const at = placeInRecord(record, code);
  return at === null ? null : groupText(record.groups, at);
};

const numberOf = (record: DxfRecord, code: number, missing = Number.NaN): number => {
  const at = placeInRecord(record, code);
  return at === null ? missing : groupNumber(record.groups, at);
};
