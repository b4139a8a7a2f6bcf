// The front of a panel in true size, dimensioned: what a builder pins to the wall. Panel coordinates throughout.
// `frontSheet` also gives what was printed (ordinates, sizes, names), so that it can be held against the layout.

import type { Finding } from "../diagnostics/finding.ts";
import {
  type Extent,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import type { Drawing, DrawingItem } from "./drawing.ts";
import { faceItems, seenExtents } from "./face-view.ts";
import { frontHoles } from "./front-holes.ts";
import { filled, HAIR, MEDIUM, outlined, segment, stroked, THIN } from "./items.ts";
import { type Dimension, dimension, PLACES } from "./measure-line.ts";
import { type Ordinate, type OrdinatePlace, type OrdinateRun, ordinateRun } from "./ordinates.ts";
import { sectionMarks } from "./section-marks.ts";
import { sheetFoot } from "./sheet-foot.ts";
import { datumNote, isMeasured, laterNotes, measuredNotes } from "./sheet-notes.ts";
import { componentTags, type Tag } from "./tags.ts";
import { paperFace } from "./words.ts";

export interface FrontSheet {
  readonly drawing: Drawing;
  /** Along the bottom and the left: components and windows. Along the top and the right: what holds the panel together. */
  readonly ordinates: Readonly<Record<"bottom" | "left" | "top" | "right", readonly Ordinate[]>>;
  readonly width: Dimension;
  readonly height: Dimension;
  readonly tags: readonly Tag[];
  readonly foot: Extent;
}

/** Between panel and the lines round it: the section's letters stand there. */
const MARK_BAND = 6;
const BAND_GAP = 3;
const MARGIN = 2;

export const frontDrawing = (
  layout: PanelLayout,
  findings: readonly Finding[],
  lettering: Lettering,
): Drawing => frontSheet(layout, findings, lettering).drawing;

export const frontSheet = (
  layout: PanelLayout,
  findings: readonly Finding[],
  lettering: Lettering,
): FrontSheet => {
  const face = paperFace(lettering);
  const panel = contourExtent(layout.outline);
  const runs = ordinateRuns(face, layout, panel);
  const sizes = overallSizes(face, layout, { panel, runs });
  const tags = tagsOf(face, layout, panel);
  const marks = sectionMarks(face, layout, panel);
  const lines = [...Object.values(runs), ...Object.values(sizes), marks];
  const drawn = lines.map(({ box }) => box).reduce(joinedExtent, panel);
  const foot = sheetFoot(face, layout, {
    sheet: { view: "Front", scale: "1:1" },
    above: drawn,
    findings,
    notes: [datumNote(layout), ...measuredNotes(layout), ...laterNotes(layout)],
  });
  return {
    drawing: {
      title: `${layout.design.title}, front`,
      box: grownExtent(joinedExtent(drawn, foot.box), MARGIN),
      items: [
        ...panelItems(layout),
        ...lines.flatMap(({ items }) => items),
        ...tags.flatMap(({ items }) => items),
        ...foot.items,
      ],
    },
    ordinates: {
      bottom: runs.bottom.ordinates,
      left: runs.left.ordinates,
      top: runs.top.ordinates,
      right: runs.right.ordinates,
    },
    ...sizes,
    tags,
    foot: foot.box,
  };
};

const panelItems = (layout: PanelLayout): readonly DrawingItem[] => {
  const crosses = layout.components.flatMap(({ at }) => [
    segment(at.x - CROSS, at.y, at.x + CROSS, at.y),
    segment(at.x, at.y - CROSS, at.x, at.y + CROSS),
  ]);
  const behind = layout.layers.slice(1).filter(({ kind }) => kind === "sheet");
  const face = layout.layers[0]?.outline ?? layout.outline;
  return [
    outlined(
      behind.map(({ outline }) => outline),
      { ink: "line", width: THIN },
    ),
    filled([face], "paper"),
    outlined([face], { ink: "line", width: MEDIUM }),
    ...frontHoles(layout),
    ...faceItems(layout, "paper", "legend"),
    stroked(crosses, { ink: "dimension", width: HAIR }),
  ];
};

const CROSS = 2;

type Runs = Readonly<Record<"bottom" | "left" | "top" | "right", OrdinateRun>>;

const ordinateRuns = (face: Face | null, layout: PanelLayout, panel: Extent): Runs => {
  const placed = [...layout.components, ...windowCentres(layout)];
  const holding = [...layout.mountHoles, ...layout.fixings];
  const across = (things: readonly Placed[]): readonly OrdinatePlace[] =>
    things.map(({ id, at }) => ({ id, value: at.x }));
  const up = (things: readonly Placed[]): readonly OrdinatePlace[] =>
    things.map(({ id, at }) => ({ id, value: at.y }));
  const bottom = { side: "bottom", edge: panel.minY - MARK_BAND } as const;
  const left = { side: "left", edge: panel.minX - 1 } as const;
  const top = { side: "top", edge: panel.maxY + MARK_BAND } as const;
  const right = { side: "right", edge: panel.maxX + 1 } as const;
  return {
    bottom: ordinateRun(face, across([ZERO, ...placed]), bottom),
    left: ordinateRun(face, up([ZERO, ...placed]), left),
    top: ordinateRun(face, across(holding), top),
    right: ordinateRun(face, up(holding), right),
  };
};

interface Placed {
  readonly id: string;
  readonly at: { readonly x: number; readonly y: number };
}

const ZERO: Placed = { id: "zero", at: { x: 0, y: 0 } };

/** Of windows that stand alone; a display's window shares its component's axis. */
const windowCentres = ({ layers, components }: PanelLayout): readonly Placed[] => {
  const own = new Set(components.map(({ id }) => id));
  const windows = layers.flatMap(({ cutOuts }) =>
    cutOuts.filter(({ purpose }) => purpose === "window"),
  );
  const owners = [...new Set(windows.map(({ owner }) => owner))].filter((id) => !own.has(id));
  return owners.flatMap((owner) => {
    const first = windows.find((window) => window.owner === owner);
    return first === undefined ? [] : [{ id: owner, at: first.centre }];
  });
};

const overallSizes = (
  face: Face | null,
  layout: PanelLayout,
  { panel, runs }: { readonly panel: Extent; readonly runs: Runs },
): { readonly width: Dimension; readonly height: Dimension } => {
  const nominal = layout.nominal;
  const above = runs.top.box.maxY + BAND_GAP;
  const beside = runs.right.box.maxX + BAND_GAP + 1;
  return {
    width: dimension(
      face,
      { axis: "across", from: panel.minX, to: panel.maxX, line: above, witness: panel.maxY + 1 },
      nominalWords(extentWidth(nominal), extentWidth(panel)),
    ),
    height: dimension(
      face,
      { axis: "up", from: panel.minY, to: panel.maxY, line: beside, witness: panel.maxX + 1 },
      nominalWords(extentHeight(nominal), extentHeight(panel)),
    ),
  };
};

/** The nominal size stands in brackets where the panel is cut smaller. */
const nominalWords = (nominal: number, cut: number) => ({
  before: "",
  after: nominal === cut ? "" : ` (nominal ${decimal(nominal, PLACES)})`,
});

const tagsOf = (face: Face | null, layout: PanelLayout, panel: Extent): readonly Tag[] => {
  const holes = layout.layers[0]?.cutOuts ?? [];
  const holding = holes.filter(
    ({ purpose }) => purpose === "mount" || purpose === "fixing" || purpose === "dowel",
  );
  return componentTags(
    face,
    seenExtents(layout).map(([component, seen]) => ({
      id: component.id,
      at: component.at,
      seen,
      marks: [
        ...(isMeasured(component) ? ["M"] : []),
        ...(component.common.fitted === "later" ? ["LATER"] : []),
      ],
    })),
    {
      within: grownExtent(panel, -1),
      taken: [
        ...layout.markings
          .flatMap(({ fills, strokes, box }) => (fills.length + strokes.length === 0 ? [] : [box]))
          .filter((box) => !isWide(box, panel)),
        ...holding.map(({ contour }) => contourExtent(contour)),
      ],
    },
  );
};

/** A border's box holds half the panel; names may stand inside it. */
const isWide = (box: Extent, panel: Extent): boolean =>
  extentWidth(box) * extentHeight(box) > 0.08 * extentWidth(panel) * extentHeight(panel);
