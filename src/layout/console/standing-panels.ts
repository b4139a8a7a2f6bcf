// Panels at their places: along a bay's rails, or on feet of their own.

import type { PanelUse, StandDesign, UnreadPanel } from "../../design/console-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { mm } from "../../geometry/quantity.ts";
import { type Frame, frameWithin, pointOut } from "../../geometry/space/frame.ts";
import { vector } from "../../geometry/space/vector.ts";
import { unknownName } from "../context.ts";
import type { PanelLayout } from "../panel-layout.ts";
import { seatedLayer } from "../seated-layer.ts";
import { bayFrame } from "./bay-frame.ts";
import { bayWidths } from "./bay-widths.ts";
import type { BareBay } from "./bays.ts";
import { BAY_MOUNT, CIRCULAR_ORDER, UNKNOWN_BAY, UNKNOWN_PANEL } from "./codes-of-console.ts";
import type { BayLayout, PlacedPanel } from "./console-layout.ts";
import {
  type BayUse,
  freeRuns,
  type LostUse,
  type Stretch,
  type Stretched,
  stretchesOf,
} from "./stretch.ts";

/** A use of the console with the panel that was laid out for it; null where there was nothing to lay out. */
export interface LaidPanel {
  readonly name: string;
  readonly kind: PlacedPanel["kind"];
  readonly use: Pick<PanelUse, "bay" | "module" | "after" | "stand" | "loop" | "written">;
  readonly layout: PanelLayout | null;
}

export interface StandingPanels {
  readonly bays: readonly BayLayout[];
  readonly panels: readonly PlacedPanel[];
  readonly lost: readonly string[];
  readonly findings: readonly Finding[];
}

interface ConsoleText {
  readonly bays: readonly BareBay[];
  /** Every bay of the text, those too that could not be laid out. */
  readonly named: ReadonlySet<string>;
  /** Panels of the text that could not be read. */
  readonly unread: readonly UnreadPanel[];
}

export const standingPanels = (
  panels: readonly LaidPanel[],
  console: ConsoleText,
): StandingPanels => {
  const findings: Finding[] = [];
  const known = panels.flatMap((panel) => {
    const ready = usable(panel, console);
    if (ready.kind === "finding") findings.push(ready.finding);
    return ready.kind === "usable" ? [ready] : [];
  });
  const lost = [
    ...console.unread.flatMap(unreadUse),
    ...panels.flatMap((panel) =>
      panel.use.bay !== null && !known.some((ready) => ready.panel === panel)
        ? [{ name: panel.name, bay: panel.use.bay, start: panel.use.written.span.start }]
        : [],
    ),
  ];
  const found = stretchesOf(
    known.map(({ use }) => use),
    lost,
  );
  const inBays = found.flatMap((one, index) =>
    one.kind === "placed" ? [{ ...known[index]!, stretch: one.stretch }] : [],
  );
  const misplaced = found.flatMap((one, index) =>
    one.kind === "placed" ? [] : [known[index]!.panel.name],
  );
  return {
    bays: console.bays.map((bay) => bayWith(bay, inBays)),
    panels: [...console.bays.flatMap((bay) => panelsIn(bay, inBays)), ...panels.flatMap(onItsFeet)],
    lost: [...new Set([...console.unread, ...lost].map(({ name }) => name)), ...misplaced],
    findings: [...findings, ...orderFindings(found, panels)],
  };
};

/** Nobody shares a bay with what names none. */
const unreadUse = ({ name, bay, span }: UnreadPanel): readonly LostUse[] =>
  bay === null ? [] : [{ name, bay: bay.kind === "named" ? bay.id : null, start: span.start }];

interface Usable {
  readonly kind: "usable";
  readonly panel: LaidPanel;
  readonly layout: PanelLayout;
  readonly use: BayUse;
}

type Readiness =
  | Usable
  /** It stands in no bay, or what keeps it from standing has its finding. */
  | { readonly kind: "none" }
  | { readonly kind: "finding"; readonly finding: Finding };

const usable = (panel: LaidPanel, console: Pick<ConsoleText, "bays" | "named">): Readiness => {
  const { layout, use, name } = panel;
  if (use.bay === null) return { kind: "none" };
  const span = spanOf(use.written, "bay");
  if (!console.named.has(use.bay)) {
    const options = { span, known: console.named, subjects: [name] };
    return { kind: "finding", finding: unknownName(UNKNOWN_BAY, use.bay, options) };
  }
  const bay = console.bays.find(({ id }) => id === use.bay);
  if (bay === undefined || layout === null) return { kind: "none" };
  if (layout.mount.id !== bay.mount.id)
    return { kind: "finding", finding: otherMount(panel, layout, bay) };
  const { module, after } = use;
  const size = sizeAlong(layout);
  return {
    kind: "usable",
    panel,
    layout,
    use: { name, bay, module, after, size, span: use.written.span },
  };
};

/** Nominal size along the bay. */
const sizeAlong = ({ mount, nominal }: PanelLayout): Mm =>
  mount.counts === "height" ? extentHeight(nominal) : extentWidth(nominal);

const otherMount = (panel: LaidPanel, { mount }: PanelLayout, bay: BareBay): Finding =>
  finding(BAY_MOUNT, {
    message: `${panel.name} is a panel for the mount ${mount.id}, and bay ${bay.id} has ${bay.mount.id}. Put it into a bay of its own mount, or write mount: ${bay.mount.id} in its file.`,
    span: spanOf(panel.use.written, "bay"),
    related: [{ what: `bay ${bay.id}`, span: spanOf(bay.design.written, "mount") }],
    subjects: [panel.name],
  });

const orderFindings = (
  found: readonly Stretched[],
  panels: readonly LaidPanel[],
): readonly Finding[] => [
  ...found.flatMap((one) => {
    if (one.kind !== "unknown-neighbour") return [];
    const elsewhere = panels.find(({ name }) => name === one.use.after);
    return [
      elsewhere === undefined
        ? unknownNeighbour(one.use, found)
        : neighbourElsewhere(one.use, elsewhere),
    ];
  }),
  ...circlesIn(found).map(circular),
];

/** Each circle once, by whichever of its panels is written first. */
const circlesIn = (found: readonly Stretched[]): readonly (readonly BayUse[])[] => {
  const circles = found.flatMap((one) => (one.kind === "circle" ? [one.uses] : []));
  return circles.filter(
    (uses, index) =>
      !circles.slice(0, index).some((before) => before.some((use) => uses.includes(use))),
  );
};

const unknownNeighbour = (use: BayUse, found: readonly Stretched[]): Finding =>
  unknownName(UNKNOWN_PANEL, use.after ?? "", {
    span: use.span,
    known: found.flatMap((one) =>
      one.kind === "placed" && one.stretch.use.bay === use.bay ? [one.stretch.use.name] : [],
    ),
    subjects: [use.name],
  });

const neighbourElsewhere = ({ name, bay, span }: BayUse, other: LaidPanel): Finding => {
  const [stands, write] =
    other.use.bay === null
      ? ["stands in no bay", "a module"]
      : [`stands in bay ${other.use.bay}`, `bay: ${other.use.bay}, or a module`];
  return finding(UNKNOWN_PANEL, {
    message: `${name} stands in bay ${bay.id} and follows ${other.name}, which ${stands}; a panel follows a neighbour of its own bay. Write ${write} in place of after.`,
    span,
    related: [{ what: other.name, span: other.use.written.span }],
    subjects: [name],
  });
};

const circular = (uses: readonly BayUse[]): Finding => {
  const [first] = uses;
  const chain = [...uses, ...(first === undefined ? [] : [first])].map(({ name }) => name);
  return finding(CIRCULAR_ORDER, {
    message: `${chain.join(" follows ")}: none of them has a place. Give one of them a module: module: 0.`,
    span: first?.span ?? { file: "", start: 0, end: 0 },
    subjects: uses.map(({ name }) => name),
  });
};

interface InBay extends Usable {
  readonly stretch: Stretch;
}

const bayWith = (bay: BareBay, inBays: readonly InBay[]): BayLayout => {
  const own = inBays.filter(({ stretch }) => stretch.use.bay === bay);
  const panels = own.map(({ layout, stretch: { from } }) => ({ layout, from }));
  const taken = own.map(({ stretch }) => stretch);
  return { ...bay, ...bayWidths(bay, panels), free: freeRuns(bay, taken) };
};

const panelsIn = (bay: BareBay, inBays: readonly InBay[]): readonly PlacedPanel[] =>
  inBays
    .filter(({ stretch }) => stretch.use.bay === bay)
    .toSorted((a, b) => a.stretch.module - b.stretch.module)
    .map(inBay);

const inBay = ({ panel, layout, stretch }: InBay): PlacedPanel => {
  const { bay } = stretch.use;
  const { module, from, to } = stretch;
  return {
    ...standing(panel, layout),
    place: { kind: "bay", bay: bay.id, module, from, to },
    frame: frameWithin(bay.frame, panelFrame(layout, from)),
  };
};

const standing = (
  { name, kind, use }: LaidPanel,
  layout: PanelLayout,
): Pick<PlacedPanel, "name" | "layout" | "kind" | "use" | "seat"> => ({
  name,
  layout,
  kind,
  use,
  seat: seatOf(layout),
});

const seatOf = (layout: PanelLayout): Mm => seatedLayer(layout)?.rear ?? mm(0);

/** In the axes of a bay: a panel that is counted by its width lies with its x along the bay. */
const panelFrame = (layout: PanelLayout, from: Mm): Frame => {
  const { mount, nominal } = layout;
  const seat = -seatOf(layout);
  const z = vector(0, 0, 1);
  if (mount.counts === "height") {
    const origin = vector(-extentWidth(nominal) / 2, from, seat);
    return { x: vector(1, 0, 0), y: vector(0, 1, 0), z, origin };
  }
  const origin = vector(extentHeight(nominal) / 2, from, seat);
  return { x: vector(0, 1, 0), y: vector(-1, 0, 0), z, origin };
};

const onItsFeet = (panel: LaidPanel): readonly PlacedPanel[] => {
  const { layout } = panel;
  const { stand } = panel.use;
  if (stand === null || layout === null) return [];
  const place = { kind: "stand" as const };
  return [{ ...standing(panel, layout), place, frame: standFrame(stand, layout) }];
};

/** `at` is the middle of the lower edge on the face that it lies on. */
const standFrame = (stand: StandDesign, layout: PanelLayout): Frame => {
  const frame = bayFrame(stand);
  const toCorner = vector(-extentWidth(layout.nominal) / 2, 0, -seatOf(layout));
  return { ...frame, origin: pointOut(frame, toCorner) };
};
