// A strict reader of 3MF, written from the core specification (3MF Consortium, Core Specification 1.2.3 and its schema) and
// the packaging conventions (ECMA-376 part 2). Throws at the first thing that a strict consumer may refuse.

import { readXml, type XmlElement } from "./three-mf-reader-xml.ts";
import { type ZipEntry, zipEntries } from "./zip-reader.ts";

export interface ThreeMfReading {
  readonly title: string | null;
  readonly objects: readonly ThreeMfObject[];
  /** Ids of what is built. */
  readonly items: readonly number[];
  readonly stamps: readonly number[];
}

export interface ThreeMfObject {
  readonly id: number;
  readonly name: string | null;
  readonly components: readonly number[];
  readonly triangles: number;
  /** mm³; 0 for an object of components. */
  readonly volume: number;
  readonly material: { readonly name: string; readonly colour: string } | null;
}

export function readThreeMfStrictly(file: Uint8Array): ThreeMfReading {
  const entries = zipEntries(Buffer.from(file));
  const parts = new Map(entries.map((entry) => [`/${entry.name}`, entry]));
  check(parts.size === entries.length, "names of parts are unique");
  checkContentTypes(parts);
  const model = readXml(modelPart(parts).bytes);
  return { ...readModel(model), stamps: entries.map(({ stamp }) => stamp) };
}

const MODEL_TYPE = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
const RELATIONSHIPS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";

/** ECMA-376 part 2, 10.1.2.2: the part `[Content_Types].xml` names a media type for every other part. */
function checkContentTypes(parts: ReadonlyMap<string, ZipEntry>): void {
  const types = parts.get("/[Content_Types].xml");
  check(types !== undefined, "there is a list of content types");
  const root = readXml(types.bytes);
  check(root.name === "Types", "the list's root is Types");
  check(
    root.attributes.get("xmlns") === "http://schemas.openxmlformats.org/package/2006/content-types",
    "the list has its namespace",
  );
  const defaults = new Map(
    root.children.map(({ name, attributes }) => {
      check(name === "Default", "the list holds defaults");
      return [attributes.get("Extension"), attributes.get("ContentType")] as const;
    }),
  );
  for (const path of parts.keys()) {
    if (path === "/[Content_Types].xml") continue;
    const extension = path.slice(path.lastIndexOf(".") + 1);
    const expected = extension === "rels" ? RELATIONSHIPS_TYPE : MODEL_TYPE;
    check(defaults.get(extension) === expected, `${path} has its media type`);
  }
}

/** Core specification 2.1: exactly one relationship of the package to a 3D model part. */
function modelPart(parts: ReadonlyMap<string, ZipEntry>): ZipEntry {
  const relationships = parts.get("/_rels/.rels");
  check(relationships !== undefined, "the package has relationships");
  const root = readXml(relationships.bytes);
  check(
    root.attributes.get("xmlns") === "http://schemas.openxmlformats.org/package/2006/relationships",
    "relationships have their namespace",
  );
  const ids = root.children.map(({ attributes }) => attributes.get("Id"));
  check(new Set(ids).size === ids.length && !ids.includes(undefined), "relationships have ids");
  const starts = root.children.filter(
    ({ attributes }) =>
      attributes.get("Type") === "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel",
  );
  check(starts.length === 1, "one relationship leads to a model");
  const target = parts.get(starts[0]!.attributes.get("Target") ?? "");
  check(target !== undefined, "the model part is in the package");
  return target;
}

function readModel(model: XmlElement): Omit<ThreeMfReading, "stamps"> {
  expectElement(model, "model", ["unit", "xml:lang", "xmlns"]);
  check(
    model.attributes.get("xmlns") === "http://schemas.microsoft.com/3dmanufacturing/core/2015/02",
    "the model has the core namespace",
  );
  check(model.attributes.get("unit") === "millimeter", "the unit is the millimetre");
  const order = model.children.map(({ name }) => name).join(" ");
  check(/^(metadata )*resources build$/.test(order), "metadata, resources and build, in order");
  const metadata = model.children.filter(({ name }) => name === "metadata");
  const names = metadata.map(({ attributes }) => attributes.get("name")!);
  check(new Set(names).size === names.length, "metadata names are unique");
  check(
    names.every((name) => KNOWN_METADATA.has(name)),
    "metadata names without a namespace are the specification's own",
  );
  const [resources, build] = model.children.slice(-2) as [XmlElement, XmlElement];
  const objects = readResources(resources);
  return {
    title: metadata.find(({ attributes }) => attributes.get("name") === "Title")?.text ?? null,
    objects,
    items: readBuild(build, objects),
  };
}

/** Core specification 3.4.1. */
const KNOWN_METADATA = new Set(
  "Title Designer Description Copyright LicenseTerms Rating CreationDate ModificationDate Application".split(
    " ",
  ),
);

type Materials = ReadonlyMap<number, readonly { readonly name: string; readonly colour: string }[]>;

function readResources(resources: XmlElement): readonly ThreeMfObject[] {
  expectElement(resources, "resources", []);
  check(
    /^(basematerials ?)*(object ?)*$/.test(resources.children.map(({ name }) => name).join(" ")),
    "materials stand before objects",
  );
  const ids = resources.children.map((resource) => wholeNumber(resource, "id", 1));
  check(new Set(ids).size === ids.length, "ids of resources are unique");
  const materials: Materials = new Map(
    resources.children
      .filter(({ name }) => name === "basematerials")
      .map((group) => [wholeNumber(group, "id", 1), group.children.map(readBase)]),
  );
  const objects: ThreeMfObject[] = [];
  for (const element of resources.children)
    if (element.name === "object") objects.push(readObject(element, materials, objects));
  return objects;
}

function readBase(base: XmlElement): { readonly name: string; readonly colour: string } {
  expectElement(base, "base", ["name", "displaycolor"]);
  const colour = base.attributes.get("displaycolor") ?? "";
  check(/^#[0-9A-Fa-f]{6}([0-9A-Fa-f]{2})?$/.test(colour), "a material has a colour");
  return { name: base.attributes.get("name")!, colour };
}

function readObject(
  object: XmlElement,
  materials: Materials,
  before: readonly ThreeMfObject[],
): ThreeMfObject {
  expectElement(object, "object", ["id", "type", "name", "pid", "pindex"]);
  check((object.attributes.get("type") ?? "model") === "model", "an object is a model");
  check(object.children.length === 1, "an object has one content");
  const [content] = object.children as [XmlElement];
  const id = wholeNumber(object, "id", 1);
  const name = object.attributes.get("name") ?? null;
  if (content.name === "components") {
    check(!object.attributes.has("pid"), "an object of components has no material of its own");
    check(content.children.length > 0, "components are not empty");
    const components = content.children.map((component) => {
      expectElement(component, "component", ["objectid"]);
      return wholeNumber(component, "objectid", 1);
    });
    check(
      components.every((component) => before.some((known) => known.id === component)),
      "components name earlier objects",
    );
    return { id, name, components, triangles: 0, volume: 0, material: null };
  }
  const material = materialOf(object, materials);
  return { id, name, components: [], material, ...readMesh(content) };
}

function materialOf(object: XmlElement, materials: Materials): ThreeMfObject["material"] {
  if (!object.attributes.has("pid")) return null;
  const group = materials.get(wholeNumber(object, "pid", 1));
  check(group !== undefined, "an object's material group exists");
  const material = group[wholeNumber(object, "pindex", 0)];
  check(material !== undefined, "an object's material exists");
  return material;
}

/** Core specification 4.1: vertices, triangles of three different ones, every edge in two triangles, facing outward. */
function readMesh(mesh: XmlElement): { readonly triangles: number; readonly volume: number } {
  expectElement(mesh, "mesh", []);
  check(mesh.children.map(({ name }) => name).join(" ") === "vertices triangles", "mesh in order");
  const [vertices, triangles] = mesh.children as [XmlElement, XmlElement];
  check(vertices.children.length >= 3, "a mesh has vertices");
  const places = vertices.children.map((vertex) => {
    expectElement(vertex, "vertex", ["x", "y", "z"]);
    return ["x", "y", "z"].map((axis) => realNumber(vertex, axis)) as [number, number, number];
  });
  const corners = triangles.children.map((triangle) => {
    expectElement(triangle, "triangle", ["v1", "v2", "v3"]);
    return ["v1", "v2", "v3"].map((corner) => {
      const index = wholeNumber(triangle, corner, 0);
      check(index < places.length, "a triangle's vertices exist");
      return index;
    }) as [number, number, number];
  });
  checkEdges(corners, places.length);
  const volume = corners.reduce((sum, [a, b, c]) => {
    const [p, q, r] = [places[a]!, places[b]!, places[c]!];
    const x = q[1] * r[2] - q[2] * r[1];
    const y = q[2] * r[0] - q[0] * r[2];
    const z = q[0] * r[1] - q[1] * r[0];
    return sum + (p[0] * x + p[1] * y + p[2] * z) / 6;
  }, 0);
  check(volume > 0, "triangles face outward");
  return { triangles: corners.length, volume };
}

function checkEdges(triangles: readonly (readonly number[])[], vertices: number): void {
  const edges = new Set<number>();
  for (const [a, b, c] of triangles as readonly (readonly [number, number, number])[]) {
    check(a !== b && b !== c && c !== a, "a triangle has three vertices");
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      check(!edges.has(from * vertices + to), "no edge is run along twice in one direction");
      edges.add(from * vertices + to);
    }
  }
  for (const [a, b, c] of triangles as readonly (readonly [number, number, number])[])
    for (const [from, to] of [
      [b, a],
      [c, b],
      [a, c],
    ] as const)
      check(edges.has(from * vertices + to), "every edge belongs to two triangles");
}

function readBuild(build: XmlElement, objects: readonly ThreeMfObject[]): readonly number[] {
  expectElement(build, "build", []);
  check(build.children.length > 0, "something is built");
  return build.children.map((item) => {
    expectElement(item, "item", ["objectid"]);
    const id = wholeNumber(item, "objectid", 1);
    check(
      objects.some((object) => object.id === id),
      "a built object exists",
    );
    return id;
  });
}

function expectElement(element: XmlElement, name: string, attributes: readonly string[]): void {
  check(element.name === name, `${element.name} is ${name}`);
  for (const key of element.attributes.keys())
    check(attributes.includes(key), `${name} may have ${key}`);
  if (element.children.length > 0) check(element.text.trim() === "", `${name} holds no text`);
}

/** The schema's ST_ResourceID and ST_ResourceIndex. */
function wholeNumber(element: XmlElement, key: string, least: number): number {
  const text = element.attributes.get(key) ?? "";
  check(/^\d+$/.test(text), `${element.name} has a whole number ${key}`);
  const value = Number(text);
  check(value >= least && value < 2147483648, `${key} is in its range`);
  return value;
}

/** The schema's ST_Number. */
function realNumber(element: XmlElement, key: string): number {
  const text = element.attributes.get(key) ?? "";
  check(
    /^[-+]?(\d+(\.\d+)?|\.\d+)([eE][-+]?\d+)?$/.test(text),
    `${element.name} has a number ${key}`,
  );
  return Number(text);
}

function check(condition: boolean, what: string): asserts condition {
  if (!condition) throw new Error(`3mf: it does not hold that ${what}`);
}
