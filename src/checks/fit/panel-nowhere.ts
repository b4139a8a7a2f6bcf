// A panel of the console that stands nowhere in it: it is made, and nothing round it can be judged.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { BayRule } from "./console-rule.ts";

const entry: CodeEntry = {
  code: "fit/panel-nowhere",
  severity: "note",
  title: "a panel without a place in its console",
  why: "Its pack is written like any other. Whether it fits, is reached and can be read from the seat is known once it stands in a bay or, beside the bays, on a stand of its own.",
  example: "panels:\n  - { file: panels/a.yaml, as: a }",
};

export const panelNowhere: BayRule = {
  entry,
  judge: ({ layout }) =>
    layout.design.panels
      .filter(({ bay, stand }) => bay === null && stand === null)
      .map(({ as, written }) =>
        finding(entry, {
          message: `${as} stands in no bay and on no stand: its fit is not judged. Write bay: with a module, or stand: { at: [300, -420, 620], along: [1, 0, 0] }.`,
          span: written.span,
          subjects: [as],
        }),
      ),
};
