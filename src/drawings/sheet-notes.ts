// What a sheet says beside its lines: what is held for a decision, what was measured, what is fitted later, and from
// where places are counted.

import type { Finding } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import type { PanelLayout, PlacedComponent } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import { type Block, type Hang, noteBlock } from "./text-blocks.ts";

/** Queries wait for a person; a fault is said as well, for drawings that are looked at before it is mended. */
export const holdBlock = (
  face: Face | null,
  findings: readonly Finding[],
  hang: Hang,
): Block | null => {
  const entries = findings
    .filter(({ severity }) => severity !== "note")
    .map(({ severity, message }) => (severity === "fault" ? `FAULT: ${message}` : message))
    .map((text, index) => `${index + 1}  ${text}`);
  const heading = `HOLD: ${entries.length} to decide before this is cut`;
  return entries.length === 0 ? null : noteBlock(face, { heading, entries, ink: "hold" }, hang);
};

export const isMeasured = (component: PlacedComponent): boolean =>
  component.part.figures.kind === "measured" || measuredPaths(component).length > 0;

const measuredPaths = (component: PlacedComponent): readonly string[] =>
  Object.entries(component.part.figures.exceptions)
    .filter(([, { kind }]) => kind === "measured")
    .map(([path, { source }]) => `${path} (${source})`);

/** One line an entry of the text: members of a row are measured together. */
export const measuredNotes = (layout: PanelLayout): readonly string[] =>
  entriesWhere(layout, isMeasured).map((component) => {
    const paths = measuredPaths(component);
    const what = paths.length === 0 ? component.part.figures.source : paths.join(", ");
    return `M  ${component.entry}: ${what}`;
  });

export const laterNotes = (layout: PanelLayout): readonly string[] =>
  entriesWhere(layout, ({ common }) => common.fitted === "later").map(
    ({ entry, part }) => `LATER  ${entry}: ${part.title}; its openings are cut now`,
  );

const entriesWhere = (
  { components }: PanelLayout,
  is: (component: PlacedComponent) => boolean,
): readonly PlacedComponent[] => {
  const found = components.filter(is);
  return found.filter(
    (component, index) => found.findIndex(({ entry }) => entry === component.entry) === index,
  );
};

export const datumNote = ({ mount }: PanelLayout): string =>
  mount.undersize === 0
    ? "Places are of axes and centres, in mm from the lower left corner."
    : `Places are of axes and centres, in mm from the lower left corner of the nominal outline; the panel is cut ${decimal(mount.undersize, 3)} mm smaller on every side.`;
