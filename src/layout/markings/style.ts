// How the panel letters: face, cap height, stroke and spacing, with what a legend says of its own laid over it.

import type { LegendDesign, LetteringDesign } from "../../design/panel-design.ts";
import type { MachineDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { Face } from "../../lettering/face.ts";
import { UNKNOWN_FONT } from "../codes.ts";
import { type LayoutContext, unknownName } from "../context.ts";

export interface TextStyle {
  readonly face: Face;
  readonly height: Mm;
  readonly gap: Mm;
  /** Width of a single-line letter as the machine cuts it. */
  readonly cutWidth: Mm;
}

/** Lines, ticks and borders are drawn at this share of the cap height: light on dark 1/7 to 1/8 (DOD-HDBK-791, 6-5.3.2). */
const LINE_SHARE = 1 / 7.5;
/** Width of a single-line stroke where no machine is named: a fine engraving spot, common practice. */
const UNKNOWN_SPOT = 0.15;

export const lineWidth = (style: TextStyle): Mm => mm(style.height * LINE_SHARE);

/** The panel's own style; null where its font is unknown, with a finding. */
export const panelStyle = (
  lettering: LetteringDesign,
  context: LayoutContext,
  options: { readonly machine: MachineDesign | null; readonly span: Finding["span"] },
): { readonly style: TextStyle | null; readonly findings: readonly Finding[] } => {
  const face = context.lettering.faces.get(lettering.font);
  if (face === undefined) {
    const known = context.lettering.faces.keys();
    const miss = unknownName(UNKNOWN_FONT, lettering.font, { span: options.span, known });
    return { style: null, findings: [miss] };
  }
  const style = {
    face,
    height: lettering.height,
    gap: lettering.gap,
    cutWidth: cutWidthOf(options.machine),
  };
  return { style, findings: [] };
};

/** A single line comes out as wide as the beam's spot or the finest tool. */
export const cutWidthOf = (machine: MachineDesign | null): Mm => {
  switch (machine?.kind) {
    case "co2-laser":
    case "diode-laser":
      return machine.spot;
    case "router":
      return mm(Math.min(...machine.tools.map((tool) => tool.diameter)));
    case "drill-bench":
    case "printer":
    case undefined:
      return mm(UNKNOWN_SPOT);
  }
};

/** The style of one legend: its own height, font and gap over the panel's. */
export const legendStyle = (
  legend: LegendDesign,
  panel: TextStyle,
  context: LayoutContext,
): { readonly style: TextStyle; readonly findings: readonly Finding[] } => {
  const face = legend.font === null ? panel.face : context.lettering.faces.get(legend.font);
  const style = {
    ...panel,
    face: face ?? panel.face,
    height: legend.height ?? panel.height,
    gap: legend.gap ?? panel.gap,
  };
  if (face !== undefined) return { style, findings: [] };
  const known = context.lettering.faces.keys();
  const span = spanOf(legend.written, "font");
  return { style, findings: [unknownName(UNKNOWN_FONT, legend.font ?? "", { span, known })] };
};
