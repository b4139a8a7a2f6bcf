// Panels for the tests of spacers, trays and washers, and short ways to look at their layers.

import { containsPoint } from "../../src/geometry/containment.ts";
import type { Point, Region } from "../../src/geometry/contour.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import type { LayeredSolid, Solid, SolidLayer } from "../../src/geometry/solid/solid.ts";
import type { PrintedPart, PrintedParts } from "../../src/parts/printed/printed-part.ts";
import { printedPartsOf } from "../../src/parts/printed/printed-parts.ts";
import { laidPanel } from "./laid-panel.ts";

export const PRINTER =
  "machines:\n  p: { type: printer, bed: [220, 220, 250], line: 0.45 mm, layer: 0.2 mm, holes: [{ to: 6 mm, add: 0.3 mm }, { to: 15 mm, add: 0.25 mm }] }\n";

export const stackOf = (lighting: string, rest = "", depth = 14): string => `
  - { layer: face, sheet: opal-3 }
  - { layer: backing, sheet: metal-2 }
  - { layer: spacer, print: black-petg, depth: ${depth} mm${lighting === "" ? "" : `, lighting: { strip: ${lighting}, circuit: night }`} }${rest}`;

export const printed = (
  keys: Readonly<Record<string, string>>,
  workshopLines = PRINTER,
  stock = "",
): PrintedParts & { readonly spacer: PrintedPart | undefined } => {
  const { layout, context } = laidPanel(keys, `${stock}\n${workshopLines}`);
  const made = printedPartsOf(layout, context);
  return { ...made, spacer: made.parts.find(({ role }) => role === "spacer") };
};

export const soundPart = (part: PrintedPart | undefined): PrintedPart => {
  if (part === undefined) throw new Error("no part");
  const faults = part.bodies.flatMap(({ solid }) => recipeFaults(solid));
  if (faults.length > 0) throw new Error(`${part.id}: ${faults.join(", ")}`);
  return part;
};

export const layeredBody = (part: PrintedPart, index = 0): LayeredSolid => {
  const solid: Solid | undefined = part.bodies[index]?.solid;
  if (solid?.kind !== "layered") throw new Error("not layered");
  return solid;
};

export const layerAt = (solid: LayeredSolid, z: number): SolidLayer => {
  const found = solid.layers.find(({ from, to }) => from <= z && z < to);
  if (found === undefined) throw new Error(`no layer at ${z}`);
  return found;
};

export const regionsOf = ({ regions }: SolidLayer): readonly Region[] =>
  regions.map(({ outline, holes }) => ({
    outline: outline.contour,
    holes: holes.map(({ contour }) => contour),
  }));

export const isMaterial = (layer: SolidLayer, at: Point): boolean =>
  regionsOf(layer).some(
    ({ outline, holes }) =>
      containsPoint(outline, at) && holes.every((hole) => !containsPoint(hole, at)),
  );
