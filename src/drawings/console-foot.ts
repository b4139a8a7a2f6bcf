// The foot of a sheet of a console: the table of its bays, notes, and the title block last. How many questions are open it
// says; which, the findings' own paper.

import type { Finding } from "../diagnostics/finding.ts";
import { type Extent, extentWidth, joinedExtent } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { plus, scaled } from "../geometry/space/vector.ts";
import type { BayLayout, ConsoleLayout } from "../layout/console/console-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { ConsoleView } from "./console-view.ts";
import { type Block, type Column, type Hang, noteBlock, tableBlock } from "./text-blocks.ts";
import { titleBlockOf } from "./title-block.ts";

const LEAST_WIDTH = 160;
const MOST_WIDTH = 200;
const GAP = 4;

export interface ConsoleFootParts {
  readonly view: ConsoleView;
  readonly above: Extent;
  readonly findings: readonly Finding[];
  readonly notes: readonly string[];
}

export const consoleFoot = (
  face: Face | null,
  layout: ConsoleLayout,
  parts: ConsoleFootParts,
): Block => {
  const width = Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, extentWidth(parts.above)));
  const blocks: Block[] = [];
  const add = (make: (hang: Hang) => Block): void => {
    const top = (blocks.at(-1)?.box.minY ?? parts.above.minY) - GAP;
    blocks.push(make({ left: parts.above.minX, top, width }));
  };
  if (parts.view.kind === "plan")
    add((hang) => tableBlock(face, { columns: BAY_COLUMNS, rows: layout.bays.map(bayRow) }, hang));
  if (parts.notes.length > 0)
    add((hang) =>
      noteBlock(face, { heading: "Notes", entries: parts.notes, ink: "dimension" }, hang),
    );
  add((hang) => titleBlockOf(face, titleOf(layout, parts), hang));
  return {
    items: blocks.flatMap(({ items }) => items),
    box: blocks.map(({ box }) => box).reduce(joinedExtent),
  };
};

const column = (title: string, share: number): Column => ({ title, share, align: "end" });

const BAY_COLUMNS: readonly Column[] = [
  { title: "bay", share: 0.16, align: "start" },
  { title: "mount", share: 0.16, align: "start" },
  column("length mm", 0.12),
  column("width mm", 0.12),
  column("slope deg", 0.1),
  column("cant deg", 0.1),
  column("begins mm up", 0.12),
  column("ends mm up", 0.12),
];

const PLACES = 2;

const bayRow = ({ id, mount, frame, length, width, design }: BayLayout): readonly string[] => [
  id,
  mount.id,
  decimal(length, PLACES),
  decimal(width, PLACES),
  decimal(design.slope, PLACES),
  decimal(design.cant, PLACES),
  decimal(frame.origin.z, PLACES),
  decimal(plus(frame.origin, scaled(frame.y, length)).z, PLACES),
];

const titleOf = (
  { name, design, bays, panels }: ConsoleLayout,
  { view, findings }: ConsoleFootParts,
): Parameters<typeof titleBlockOf>[1] => {
  const standing = panels.filter(({ place }) => place.kind === "stand").map(({ name }) => name);
  const held = findings.filter(({ severity }) => severity !== "note").length;
  return {
    title: design.title,
    view: view.title,
    cells: [
      { label: "CONSOLE", text: name, share: 0.26 },
      { label: "REVISION", text: design.revision, share: 0.16 },
      { label: "DATED", text: design.dated ?? "no date", share: 0.16 },
      { label: "BAYS", text: String(bays.length), share: 0.08 },
      { label: "PANELS", text: String(panels.length), share: 0.1 },
      { label: "HELD", text: held === 0 ? "nothing" : String(held), share: 0.12 },
      { label: "SCALE", text: `1:${view.scale}`, share: 0.12 },
    ],
    list: {
      label: "BAYS, PANELS IN ORDER",
      lines: [
        ...bays.map(({ id }) => `${id}: ${inBay(panels, id).join(", ") || "no panels"}`),
        ...(standing.length > 0 ? [`on their own feet: ${standing.join(", ")}`] : []),
      ],
    },
  };
};

const inBay = (panels: ConsoleLayout["panels"], bay: string): readonly string[] =>
  panels.filter(({ place }) => place.kind === "bay" && place.bay === bay).map(({ name }) => name);
