// A component that is moved on its own panel for something that is told of the console: the place is tried against its panel
// as any move is, and by whoever asks. Takes the panel, the component's id, the ways to try; gives the remedy, or none.

import type { Remedy } from "../../diagnostics/finding.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { firstMove, type Way } from "../move-remedy.ts";
import type { Shift } from "../place-trouble.ts";
import type { ConsoleFacts } from "./console-rule.ts";

export interface PanelMove {
  readonly panel: PlacedPanel;
  readonly component: PlacedComponent;
  readonly ways: readonly Way[];
  readonly suits: (shift: Shift) => boolean;
}

export const componentMoves = (
  { panel, component, ways, suits }: PanelMove,
  { workshop, edit, texts }: ConsoleFacts,
): readonly Remedy[] =>
  firstMove(ways, { component, suits }, { layout: panel.layout, workshop, edit, texts });
