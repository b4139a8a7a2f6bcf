// Reads a written DXF cut file, of 2007 or R12: units, comments, and CIRCLE, LWPOLYLINE and POLYLINE entities with their
// layers. Written from the DXF reference (group codes of the ENTITIES section). Anything else that is drawn is a stranger.

import { type Point, point, type Vertex, vertex } from "../geometry/contour.ts";
import { extent } from "../geometry/extent.ts";
import { type DxfGroup, dxfGroups } from "./dxf-groups.ts";
import { edgeOfCircle, edgesOfVertices } from "./edge.ts";
import { loopOfEdges } from "./loop.ts";
import type { Edge, ReadFile, ReadItem, ReadUnits } from "./read-file.ts";
import { statementsIn } from "./statements.ts";

export const readDxf = (text: string, corner: Point): ReadFile => {
  const groups = dxfGroups(text);
  const records = recordsOf(sectionOf(groups, "ENTITIES"));
  const read = records.map((record, index) =>
    entityOf(record, { records, next: index + 1, corner }),
  );
  return {
    format: "dxf",
    statements: statementsIn(
      groups.filter(({ code }) => code === COMMENT).map(({ value }) => value),
    ),
    units: unitsOf(groups),
    items: read.filter((entity) => entity.kind === "item").map(({ item }) => item),
    strangers: read.filter((entity) => entity.kind === "stranger").map(({ name }) => name),
  };
};

const COMMENT = 999;
/** $INSUNITS: 4 is millimetres, 1 inches, 0 says nothing (DXF reference, HEADER section). */
const UNIT_SIZES: ReadonlyMap<string, number> = new Map([
  ["1", 25.4],
  ["2", 304.8],
  ["4", 1],
  ["5", 10],
  ["6", 1000],
]);

const unitsOf = (groups: readonly DxfGroup[]): ReadUnits => {
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
const variableOf = (groups: readonly DxfGroup[], name: string, code: number): string | null => {
  const start = groups.findIndex((group) => group.code === 9 && group.value === name);
  if (start < 0) return null;
  for (const group of groups.slice(start + 1)) {
    if (group.code === 9 || group.code === 0) return null;
    if (group.code === code) return group.value;
  }
  return null;
};

const sectionOf = (groups: readonly DxfGroup[], name: string): readonly DxfGroup[] => {
  const start = groups.findIndex(
    (group, index) =>
      group.code === 2 && group.value === name && groups[index - 1]?.value === "SECTION",
  );
  if (start < 0) return [];
  const end = groups.findIndex(
    (group, index) => index > start && group.code === 0 && group.value === "ENDSEC",
  );
  return groups.slice(start + 1, end < 0 ? groups.length : end);
};

interface DxfRecord {
  readonly name: string;
  readonly groups: readonly DxfGroup[];
}

const recordsOf = (groups: readonly DxfGroup[]): readonly DxfRecord[] => {
  const records: { readonly name: string; readonly groups: DxfGroup[] }[] = [];
  for (const group of groups) {
    if (group.code === 0) records.push({ name: group.value, groups: [] });
    else records[records.length - 1]?.groups.push(group);
  }
  return records;
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
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const { code, value } of record.groups) {
    const current = vertices[vertices.length - 1];
    if (code === 10) vertices.push({ x: Number(value), y: Number.NaN, bulge: 0 });
    else if (current !== undefined && code === 20) current.y = Number(value);
    else if (current !== undefined && code === 42) current.bulge = Number(value);
  }
  return vertices.map(({ x, y, bulge }) => vertex(x + corner.x, y + corner.y, bulge));
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

const textOf = (record: DxfRecord, code: number): string | null =>
  record.groups.find((group) => group.code === code)?.value ?? null;

const numberOf = (record: DxfRecord, code: number, missing = Number.NaN): number => {
  const text = textOf(record, code);
  return text === null ? missing : Number(text);
};
