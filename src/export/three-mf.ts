// Meshes as a 3MF file (3MF Core Specification 1.2.3): millimetres, a name and a material for each body, several bodies
// of one part as components of one object. A fixed date and plain arithmetic: the same bytes on every run.

import { strToU8, zipSync } from "fflate";
import { decimal } from "../geometry/number.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import { xmlText } from "./xml-text.ts";

export interface ThreeMfModel {
  /** Name of the part, as slicers show it. */
  readonly title: string;
  /** In one frame: bodies of a part touch as they are printed. */
  readonly bodies: readonly ThreeMfBody[];
}

export interface ThreeMfBody {
  readonly name: string;
  /** Name of the stock. */
  readonly material: string;
  /** Six hexadecimal digits, for the screen. */
  readonly colour: string;
  readonly mesh: Mesh;
}

export const threeMfFile = (model: ThreeMfModel): Uint8Array =>
  zipSync(
    {
      "[Content_Types].xml": strToU8(contentTypes),
      "_rels/.rels": strToU8(relationships),
      "3D/3dmodel.model": strToU8(modelPart(model)),
    },
    { level: compression, mtime: fixedDate },
  );

const compression = 6;

/** Without a zone: zip carries local time, so that every zone writes the same digits. */
const fixedDate = "2000-01-01T12:00:00";

const declaration = '<?xml version="1.0" encoding="UTF-8"?>\n';

/** Open Packaging Conventions (ECMA-376, part 2), sections 10.1.2 and 9.3; media types from the core specification. */
const contentTypes = `${declaration}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>\n`;

const relationships = `${declaration}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel-1" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>\n`;

/** Materials are resource 1, bodies 2 and up, the object that joins several of them the last. */
const materialsId = 1;

const modelPart = ({ title, bodies }: ThreeMfModel): string => {
  const names = bodies.map(({ material, colour }) => `${material}\n${colour}`);
  const materials = bodies.filter((_, index) => names.indexOf(names[index]!) === index);
  const objects = bodies.map((body, index) => {
    const material = materials.findIndex(
      ({ material, colour }) => material === body.material && colour === body.colour,
    );
    return meshObject(body, materialsId + 1 + index, material);
  });
  const lines = [
    '<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    `<metadata name="Title">${xmlText(title)}</metadata>`,
    '<metadata name="Application">Consolewright</metadata>',
    "<resources>",
    `<basematerials id="${materialsId}">`,
    ...materials.map(
      ({ material, colour }) =>
        `<base name="${xmlText(material)}" displaycolor="${xmlText(colour)}"/>`,
    ),
    "</basematerials>",
    ...objects,
    ...(bodies.length > 1 ? [joinedObject(title, bodies.length)] : []),
    "</resources>",
    "<build>",
    `<item objectid="${builtId(bodies.length)}"/>`,
    "</build>",
    "</model>",
  ];
  return `${declaration}${lines.join("\n")}\n`;
};

/** What is built: the only body, or the object that joins them. */
const builtId = (bodies: number): number => materialsId + (bodies > 1 ? bodies + 1 : 1);

const joinedObject = (title: string, bodies: number): string =>
  [
    `<object id="${builtId(bodies)}" type="model" name="${xmlText(title)}">`,
    "<components>",
    ...Array.from(
      { length: bodies },
      (_, index) => `<component objectid="${materialsId + 1 + index}"/>`,
    ),
    "</components>",
    "</object>",
  ].join("\n");

const meshObject = ({ name, mesh }: ThreeMfBody, id: number, material: number): string => {
  const { positions, triangles } = mesh;
  const lines = [
    `<object id="${id}" type="model" name="${xmlText(name)}" pid="${materialsId}" pindex="${material}">`,
    "<mesh>",
    "<vertices>",
  ];
  for (let at = 0; at < positions.length; at += 3)
    lines.push(
      `<vertex x="${place(positions[at]!)}" y="${place(positions[at + 1]!)}" z="${place(positions[at + 2]!)}"/>`,
    );
  lines.push("</vertices>", "<triangles>");
  for (let at = 0; at < triangles.length; at += 3)
    lines.push(
      `<triangle v1="${triangles[at]}" v2="${triangles[at + 1]}" v3="${triangles[at + 2]}"/>`,
    );
  lines.push("</triangles>", "</mesh>", "</object>");
  return lines.join("\n");
};

/** A millionth of a millimetre: finer than a float32 from 8 mm up, and below that far finer than any two corners lie. */
const place = (value: number): string => decimal(value, 6);
