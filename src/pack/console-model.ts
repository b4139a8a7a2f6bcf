// The model of a console: a group a panel with all its bodies, then frame, rails, and what is in the way. Takes the console's
// bodies and the kernel; gives console.glb and what was measured when it was read back.

import { type GlbBody, type GlbGroup, glbFile } from "../export/glb.ts";
import { plainText } from "../export/plain-text.ts";
import type { ConsoleBody } from "../fit/console-body.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import { meshSolid } from "../geometry/solid/mesh-solid.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { inspectGlb } from "../inspection/inspect-glb.ts";
import type { InspectionRow } from "../inspection/row.ts";
import { bodyColour } from "./console-colours.ts";
import type { ConsoleForPack } from "./console-pack.ts";
import type { PackFile } from "./pack-file.ts";

const PATH = "console.glb";

export interface ConsoleModel {
  readonly files: readonly PackFile[];
  readonly inspection: readonly InspectionRow[];
}

export const consoleModel = (input: ConsoleForPack, kernel: Kernel): ConsoleModel => {
  const groups = groupsOf(input, mesher(kernel));
  const bytes = glbFile({ title: input.layout.design.title, groups });
  const written = groups.map(({ name, bodies }) => ({
    name: plainText(name),
    bodies: bodies.map((body) => ({ ...body, name: plainText(body.name) })),
  }));
  return {
    files: [{ path: PATH, kind: "console-model", part: "", bytes }],
    inspection: inspectGlb(bytes, { file: PATH, groups: written }),
  };
};

type Mesher = (shape: ConsoleBody["shape"]) => Mesh;

/** A recipe that stands in several places is meshed once. */
const mesher = (kernel: Kernel): Mesher => {
  const known = new Map<Solid, Mesh>();
  return (shape) => {
    if (shape.kind === "mesh") return shape.mesh;
    const mesh = known.get(shape.solid) ?? meshSolid(shape.solid, kernel);
    known.set(shape.solid, mesh);
    return mesh;
  };
};

const groupsOf = ({ layout, fit, frame }: ConsoleForPack, meshOf: Mesher): readonly GlbGroup[] => {
  const boards = new Set((frame?.parts ?? []).map(({ id }) => id));
  const own = fit.bodies.filter(({ panel }) => panel === null);
  const isBoard = ({ id }: ConsoleBody): boolean => boards.has(id);
  const isRail = (body: ConsoleBody): boolean => !isBoard(body) && body.role === "rail";
  const glb = (body: ConsoleBody): GlbBody => ({
    name: body.id,
    mesh: meshOf(body.shape),
    colour: bodyColour(body, layout),
    frame: body.frame,
  });
  const group = (name: string, bodies: readonly ConsoleBody[]): GlbGroup => ({
    name,
    bodies: bodies.map(glb),
  });
  return [
    ...layout.panels.map(({ name }) =>
      group(
        name,
        fit.bodies.filter(({ panel }) => panel === name),
      ),
    ),
    group("frame", own.filter(isBoard)),
    group("rails", own.filter(isRail)),
    group(
      "obstacles",
      own.filter((body) => !isBoard(body) && !isRail(body)),
    ),
  ].filter(({ bodies }) => bodies.length > 0);
};
