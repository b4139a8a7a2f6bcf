// The door of this folder: a console as written becomes a console in millimetres. What can't be placed is left out with one
// finding; everything else stands all the same, so that it can still be judged.

import type { Catalogue } from "../../catalogue/record.ts";
import { blankingName } from "../../design/blanking-name.ts";
import type { ConsoleDesign } from "../../design/console-design.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import type { Mesh } from "../../geometry/solid/mesh.ts";
import { laidBays } from "./bays.ts";
import type { ConsoleLayout } from "./console-layout.ts";
import { posedOperator } from "./operator-pose.ts";
import { type LaidPanel, standingPanels } from "./standing-panels.ts";
import { surroundingsOf } from "./surroundings.ts";

export interface ConsoleContext {
  readonly catalogue: Catalogue;
  /** Uses and blanking panels in the order of the text. */
  readonly panels: readonly LaidPanel[];
  /** Meshes of the files that obstacles name, by path as written. */
  readonly meshes: ReadonlyMap<string, Mesh>;
}

export interface LaidConsole {
  readonly layout: ConsoleLayout;
  readonly findings: readonly Finding[];
}

export const layoutConsole = (design: ConsoleDesign, context: ConsoleContext): LaidConsole => {
  const { catalogue, panels, meshes } = context;
  const bare = laidBays(Object.values(design.bays), catalogue.mounts);
  const { envelope, obstacles } = design;
  const round = surroundingsOf({ envelope, obstacles, meshes });
  const named = new Set([...Object.keys(design.bays), ...unreadBays(design, panels)]);
  const { unreadPanels: unread } = design;
  const all = [...panels, ...unmadeBlankings(design, panels)].toSorted(
    (a, b) => a.use.written.span.start - b.use.written.span.start,
  );
  const placed = standingPanels(all, { bays: bare.bays, named, unread });
  return {
    layout: {
      kind: "console-layout",
      name: design.name,
      design,
      bays: placed.bays,
      panels: placed.panels,
      operator: design.operator === null ? null : posedOperator(design.operator),
      envelope: round.envelope,
      obstacles: round.obstacles,
      lost: placed.lost,
    },
    findings: [...bare.findings, ...placed.findings, ...round.findings],
  };
};

/** What is wrong with them has been said, but for those of a bay that is not there: they have no layout and no place. */
const unmadeBlankings = (
  { blankings, bays }: ConsoleDesign,
  panels: readonly LaidPanel[],
): readonly LaidPanel[] =>
  blankings.flatMap((use) =>
    bays[use.bay ?? ""] === undefined ||
    panels.some(({ use: { written } }) => written === use.written)
      ? []
      : [
          {
            name: blankingName(use),
            kind: "blanking",
            use: { ...use, stand: null, loop: null },
            layout: null,
          },
        ],
  );

/** Where the map itself could not be read, every bay that a panel names may have been in it. */
const unreadBays = (
  { unreadBays: unread, unread: keys }: ConsoleDesign,
  panels: readonly LaidPanel[],
): readonly string[] =>
  keys.includes("bays") ? panels.flatMap(({ use }) => (use.bay === null ? [] : [use.bay])) : unread;
