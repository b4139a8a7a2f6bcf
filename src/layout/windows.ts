// Windows: openings that belong to no component, through the layers that they name.

import type { MarkingDesign } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { Point } from "../geometry/contour.ts";
import { extent } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { roundedRectangle } from "../geometry/shapes.ts";
import { UNKNOWN_LAYER, WINDOW_CORNER, WINDOW_NOWHERE } from "./codes.ts";
import { unknownName } from "./context.ts";
import { contourCutOut } from "./cut-outs.ts";
import { memberIds } from "./member-ids.ts";
import type { CutOut } from "./panel-layout.ts";
import type { PlacesOf } from "./place-finder.ts";
import type { BareLayer } from "./stack.ts";

type WindowDesign = MarkingDesign & { readonly kind: "window" };

export interface PlacedWindows {
  readonly cutOuts: readonly CutOut[];
  readonly findings: readonly Finding[];
}

export const windowsOf = (
  markings: readonly MarkingDesign[],
  layers: readonly BareLayer[],
  placesOf: PlacesOf,
): PlacedWindows => {
  const cutOuts: CutOut[] = [];
  const findings: Finding[] = [];
  for (const marking of markings) {
    if (marking.kind !== "window") continue;
    const ats = placesOf(marking.at, marking.id, marking.pattern);
    const wrong = windowFindings(marking, layers);
    findings.push(...wrong);
    if (ats !== null && wrong.length === 0) cutOuts.push(...windowCutOuts(marking, ats, layers));
  }
  return { cutOuts, findings };
};

const windowFindings = (window: WindowDesign, layers: readonly BareLayer[]): readonly Finding[] => {
  const known = layers.map(({ id }) => id);
  const span = spanOf(window.written, "layers");
  const unknown = window.layers
    .filter((name) => !known.includes(name))
    .map((name) => unknownName(UNKNOWN_LAYER, name, { span, known, subjects: [window.id] }));
  const most = Math.min(window.width, window.height) / 2;
  const corner = window.corner > most ? [roundCorner(window, most)] : [];
  const isNowhere = unknown.length === 0 && !layers.some((layer) => isOpened(layer, window));
  return [...unknown, ...corner, ...(isNowhere ? [nowhere(window, layers)] : [])];
};

const roundCorner = (window: WindowDesign, most: number): Finding =>
  finding(WINDOW_CORNER, {
    message: `${window.id}: a corner of ${decimal(window.corner, 3)} mm on a window whose shorter side takes ${decimal(most, 3)} mm. corner: ${decimal(most, 3)} mm rounds it fully.`,
    span: spanOf(window.written, "corner"),
    subjects: [window.id],
    measured: { value: window.corner, unit: "mm" },
    limit: { value: most, unit: "mm" },
    source: { kind: "geometry", name: "half the shorter side" },
  });

const nowhere = (window: WindowDesign, layers: readonly BareLayer[]): Finding => {
  const sheets = layers.filter(({ kind }) => kind === "sheet").map(({ id }) => id);
  return finding(WINDOW_NOWHERE, {
    message: `${window.id} opens ${window.layers.join(" and ")}, where there is no sheet to open. The sheets are ${sheets.join(", ")}.`,
    span: spanOf(window.written, "layers"),
    subjects: [window.id],
  });
};

const isOpened = (layer: BareLayer, window: WindowDesign): boolean =>
  layer.kind === "sheet" && window.layers.includes(layer.id);

const windowCutOuts = (
  window: WindowDesign,
  ats: readonly Point[],
  layers: readonly BareLayer[],
): readonly CutOut[] => {
  const [across, up] = [window.width / 2, window.height / 2];
  const opened = layers.filter((layer) => isOpened(layer, window));
  return memberIds(window.id, window.pattern).flatMap((id, index) => {
    const at = ats[index];
    if (at === undefined) return [];
    const box = extent(at.x - across, at.y - up, at.x + across, at.y + up);
    const contour = roundedRectangle(box, window.corner);
    return opened.map((layer) =>
      contourCutOut(id, {
        centre: at,
        contour,
        purpose: "window",
        layer: layer.id,
        span: window.written.span,
        gauge: null,
      }),
    );
  });
};
