// A panel in section, in true size: one view for each column of components, the operator on the left, y as on the front.
// `sectionSheet` also gives each component's silhouette, so that its depth can be held against the layout's facts.

import type { Finding } from "../diagnostics/finding.ts";
import { type Extent, extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { type DepthRow, depthColumns, depthRows } from "./depth-table.ts";
import type { Drawing } from "./drawing.ts";
import { sectionPlanes } from "./section-planes.ts";
import { type SectionView, sectionView } from "./section-view.ts";
import { sheetFoot } from "./sheet-foot.ts";
import { laterNotes, measuredNotes } from "./sheet-notes.ts";
import { paperFace } from "./words.ts";

export interface SectionSheet {
  readonly drawing: Drawing;
  readonly views: readonly SectionView[];
  readonly rows: readonly DepthRow[];
  readonly foot: Extent;
}

const VIEW_GAP = 8;
const MARGIN = 4;

export const sectionDrawing = (
  layout: PanelLayout,
  findings: readonly Finding[],
  lettering: Lettering,
): Drawing => sectionSheet(layout, findings, lettering).drawing;

export const sectionSheet = (
  layout: PanelLayout,
  findings: readonly Finding[],
  lettering: Lettering,
): SectionSheet => {
  const face = paperFace(lettering);
  const views = viewsOf(face, layout);
  const above = views.map(({ box }) => box).reduce(joinedExtent, extent(0, 0, 0, 0));
  const rows = depthRows(layout);
  const foot = sheetFoot(face, layout, {
    sheet: { view: "Section", scale: "1:1" },
    above,
    findings,
    notes: [STEPPED, RAIL_NOTE, ...measuredNotes(layout), ...laterNotes(layout)].filter(
      (note) => note !== RAIL_NOTE || layout.rails.length > 0,
    ),
    table: { columns: depthColumns, rows: rows.map(({ cells }) => cells) },
  });
  return {
    drawing: {
      title: `${layout.design.title}, section`,
      box: grownExtent(joinedExtent(above, foot.box), MARGIN),
      items: [...views.flatMap(({ items }) => items), ...foot.items],
    },
    views,
    rows,
    foot: foot.box,
  };
};

const STEPPED =
  "Each section is stepped through the axes of its components, seen from the right; the operator is on the left. Broken lines: room for plugs and cables.";
const RAIL_NOTE = "The rail is drawn as far as its strip on the panel; its depth is its own.";

/** Side by side; a panel without components has one view through its middle. */
const viewsOf = (face: Face | null, layout: PanelLayout): readonly SectionView[] => {
  const planes = sectionPlanes(layout);
  const middle = { name: "A", x: layout.nominal.maxX, components: [] };
  const views: SectionView[] = [];
  for (const plane of planes.length === 0 ? [middle] : planes) {
    const left = views.length === 0 ? 0 : views.at(-1)!.box.maxX + VIEW_GAP;
    views.push(sectionView(face, layout, { plane, left }));
  }
  return views;
};
