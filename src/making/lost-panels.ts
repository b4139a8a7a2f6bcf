// Panels that a console names and that could not be read at all: their files are missing, or are no panels. Each with the
// faults that say so, so that its old pack is not taken for a pack of the design as it stands.

import { resolveInclude } from "../design/resolve-include.ts";
import type { Finding, Span } from "../diagnostics/finding.ts";
import { isWithin } from "../diagnostics/within.ts";
import type { Project } from "../project.ts";

export interface LostPanel {
  /** What the console calls it. */
  readonly name: string;
  /** Where the console names it. */
  readonly span: Span;
  readonly faults: readonly Finding[];
}

/** `findings`: everything that was found in the design. */
export const lostPanels = (
  { console, panels }: Pick<Project, "console" | "panels">,
  findings: readonly Finding[],
): readonly LostPanel[] => {
  if (console === null) return [];
  const { design } = console;
  const faults = findings.filter(({ severity }) => severity === "fault");
  return design.panels
    .filter(({ as }) => !panels.some(({ name }) => name === as))
    .map(({ as, file, written: { span } }) => {
      const resolved = resolveInclude(design.file, file);
      const own = faults.filter(
        ({ span: at }) =>
          isWithin(at, span) || (resolved.kind === "resolved" && at.file === resolved.path),
      );
      // Whatever kept it out, it is out: then all that is wrong is named.
      return { name: as, span, faults: own.length > 0 ? own : faults };
    });
};
