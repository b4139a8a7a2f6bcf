// One small design on its way through every floor, as DEVELOPERS.md shows it. `npx tsx tests/documents/walk.ts` prints it.

import { fileURLToPath } from "node:url";
import type { PanelDesign } from "../../src/design/panel-design.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import type { Contour } from "../../src/geometry/contour.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { decimal } from "../../src/geometry/number.ts";
import { setUpName } from "../../src/pack/cut-files.ts";
import { compile, type PanelProject, packOfProject } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const PANEL = `consolewright: 1
kind: panel
name: bell
workshop: shed.yaml
mount: box-lid
width: 60 mm
height: 50 mm
stack: [{ layer: face, sheet: opal, finish: painted }]
components:
  ring: { part: push-button-16, at: { x: centre, top: 22 mm } }
`;

const SHED = `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 2.9 mm, dated: 2026-10-02 }
finishes:
  painted: { coats: [white, black], thickness: 0.08 mm, dated: 2026-10-02, order: cut-paint-engrave }
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file, measured: [{ stock: opal, kerf: [0.2, 0.2], dated: 2026-10-02 }] }
use: { face: laser }
`;

const BUTTON = "ring/clamp@face";

export const walk = (): string => {
  const files = new Map([
    ["bell.yaml", PANEL],
    ["shed.yaml", SHED],
  ]);
  const project = compile({ entry: "bell.yaml", files }, testLibrary());
  const [panel] = project.panels;
  if (panel === undefined) throw new Error("the panel of the walk can't be read");
  const pack = packOfProject(project, panel, { only: "everything", card: false });
  const svg = pack.files.find(({ kind }) => kind === "cut-svg");
  const cutFile = new TextDecoder().decode(svg?.bytes ?? new Uint8Array());
  return [
    "text        bell.yaml, and shed.yaml with a painted opal sheet (0.08 mm of paint) and a laser (kerf 0.2 mm)",
    ...PANEL.trimEnd()
      .split("\n")
      .map((line) => `            ${line}`),
    ...designLines(panel.design),
    ...layoutLines(panel),
    ...checkLines(panel),
    ...partLines(panel),
    ...exportLines(cutFile),
    ...pack.inspection
      .filter(
        ({ file, feature, what }) =>
          file === svg?.path && feature === BUTTON && SHOWN.includes(what),
      )
      .map(
        ({ what, expected, measured, passed }) =>
          `inspection  ${BUTTON} ${what}: must be ${expected}, measures ${measured}${passed ? "" : " WRONG"}`,
      ),
    ...packLines(pack.files.map(({ path }) => path)),
  ].join("\n");
};

/** Of what is measured at each opening, as much as a page takes. */
const SHOWN: readonly string[] = ["x", "y", "size"];

const designLines = ({ components }: PanelDesign): readonly string[] =>
  components.flatMap((entry) => {
    if (entry.kind !== "component") return [];
    const { line, column } = lineAndColumn(PANEL, entry.written.span.start);
    const { across, along } = entry.at;
    return [
      `design      ${entry.id}: ${entry.part}, across ${JSON.stringify(across)}, up ${JSON.stringify(along)}; written at ${line}:${column}`,
    ];
  });

const layoutLines = ({ layout }: PanelProject): readonly string[] => {
  if (layout === null) return [];
  const places = layout.components.map(
    ({ id, at, depth }) =>
      `layout      ${id} at ${decimal(at.x, 3)}, ${decimal(at.y, 3)}; grips ${decimal(depth.gripped.nominal, 3)}, thread left ${decimal(depth.threadLeft?.nominal ?? 0, 3)}`,
  );
  const openings = layout.layers
    .flatMap(({ cutOuts }) => cutOuts)
    .filter(({ id }) => id === BUTTON)
    .map(
      ({ id, contour }) => `layout      ${id} is to be ${across(contour)} wide when it is finished`,
    );
  return [...places, ...openings];
};

const checkLines = ({ findings }: PanelProject): readonly string[] =>
  findings.map(({ severity, code, message }) => `checks      ${severity} ${code}: ${message}`);

const partLines = ({ sheetParts }: PanelProject): readonly string[] =>
  sheetParts.flatMap((part) =>
    part.setUps.flatMap((setUp) => [
      `parts       ${setUpName(part, setUp)}, ${setUp.faceUp} up`,
      ...setUp.operations.flatMap((operation) =>
        operation.kind === "cut" && operation.feature === BUTTON
          ? [
              `parts       ${BUTTON} leaves the machine ${across(operation.contour)} wide: paint will narrow it`,
            ]
          : [],
      ),
    ]),
  );

const across = (contour: Contour): string => {
  const { minX, maxX } = contourExtent(contour);
  return decimal(maxX - minX, 4);
};

const exportLines = (cutFile: string): readonly string[] =>
  cutFile
    .split("\n")
    .filter((line) => line.includes(`id="${BUTTON}"`))
    .map((line) => `export      ${line}`);

/** A line for each folder of the pack. */
const packLines = (paths: readonly string[]): readonly string[] => {
  const folders = new Map<string, string[]>();
  for (const path of paths) {
    const [folder, name] = path.includes("/") ? path.split("/") : ["", path];
    folders.set(folder ?? "", [...(folders.get(folder ?? "") ?? []), name ?? ""]);
  }
  return [...folders].map(
    ([folder, names]) => `pack        ${folder === "" ? "" : `${folder}/: `}${names.join(", ")}`,
  );
};

if (process.argv[1] === fileURLToPath(import.meta.url)) process.stdout.write(`${walk()}\n`);
