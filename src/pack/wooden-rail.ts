// The wooden rail that a panel lies on: of the console's own frame, in whose bay it is. How thick it is; null where there is no
// frame, or the panel stands by itself.

import type { Mm } from "../geometry/quantity.ts";
import type { ConsoleLayout } from "../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../parts/frame/frame-part.ts";

export const woodenRail = (
  console: { readonly layout: ConsoleLayout; readonly frame: ConsoleFrame | null } | null,
  name: string,
): Mm | null => {
  const panel = console?.layout.panels.find((each) => each.name === name);
  if (console?.frame == null || panel?.place.kind !== "bay") return null;
  const { bay } = panel.place;
  const { parts, units } = console.frame;
  const unit = units.find(({ bays }) => bays.includes(bay));
  return (
    parts.find((part) => part.role === "rail-bar" && part.unit === unit?.number)?.thickness ?? null
  );
};
