// A layered solid as a STEP file (ISO 10303-214, automotive design): a closed shell whose arcs are circles and cylinders.
// Other solids have no STEP file here; a layered one is refused where its recipe has a fault, where its layers touch along
// an edge only, or where it falls into more than one shell.

import { recipeFaults } from "../geometry/solid/recipe-faults.ts";
import type { LayeredSolid } from "../geometry/solid/solid.ts";
import {
  type Entities,
  entities,
  placementOf,
  type Reference,
  rightward,
  stringText,
  upward,
} from "./step-entities.ts";
import { capFace, type Face, type FaceWriter, wallFace } from "./step-faces.ts";
import { type Level, levelBetween } from "./step-level.ts";
import { places } from "./step-places.ts";
import { type LayerShape, layerShape } from "./step-spans.ts";

export type StepFile =
  | { readonly kind: "written"; readonly text: string }
  | { readonly kind: "refused"; readonly why: string };

export const stepFile = (solid: LayeredSolid, name: string): StepFile => {
  const [fault] = recipeFaults(solid);
  if (fault !== undefined) return { kind: "refused", why: fault };
  const writer: FaceWriter = { to: entities(), places: places() };
  const shapes = solid.layers.map(layerShape);
  const levels: Level[] = [];
  for (let index = 0; index <= shapes.length; index += 1) {
    const found = levelBetween(shapes[index - 1] ?? null, shapes[index] ?? null, writer.places);
    if (found.kind === "refused") return found;
    levels.push(found.level);
  }
  const faces = facesOf(solid, { shapes, levels, writer });
  if (shellCount(faces) !== 1)
    return { kind: "refused", why: "it is hollow or in more than one piece" };
  return { kind: "written", text: fileText(writer.to, faces, name) };
};

const facesOf = (
  solid: LayeredSolid,
  of: {
    readonly shapes: readonly LayerShape[];
    readonly levels: readonly Level[];
    readonly writer: FaceWriter;
  },
): readonly Face[] => {
  const { shapes, levels, writer } = of;
  return [
    ...levels.flatMap(({ caps }, index) => {
      const height = solid.layers[index]?.from ?? solid.layers.at(-1)!.to;
      return caps.map((cap) => capFace(cap, height, writer));
    }),
    ...solid.layers.flatMap(({ from, to }, index) =>
      shapes[index]!.edges.map(({ edge }, at) => {
        const foot = levels[index]!.above[at]!;
        const head = levels[index + 1]!.below[at]!;
        return wallFace({ edge, from, to, foot, head }, writer);
      }),
    ),
  ];
};

/** How many groups of faces hang together by their edges. */
const shellCount = (faces: readonly Face[]): number => {
  const leader = new Map<Reference, Reference>();
  const leaderOf = (edge: Reference): Reference => {
    const next = leader.get(edge);
    return next === undefined || next === edge ? edge : leaderOf(next);
  };
  for (const { edges } of faces) {
    const first = leaderOf(edges[0]!);
    for (const edge of edges) leader.set(leaderOf(edge), first);
  }
  return new Set(faces.map(({ edges }) => leaderOf(edges[0]!))).size;
};

/** The same in every file: a date would make equal parts differ. */
const fixedDate = "2000-01-01T00:00:00";

const fileText = (to: Entities, faces: readonly Face[], name: string): string => {
  const title = stringText(name);
  const shell = to.add(`CLOSED_SHELL('',(${faces.map(({ reference }) => reference).join(",")}))`);
  addProduct(to, to.add(`MANIFOLD_SOLID_BREP('${title}',${shell})`), title);
  return [
    "ISO-10303-21;",
    "HEADER;",
    "FILE_DESCRIPTION((''),'2;1');",
    `FILE_NAME('${title}','${fixedDate}',(''),(''),'','Consolewright','');`,
    "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));",
    "ENDSEC;",
    "DATA;",
    ...to.lines(),
    "ENDSEC;",
    "END-ISO-10303-21;",
    "",
  ].join("\n");
};

/** The product that the shape belongs to, and its units: millimetres, radians. */
const addProduct = (to: Entities, body: Reference, title: string): void => {
  const application = to.add("APPLICATION_CONTEXT('automotive design')");
  to.add(
    `APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,${application})`,
  );
  const context = to.add(`PRODUCT_CONTEXT('',${application},'mechanical')`);
  const product = to.add(`PRODUCT('${title}','${title}','',(${context}))`);
  const formation = to.add(`PRODUCT_DEFINITION_FORMATION('','',${product})`);
  const stage = to.add(`PRODUCT_DEFINITION_CONTEXT('part definition',${application},'design')`);
  const definition = to.add(`PRODUCT_DEFINITION('design','',${formation},${stage})`);
  const shape = to.add(`PRODUCT_DEFINITION_SHAPE('','',${definition})`);
  const axes = placementOf(to, { x: 0, y: 0, z: 0 }, { z: upward, x: rightward });
  const representation = to.add(
    `ADVANCED_BREP_SHAPE_REPRESENTATION('',(${axes},${body}),${measuringContext(to)})`,
  );
  to.add(`SHAPE_DEFINITION_REPRESENTATION(${shape},${representation})`);
};

/** Places agree within a tenth of a micrometre. */
const measuringContext = (to: Entities): Reference => {
  const length = to.add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
  const angle = to.add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
  const solid = to.add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
  const accuracy = to.add(
    `UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(1.E-04),${length},'distance_accuracy_value','')`,
  );
  return to.add(
    `(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((${accuracy}))GLOBAL_UNIT_ASSIGNED_CONTEXT((${length},${angle},${solid}))REPRESENTATION_CONTEXT('',''))`,
  );
};
