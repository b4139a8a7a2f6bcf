// Panels that want the same modules: their bodies are not judged against each other, for the fault in the text speaks of them.
// What the fit leaves out by that, so that it can be said.

import { wantSameStretch } from "../../src/checks/fit/pair-groups.ts";
import type { PairFact } from "../../src/fit/fit-facts.ts";
import type { ConsoleLayout } from "../../src/layout/console/console-layout.ts";
import type { HeldBack } from "./console-messages.ts";

/** In the order of the panels in the console's text. */
export const heldBack = (
  { panels }: ConsoleLayout,
  pairs: readonly PairFact[],
): readonly HeldBack[] =>
  panels.flatMap((one, index) =>
    panels
      .slice(index + 1)
      .filter((other) => wantSameStretch(one.place, other.place))
      .map((other) => ({
        a: one.name,
        b: other.name,
        clashes: pairs.filter(
          ({ a, b, relation }) =>
            relation.kind === "clash" && isOf([a.panel, b.panel], [one.name, other.name]),
        ).length,
      })),
  );

const isOf = (panels: readonly (string | null)[], names: readonly string[]): boolean =>
  names.every((name) => panels.includes(name));
