// The drawings of a console as files: each sheet for the screen, all of them in one PDF for the printer, and the mock-up in
// true size. Names of bays become names of files; two that would be one are kept apart.

import { type ConsoleSheet, consoleSheets } from "../drawings/console-drawing.ts";
import type { Drawing } from "../drawings/drawing.ts";
import { boardMockUp, panelMockUp } from "../drawings/mock-up-drawing.ts";
import { paperFace } from "../drawings/words.ts";
import { PAPERS } from "../export/paper.ts";
import { pdfDrawing } from "../export/pdf-drawing.ts";
import { svgDrawing } from "../export/svg-drawing.ts";
import { PAGE_MARGINS } from "../export/tile.ts";
import type { Face } from "../lettering/face.ts";
import type { FramePart } from "../parts/frame/frame-part.ts";
import type { ConsoleForPack } from "./console-pack.ts";
import { distinctPaths, safeName } from "./file-name.ts";
import type { PackFile } from "./pack-file.ts";
import { utf8Bytes } from "./utf8.ts";

export const consoleDrawings = (input: ConsoleForPack): readonly ConsoleSheet[] => {
  const { layout, fit, frame, findings, lettering } = input;
  const { width, height } = PAPERS[input.paper];
  const { left, right, top, bottom } = PAGE_MARGINS;
  const room = { width: width - left - right, height: height - top - bottom };
  return consoleSheets({ layout, bodies: fit.bodies, frame }, { findings, lettering, room });
};

/** A drawing by the name that it has in the pack. */
export type NamedDrawing = Pick<ConsoleSheet, "id" | "drawing">;

export const consoleDrawingPaths = (
  { layout }: ConsoleForPack,
  sheets: readonly NamedDrawing[],
): readonly string[] =>
  distinctPaths(sheets.map(({ id }) => `drawings/${safeName(layout.name)}-${safeName(id)}.svg`));

export const consoleDrawingFiles = (
  input: ConsoleForPack,
  sheets: readonly NamedDrawing[],
): readonly PackFile[] => {
  const name = safeName(input.layout.name);
  const face = paperFace(input.lettering);
  const paths = consoleDrawingPaths(input, sheets);
  const screen = sheets.map(
    ({ drawing }, index): PackFile => ({
      path: paths[index] ?? "",
      kind: "drawing-svg",
      part: "",
      bytes: utf8Bytes(svgDrawing(drawing)),
    }),
  );
  if (face === null) return screen;
  const drawings = sheets.map(({ drawing }) => drawing);
  return [
    ...screen,
    pdf(input, face, { path: `drawings/${name}.pdf`, kind: "drawing-pdf", drawings }),
    ...mockUp(input, face),
  ];
};

/** Every panel where it is used, then the boards that a builder would hold up: cheeks and ribs. */
const mockUp = (input: ConsoleForPack, face: Face): readonly PackFile[] => {
  const { layout, frame } = input;
  const panels = layout.panels.map((panel) => panelMockUp(face, panel.layout, panel.name));
  const boards = (frame?.parts ?? []).filter(isHeldUp).map((part) => boardMockUp(face, part));
  const drawings = [...panels, ...boards];
  return drawings.length === 0
    ? []
    : [pdf(input, face, { path: MOCK_UP, kind: "mock-up", drawings })];
};

const MOCK_UP = "mock-up.pdf";

const isHeldUp = ({ role }: FramePart): boolean => role === "cheek" || role === "rib";

const pdf = (
  { layout, paper }: ConsoleForPack,
  face: Face,
  file: Pick<PackFile, "path" | "kind"> & { readonly drawings: readonly Drawing[] },
): PackFile => ({
  path: file.path,
  kind: file.kind,
  part: "",
  bytes: pdfDrawing(file.drawings, { paper, face, title: layout.design.title }),
});
