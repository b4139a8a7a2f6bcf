// Panels that are wider than the room between what stands on either side of their bay.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import { widthOfMount } from "../../layout/console/bay-widths.ts";
import type { BayLayout, PlacedPanel } from "../../layout/console/console-layout.ts";
import { isOver } from "../limits.ts";
import { atMostWords, lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { narrowerPanel } from "./narrower-panel.ts";

const entry: CodeEntry = {
  code: "fit/panel-too-wide",
  severity: "fault",
  title: "a panel that is wider than its bay",
  why: "Finished, a panel must go in between what stands beside its rails. The room is the width that its mount names; for a mount that names none it is the clear width of the bay with the two seats of its rails.",
  example:
    "bays:\n  aft: { mount: corner-screws, at: [0, 0, 600], along: [1, 0, 0], length: 100 mm, depth: 60 mm, clear-width: 119.6 mm }",
};

export const panelTooWide: ConsoleRule = {
  entry,
  judge: (facts) =>
    facts.layout.panels.flatMap((panel) => {
      const { place } = panel;
      const bay = facts.layout.bays.find(({ id }) => place.kind === "bay" && id === place.bay);
      const room = bay === undefined ? null : roomOf(bay);
      if (bay === undefined || room === null) return [];
      const width = widthOf(panel);
      return isOver(width, room) ? [tooWide(panel, { bay, room, width }, facts)] : [];
    }),
};

/** null where neither the mount nor the bay names one. */
const roomOf = ({ width, design, mount }: BayLayout): Mm | null =>
  widthOfMount(mount) === null && design.clearWidth === null ? null : width;

/** Finished, across the bay. */
const widthOf = ({ layout }: PlacedPanel): Mm => {
  const box = contourExtent(layout.outline);
  return layout.mount.counts === "height" ? extentWidth(box) : extentHeight(box);
};

const tooWide = (
  panel: PlacedPanel,
  { bay, room, width }: { readonly bay: BayLayout; readonly room: Mm; readonly width: Mm },
  facts: ConsoleFacts,
): Finding => {
  const { written } = panel.layout.design;
  const across = panel.layout.mount.counts === "height" ? "width" : "height";
  const span = written.keys[across] ?? panel.use.written.span;
  const words = lengthWords(facts, written.keys[across]);
  const works = room - (width - nominalOf(panel));
  return finding(entry, {
    message: `${panel.name} is ${words(width, room)} wide when it is finished; bay ${bay.id} has room for ${words(room, width)}, ${words(width - room, 0)} less. ${across}: ${atMostWords(facts, written.keys[across])(works)} goes in.`,
    span,
    related: [{ what: `bay ${bay.id}`, span: spanOf(bay.design.written, "clear-width") }],
    subjects: [panel.name, bay.id],
    measured: measureMm(width),
    limit: measureMm(room),
    source: { kind: "geometry", name: `the width of bay ${bay.id}` },
    remedies: [
      ...(written.keys[across] === undefined
        ? []
        : narrowerPanel(panel, { key: across, span, is: nominalOf(panel), works }, facts)),
      ...widerBay(bay, width, facts),
    ],
  });
};

/** A bay whose mount names no width is as wide as it is measured. A frame's boards stand where its bays ask: it is left alone. */
const widerBay = (bay: BayLayout, width: Mm, { layout, edit }: ConsoleFacts): readonly Remedy[] => {
  const { clearWidth, written } = bay.design;
  const span = written.keys["clear-width"];
  if (
    widthOfMount(bay.mount) !== null ||
    clearWidth === null ||
    span === undefined ||
    layout.design.frame !== null
  )
    return [];
  const text = `${decimal(Math.ceil((width - 2 * bay.mount.seat) * 1000 - arithmeticNoise) / 1000, 3)} mm`;
  return [{ title: `clear-width: ${text} (${bay.id})`, edits: [edit(span, text)] }];
};

const nominalOf = ({ layout }: PlacedPanel): Mm =>
  layout.mount.counts === "height" ? extentWidth(layout.nominal) : extentHeight(layout.nominal);
