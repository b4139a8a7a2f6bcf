// Reads a 3MF package: the model part that its relationships name, its unit, and every body that the build reaches.
// Takes bytes; never throws: what is wrong, missing or not understood is listed.

import { strFromU8, unzipSync } from "fflate";
import { type MarkupPiece, markupPieces } from "./markup.ts";
import { type CornerTable, cornerTable, type SolidBody, type SolidFile } from "./solid-file.ts";

export const readThreeMf = (bytes: Uint8Array): SolidFile => {
  const entries = unpacked(bytes);
  if (entries === null) return unread("no zip package");
  const path = modelPath(textOf(entries["_rels/.rels"]));
  const model = path === null ? undefined : entries[path];
  if (model === undefined) return unread("no model part");
  return readModel(markupPieces(textOf(model)));
};

const unread = (why: string): SolidFile => ({
  unit: null,
  title: null,
  bodies: [],
  strangers: [why],
});

const unpacked = (bytes: Uint8Array): Readonly<Record<string, Uint8Array>> | null => {
  try {
    return unzipSync(bytes);
  } catch {
    return null;
  }
};

const textOf = (bytes: Uint8Array | undefined): string =>
  bytes === undefined ? "" : strFromU8(bytes);

/** 3MF Core Specification, section 2.2: the relationship whose type ends so names the model part. */
const MODEL_RELATIONSHIP = "/3dmanufacturing/2013/01/3dmodel";

const modelPath = (relationships: string): string | null => {
  for (const piece of markupPieces(relationships)) {
    if (piece.kind !== "open" || piece.name !== "Relationship") continue;
    if (piece.attributes.get("Type")?.endsWith(MODEL_RELATIONSHIP) === true)
      return piece.attributes.get("Target")?.replace(/^\//, "") ?? null;
  }
  return null;
};

/** What is gathered while the model is read from top to bottom. */
interface Reading {
  unit: string;
  title: string | null;
  readonly objects: Map<string, ReadObject>;
  readonly built: string[];
  readonly strangers: string[];
  object: ReadObject | null;
  isTitle: boolean;
}

interface ReadObject {
  readonly name: string;
  readonly components: string[];
  readonly table: CornerTable;
  /** The corner of each vertex, as they are numbered in the file. */
  readonly vertices: number[];
  readonly triangles: number[];
}

const readModel = (pieces: readonly MarkupPiece[]): SolidFile => {
  const reading: Reading = {
    unit: "millimeter",
    title: null,
    objects: new Map(),
    built: [],
    strangers: [],
    object: null,
    isTitle: false,
  };
  for (const piece of pieces) {
    if (piece.kind === "open") readTag(piece.name, piece.attributes, reading);
    else if (piece.kind === "close") reading.isTitle = false;
    else if (reading.isTitle) reading.title = (reading.title ?? "") + piece.text;
  }
  const { unit, title, strangers } = reading;
  return { unit, title, bodies: reading.built.flatMap((id) => bodiesOf(id, reading)), strangers };
};

type Attributes = ReadonlyMap<string, string>;

const readTag = (name: string, attributes: Attributes, reading: Reading): void => {
  if (attributes.has("transform")) reading.strangers.push("a transform");
  switch (name) {
    case "model":
      reading.unit = attributes.get("unit") ?? reading.unit;
      return;
    case "metadata":
      reading.isTitle = attributes.get("name") === "Title";
      return;
    case "object":
      openObject(attributes, reading);
      return;
    case "item":
      reading.built.push(attributes.get("objectid") ?? "");
      return;
    default:
      if (reading.object !== null) readInObject(name, attributes, reading.object);
  }
};

const openObject = (attributes: Attributes, reading: Reading): void => {
  const object: ReadObject = {
    name: attributes.get("name") ?? "",
    components: [],
    table: cornerTable(),
    vertices: [],
    triangles: [],
  };
  reading.object = object;
  reading.objects.set(attributes.get("id") ?? "", object);
};

const readInObject = (name: string, attributes: Attributes, object: ReadObject): void => {
  const number = (key: string): number => Number(attributes.get(key) ?? Number.NaN);
  if (name === "vertex")
    object.vertices.push(object.table.cornerAt(number("x"), number("y"), number("z")));
  else if (name === "triangle") object.triangles.push(number("v1"), number("v2"), number("v3"));
  else if (name === "component") object.components.push(attributes.get("objectid") ?? "");
};

/** An object's own body, or those of its components; objects name earlier ones only, so that this ends. */
const bodiesOf = (id: string, reading: Reading): readonly SolidBody[] => {
  const object = reading.objects.get(id);
  if (object === undefined) {
    reading.strangers.push(`no object ${id}`);
    return [];
  }
  // Taken out while its components are read: an object that holds itself is read once.
  reading.objects.delete(id);
  const inner = object.components.flatMap((component) => bodiesOf(component, reading));
  reading.objects.set(id, object);
  if (object.triangles.length === 0) return inner;
  return [...inner, bodyOf(object, reading.strangers)];
};

const bodyOf = (object: ReadObject, strangers: string[]): SolidBody => {
  const { name, vertices, table } = object;
  const corners = table.corners;
  const isKnown = object.triangles.every((vertex) => vertices[vertex] !== undefined);
  if (!isKnown) strangers.push("a triangle over a corner that is not there");
  if (!corners.every(Number.isFinite)) strangers.push("a corner that is no number");
  const triangles = isKnown ? object.triangles.map((vertex) => vertices[vertex]!) : [];
  return { name, corners, triangles, turnedNormals: 0 };
};
