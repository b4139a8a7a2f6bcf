// What the blanking panels of a console are to be: a name, a mount and a stock for each. Without a stock of its own one is cut
// from the sheet that lies on the rails in the first panel of its bay, so that it is clamped as its neighbours are.

import type { Mount } from "../../catalogue/mount.ts";
import { blankingName } from "../../design/blanking-name.ts";
import type { BlankingUse, ConsoleDesign } from "../../design/console-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { UNKNOWN_BAY } from "../../layout/console/codes-of-console.ts";
import { unknownName } from "../../layout/context.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { seatedLayer } from "../../layout/seated-layer.ts";
import type { BlankingRequest } from "./blanking-panel.ts";
import { NO_BLANKING_STOCK } from "./codes.ts";

export interface ConsolePanels {
  readonly panels: readonly { readonly name: string; readonly layout: PanelLayout | null }[];
  readonly mounts: ReadonlyMap<string, Mount>;
}

export interface BlankingRequests {
  readonly requests: readonly BlankingRequest[];
  readonly findings: readonly Finding[];
}

export const blankingRequests = (
  design: ConsoleDesign,
  { panels, mounts }: ConsolePanels,
): BlankingRequests => {
  const findings: Finding[] = [];
  const requests = design.blankings.flatMap((use) => {
    const name = blankingName(use);
    const bay = use.bay === null ? undefined : design.bays[use.bay];
    if (bay === undefined) {
      findings.push(...noBay(use, name, design));
      return [];
    }
    const mount = mounts.get(bay.mount);
    // The bay says so itself.
    if (mount === undefined) return [];
    const sheet = use.sheet ?? neighbourSheet(use, design, panels);
    if (sheet === null) {
      if (!mayHaveNeighbour(use, design, panels)) findings.push(noStock(use, name));
      return [];
    }
    const { workshop, file } = design;
    return [{ use, name, mount, sheet, workshop, file }];
  });
  return { requests, findings };
};

/** A panel of its bay that could not be read or laid out, and has its finding, may be the one with the sheet. */
const mayHaveNeighbour = (
  { bay }: BlankingUse,
  design: ConsoleDesign,
  panels: ConsolePanels["panels"],
): boolean =>
  design.unreadPanels.length > 0 ||
  design.panels.some((use) => use.bay === bay && !hasLayout(use.as, panels));

const hasLayout = (wanted: string, panels: ConsolePanels["panels"]): boolean =>
  panels.some(({ name, layout }) => name === wanted && layout !== null);

/** A bay that could not be read has its finding: nothing more is said of who names it. */
const noBay = (use: BlankingUse, name: string, design: ConsoleDesign): readonly Finding[] => {
  const bay = use.bay ?? "";
  if (design.unread.includes("bays") || design.unreadBays.includes(bay)) return [];
  const known = Object.keys(design.bays);
  return [
    unknownName(UNKNOWN_BAY, bay, { span: spanOf(use.written, "bay"), known, subjects: [name] }),
  ];
};

const noStock = (use: BlankingUse, name: string): Finding =>
  finding(NO_BLANKING_STOCK, {
    message: `${name} stands in bay ${use.bay} with no panel to take its sheet from. Write sheet: aluminium-2, or another stock of the workshop.`,
    span: use.written.span,
    subjects: [name],
  });

const neighbourSheet = (
  use: BlankingUse,
  design: ConsoleDesign,
  panels: ConsolePanels["panels"],
): string | null => {
  const neighbours = design.panels.filter(({ bay }) => bay === use.bay).map(({ as }) => as);
  const found = neighbours.flatMap((name) => {
    const layout = panels.find((panel) => panel.name === name)?.layout ?? null;
    const seated = layout === null ? null : seatedLayer(layout);
    return seated?.design.kind === "sheet" ? [seated.design.sheet] : [];
  });
  return found[0] ?? null;
};
