// A panel in section, in true size: one view for each column of components, the operator on the left, y as on the front.
// `sectionSheet` also gives each component's silhouette, so that its depth can be held against the layout's facts.

import type { Finding } from "../diagnostics/finding.ts";
import {
  type Extent,
  extent,
  extentCentre,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import { type DepthRow, depthColumns, depthRows } from "./depth-table.ts";
import type { Drawing } from "./drawing.ts";
import { type SectionPlane, sectionPlanes } from "./section-planes.ts";
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

/** A panel with what is printed for it: a printed layer without its part is drawn as the room that it takes. */
export interface SectionScene {
  readonly layout: PanelLayout;
  readonly printedParts: readonly PrintedPart[];
  readonly findings: readonly Finding[];
}

export const sectionDrawing = (scene: SectionScene, lettering: Lettering): Drawing =>
  sectionSheet(scene, lettering).drawing;

export const sectionSheet = (scene: SectionScene, lettering: Lettering): SectionSheet => {
  const { layout, findings } = scene;
  const face = paperFace(lettering);
  const views = viewsOf(face, scene);
  const above = views.map(({ box }) => box).reduce(joinedExtent, extent(0, 0, 0, 0));
  const rows = depthRows(layout);
  const foot = sheetFoot(face, layout, {
    sheet: { view: "Section", scale: "1:1" },
    above,
    findings,
    notes: [
      STEPPED,
      ...(scene.printedParts.length === 0 ? [] : [PRINTED_NOTE]),
      ...(layout.rails.length === 0 ? [] : [RAIL_NOTE]),
      ...measuredNotes(layout),
      ...laterNotes(layout),
    ],
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
const PRINTED_NOTE =
  "Printed parts are cross-hatched, dark where they are black; thin grey lines: what of them stands beyond the cut.";
const RAIL_NOTE =
  "Broken outline behind the last sheet: the rail, along its strip of the panel; its depth is the console's.";

/** Side by side; a panel without components has one view. The last, where nothing follows, shows the depth there is. */
const viewsOf = (face: Face | null, scene: SectionScene): readonly SectionView[] => {
  const { layout, printedParts } = scene;
  const found = sectionPlanes(layout);
  const bare: SectionPlane = { name: "A", x: extentCentre(layout.nominal).x, components: [] };
  const planes = found.length === 0 ? [bare] : found;
  const views: SectionView[] = [];
  for (const [index, plane] of planes.entries()) {
    const last = views.at(-1);
    const left = last === undefined ? 0 : last.box.maxX + VIEW_GAP;
    const room = index === planes.length - 1 ? layout.design.depth : null;
    views.push(sectionView(face, layout, { plane, printedParts, left, room }));
  }
  return views;
};
