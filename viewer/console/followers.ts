// Which panels of a bay are written to stand behind which: whoever moves the first moves them all.

import type { ConsoleLayout, PlacedPanel } from "../../src/layout/console/console-layout.ts";

/** In the order in which they stand; without the panel itself. */
export const followersOf = (layout: ConsoleLayout, name: string): readonly PlacedPanel[] => {
  const direct = layout.panels.filter((panel) => leaderOf(layout, panel) === name);
  return direct.flatMap((panel) => [panel, ...followersOf(layout, panel.name)]);
};

/** The panel behind which one stands by the design's words; null where it says its own module. */
export const leaderOf = (layout: ConsoleLayout, panel: PlacedPanel): string | null => {
  const { use, place } = panel;
  if (place.kind !== "bay" || use.module !== null) return null;
  if (use.after !== null) return use.after;
  const before = layout.panels
    .filter(
      (other) =>
        other.place.kind === "bay" &&
        other.place.bay === place.bay &&
        other.use.written.span.start < use.written.span.start,
    )
    .toSorted((a, b) => a.use.written.span.start - b.use.written.span.start);
  return before.at(-1)?.name ?? null;
};
