// The STL files that a console's obstacles and walls name, read. Gives meshes by path as written; what is not there or is no
// closed solid has its finding and is left out.

import type { ConsoleDesign, ObstacleDesign } from "../design/console-design.ts";
import { fileMissing } from "../design/includes.ts";
import { resolveInclude } from "../design/resolve-include.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import { OBSTACLE_FILE } from "../layout/console/codes-of-console.ts";
import { importedStl } from "./imported-stl.ts";

export interface ObstacleMeshes {
  readonly meshes: ReadonlyMap<string, Mesh>;
  readonly findings: readonly Finding[];
}

export const obstacleMeshes = (
  design: ConsoleDesign,
  /** By path from the root; null: it is there and could not be read, which whoever tried has said. */
  binaries: ReadonlyMap<string, Uint8Array | null>,
): ObstacleMeshes => {
  const meshes = new Map<string, Mesh>();
  const findings: Finding[] = [];
  for (const obstacle of [...(design.envelope?.walls ?? []), ...design.obstacles]) {
    const { shape } = obstacle;
    if (shape.kind !== "mesh" || meshes.has(shape.file)) continue;
    const read = readObstacle(obstacle, shape.file, { design, binaries });
    if (read.kind === "solid") meshes.set(shape.file, read.mesh);
    if (read.kind === "finding") findings.push(read.finding);
  }
  return { meshes, findings };
};

type ReadObstacle =
  | { readonly kind: "solid"; readonly mesh: Mesh }
  | { readonly kind: "finding"; readonly finding: Finding }
  | { readonly kind: "told" };

const readObstacle = (
  { name, written }: ObstacleDesign,
  file: string,
  from: {
    readonly design: ConsoleDesign;
    readonly binaries: ReadonlyMap<string, Uint8Array | null>;
  },
): ReadObstacle => {
  const span = spanOf(written, "stl");
  const resolved = resolveInclude(from.design.file, file);
  const path = resolved.kind === "resolved" ? resolved.path : file;
  const bytes = from.binaries.get(path);
  if (bytes === null) return { kind: "told" };
  if (bytes === undefined)
    return { kind: "finding", finding: fileMissing({ path, span }, from.binaries.keys()) };
  const read = importedStl(bytes);
  if (read.kind === "solid") return read;
  const message = `${file}, the shape of ${name}, can't be taken as a solid: ${read.why}. Write it again as a closed STL file in millimetres, or give a box: of its size.`;
  return { kind: "finding", finding: finding(OBSTACLE_FILE, { message, span, subjects: [name] }) };
};
