// A window that the design drew, and the remedy that gives it rounder corners.

import { entryName } from "../../design/entry-name.ts";
import type { MarkingDesign } from "../../design/panel-design.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { keyRemedy } from "../key-remedy.ts";
import type { PanelFacts } from "../rule.ts";

export interface DesignedWindow {
  readonly design: MarkingDesign & { readonly kind: "window" };
  /** Its place among the design's markings as they were read. */
  readonly index: number;
}

/** null where the opening is a part's own: its shape is the maker's. */
export const designedWindow = (owner: string, layout: PanelLayout): DesignedWindow | null => {
  const entry = entryName(owner);
  const index = layout.design.markings.findIndex(({ id }) => id === entry);
  const design = layout.design.markings[index];
  return design?.kind === "window" ? { design, index } : null;
};

/** Markings that could not be read are not counted, so that a key is only added where all of them were. */
export const windowRemedy = (
  { design, index }: DesignedWindow,
  corner: string,
  facts: PanelFacts,
): readonly Remedy[] => {
  const span = design.written.keys["corner"];
  const title = `corner: ${corner} (${design.id})`;
  if (span !== undefined) return [{ title, edits: [facts.edit(span, corner)] }];
  const path = ["markings", `${index}`, "window"];
  const { edits } = keyRemedy(facts, {
    file: design.written.span.file,
    path,
    key: "corner",
    value: corner,
  });
  const isOwn = edits.every(
    ({ start }) => start >= design.written.span.start && start <= design.written.span.end,
  );
  return [{ title, edits: isOwn ? edits : [] }];
};
