// The drawings and paper templates of a panel: front and section for the screen and the printer, and each sheet
// in true size from both sides. Pages carry the design's own date, never the day on which they were made.

import { frontDrawing } from "../drawings/front-drawing.ts";
import { pictureDrawing } from "../drawings/picture-drawing.ts";
import { sectionDrawing } from "../drawings/section-drawing.ts";
import { paperFace } from "../drawings/words.ts";
import { pdfDrawing } from "../export/pdf-drawing.ts";
import { svgDrawing } from "../export/svg-drawing.ts";
import { templatePdf } from "../export/template-pdf.ts";
import type { Face } from "../lettering/face.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { safeName } from "./file-name.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { utf8Bytes } from "./utf8.ts";

export const drawingFiles = (panel: PanelForPack): readonly PackFile[] => {
  const face = paperFace(panel.lettering);
  const name = safeName(panel.design.name);
  const picture = pictureDrawing(panel.layout, panel.lettering);
  const drawings = [
    { name: `${name}-front`, drawing: frontDrawing(panel.layout, panel.findings, panel.lettering) },
    {
      name: `${name}-section`,
      drawing: sectionDrawing(panel, panel.lettering),
    },
  ];
  // The picture comes first: people look before they read.
  const screen = [{ name: `${name}-picture`, drawing: picture }, ...drawings].map(
    (each): PackFile => ({
      path: `drawings/${each.name}.svg`,
      kind: "drawing-svg",
      part: "",
      bytes: utf8Bytes(svgDrawing(each.drawing)),
    }),
  );
  if (face === null) return screen;
  const printed = drawings.map(
    (each): PackFile => ({
      path: `drawings/${each.name}.pdf`,
      kind: "drawing-pdf",
      part: "",
      bytes: pdfDrawing([each.drawing], { paper: panel.paper, face, title: each.drawing.title }),
    }),
  );
  return [
    ...screen,
    ...printed,
    ...panel.sheetParts.flatMap((part) => templates(panel, part, face)),
  ];
};

const templates = (panel: PanelForPack, part: SheetPart, face: Face): readonly PackFile[] =>
  (["FRONT", "BACK"] as const).map((side) => ({
    path: `template/${safeName(part.id)}-${side.toLowerCase()}.pdf`,
    kind: "template-pdf",
    part: part.id,
    bytes: templatePdf(part, { side, face, paper: panel.paper, dated: panel.design.dated }),
  }));
