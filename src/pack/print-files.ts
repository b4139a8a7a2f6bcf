// The print files of a printed part: each piece as it lies on the bed, 3MF with all its bodies, STL a body, STEP where the
// recipe has true arcs all through, and a picture. The bounding box stands in every name, so that a wrong scale shows.

import type { Rgb } from "../drawings/raster.ts";
import { stepFile } from "../export/step.ts";
import { stlFile } from "../export/stl.ts";
import { threeMfFile } from "../export/three-mf.ts";
import { fixed } from "../geometry/number.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import { type Mesh, meshExtent } from "../geometry/solid/mesh.ts";
import { meshSolid } from "../geometry/solid/mesh-solid.ts";
import { recipeExtent } from "../geometry/solid/recipe-extent.ts";
import { isLayeredPrism, placed, type Solid } from "../geometry/solid/solid.ts";
import { inspectSolid } from "../inspection/inspect-solid.ts";
import { inspectStep } from "../inspection/inspect-step.ts";
import type { InspectionRow } from "../inspection/row.ts";
import type { PrintedBody, PrintedPart, PrintedPiece } from "../parts/printed/printed-part.ts";
import { safeName } from "./file-name.ts";
import type { PackFile, PackFileKind } from "./pack-file.ts";
import { colourOf, partPicture } from "./part-picture.ts";
import { utf8Bytes } from "./utf8.ts";

export interface PrintFiles {
  readonly files: readonly PackFile[];
  readonly inspection: readonly InspectionRow[];
}

export const printFilesOf = (part: PrintedPart, kernel: Kernel): PrintFiles => {
  const pieces = part.pieces.map((piece) => pieceFiles(part, piece, kernel));
  return {
    files: [...pieces.flatMap(({ files }) => files), pictureFile(part, kernel)],
    inspection: pieces.flatMap(({ inspection }) => inspection),
  };
};

interface LyingBody {
  readonly body: PrintedBody;
  /** Turned and moved onto the bed. */
  readonly solid: Solid;
  readonly mesh: Mesh;
}

const pieceFiles = (part: PrintedPart, piece: PrintedPiece, kernel: Kernel): PrintFiles => {
  const bodies = onBed(part, piece, kernel);
  const stem = `print/${stemOf(part, piece, bodies)}`;
  const threeMf = threeMfOf(part, bodies);
  const written = [
    { kind: "print-3mf" as const, path: `${stem}.3mf`, bytes: threeMf, bodies },
    ...bodies.map((one) => ({
      kind: "print-stl" as const,
      path: `${stem}${bodies.length === 1 ? "" : `-${safeName(one.body.name)}`}.stl`,
      bytes: stlFile(one.mesh),
      bodies: [one],
    })),
  ];
  const steps = stepFiles(part, piece, stem);
  return {
    files: [...written.map((file) => packFile(part, file)), ...steps.files],
    inspection: [...written.flatMap((file) => inspected(part, file)), ...steps.inspection],
  };
};

interface WrittenPrint {
  readonly kind: PackFileKind & ("print-3mf" | "print-stl");
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly bodies: readonly LyingBody[];
}

const packFile = (
  part: PrintedPart,
  file: Pick<PackFile, "kind" | "path" | "bytes">,
): PackFile => ({
  path: file.path,
  kind: file.kind,
  part: part.id,
  bytes: file.bytes,
});

/** Bodies of a piece share one frame: the lowest corner of the first, which the others stand on, is the bed's corner. */
const onBed = (part: PrintedPart, piece: PrintedPiece, kernel: Kernel): readonly LyingBody[] => {
  const turn = { x: part.bedSide === "front" ? 180 : 0 };
  const turned = piece.bodies.map(({ solid }) => placed(solid, { x: 0, y: 0, z: 0 }, turn));
  const boxes = turned.map(recipeExtent);
  const to = {
    x: -Math.min(...boxes.map(({ minX }) => minX)),
    y: -Math.min(...boxes.map(({ minY }) => minY)),
    z: -Math.min(...boxes.map(({ minZ }) => minZ)),
  };
  return piece.bodies.map((body) => {
    const solid = placed(body.solid, to, turn);
    return { body, solid, mesh: meshSolid(solid, kernel) };
  });
};

const stemOf = (part: PrintedPart, piece: PrintedPiece, bodies: readonly LyingBody[]): string => {
  const boxes = bodies.map(({ mesh }) => meshExtent(mesh));
  const size = (least: "minX" | "minY" | "minZ", most: "maxX" | "maxY" | "maxZ"): string =>
    fixed(
      Math.max(...boxes.map((box) => box[most])) - Math.min(...boxes.map((box) => box[least])),
      1,
    );
  const box = `${size("minX", "maxX")}x${size("minY", "maxY")}x${size("minZ", "maxZ")}mm`;
  const number = part.pieces.length === 1 ? "" : `-piece-${piece.number}`;
  return `${safeName(part.id)}${number}-rev-${safeName(part.revision)}_${box}`;
};

const threeMfOf = (part: PrintedPart, bodies: readonly LyingBody[]): Uint8Array =>
  threeMfFile({
    title: part.title,
    bodies: bodies.map(({ body, mesh }) => ({
      name: body.name,
      material: part.stock.id,
      colour: hexadecimal(colourOf(body)),
      mesh,
    })),
  });

/** As assembled, since true arcs are for another modeller's assembly; parts with bevels or reliefs have none. */
const stepFiles = (part: PrintedPart, piece: PrintedPiece, stem: string): PrintFiles => {
  const written = piece.bodies.flatMap((body) => {
    if (!isLayeredPrism(body.solid)) return [];
    const title = `${part.id} ${body.name}`;
    const step = stepFile(body.solid, title);
    if (step.kind === "refused") return [];
    const name = piece.bodies.length === 1 ? "" : `-${safeName(body.name)}`;
    return [{ body, title, path: `${stem}${name}.step`, bytes: utf8Bytes(step.text) }];
  });
  return {
    files: written.map(({ path, bytes }) => packFile(part, { kind: "print-step", path, bytes })),
    inspection: written.flatMap(({ body, title, path, bytes }) =>
      inspectStep(bytes, { file: path, title, name: body.name, solid: body.solid }),
    ),
  };
};

const inspected = (part: PrintedPart, file: WrittenPrint): readonly InspectionRow[] =>
  inspectSolid(file.bytes, {
    file: file.path,
    format: file.kind === "print-stl" ? "stl" : "3mf",
    title: part.title,
    bodies: file.bodies.map(({ body, solid }) => ({
      name: body.name,
      solid,
      box: null,
      shells: 1,
    })),
    bed: part.printer?.bed ?? null,
  });

const pictureFile = (part: PrintedPart, kernel: Kernel): PackFile =>
  packFile(part, {
    kind: "picture-png",
    path: `pictures/${safeName(part.id)}.png`,
    bytes: partPicture(part, kernel),
  });

const hexadecimal = (colour: Rgb): string =>
  `#${colour.map((channel) => channel.toString(16).padStart(2, "0")).join("")}`;
