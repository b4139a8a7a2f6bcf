// Everything read on the face: scales and legends of components in order, then what stands by itself or goes round a group.

import type { PanelDesign } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { type Extent, extent, joinedExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { LayoutContext } from "../context.ts";
import type { CutOut, PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import type { PlaceFinder } from "../place-finder.ts";
import type { BareLayer } from "../stack.ts";
import { freeMarking } from "./free-markings.ts";
import type { LegendScene } from "./legend-scene.ts";
import { componentLegends } from "./legends.ts";
import { componentScale } from "./scales.ts";
import { panelStyle } from "./style.ts";

export interface MarkingScene {
  readonly design: PanelDesign;
  readonly context: LayoutContext;
  readonly layers: readonly BareLayer[];
  readonly components: readonly PlacedComponent[];
  /** All cut-outs but those of the fixings: letters stand clear of a component's own opening. */
  readonly holes: readonly CutOut[];
  readonly finder: PlaceFinder;
}

export interface PlacedMarkings {
  readonly markings: readonly PlacedMarking[];
  readonly findings: readonly Finding[];
}

export const layoutMarkings = (scene: MarkingScene): PlacedMarkings => {
  const face = scene.layers.find((layer) => layer.kind === "sheet");
  const styled = panelStyle(scene.design.lettering, scene.context, {
    machine: face?.machine ?? null,
    span: spanOf(scene.design.written, "lettering"),
  });
  if (face === undefined || styled.style === null)
    return { markings: [], findings: styled.findings };
  const legends: LegendScene = { style: styled.style, layer: face.id, context: scene.context };
  const markings: PlacedMarking[] = [];
  const findings: Finding[] = [];
  const reaches = componentMarkings(scene, legends, { markings, findings });
  for (const design of scene.design.markings) {
    if (design.kind === "window") continue;
    const free = freeMarking(design, { ...legends, finder: scene.finder, reaches });
    markings.push(...free.markings);
    findings.push(...free.findings);
  }
  return { markings, findings };
};

/** Scales and legends of the components; gives each component's reach with them, by id and by entry. */
const componentMarkings = (
  { components, holes }: MarkingScene,
  legends: LegendScene,
  into: { readonly markings: PlacedMarking[]; readonly findings: Finding[] },
): ReadonlyMap<string, Extent> => {
  const reaches = new Map<string, Extent>();
  const opened = openedReach(holes, legends.layer);
  for (const component of components) {
    const scale = componentScale(component, legends);
    const own = opened.get(component.id);
    const scaled = [
      faceReach(component),
      ...(own === undefined ? [] : [own]),
      ...scale.markings.map(({ box }) => box),
    ].reduce(joinedExtent);
    const words = componentLegends(component, scaled, legends);
    into.markings.push(...scale.markings, ...words.markings);
    into.findings.push(...scale.findings, ...words.findings);
    reaches.set(component.id, words.reach);
    const group = reaches.get(component.entry);
    reaches.set(
      component.entry,
      group === undefined ? words.reach : joinedExtent(group, words.reach),
    );
  }
  return reaches;
};

/** How far each owner's openings in the lettered layer reach. */
const openedReach = (holes: readonly CutOut[], layer: string): ReadonlyMap<string, Extent> => {
  const opened = new Map<string, Extent>();
  for (const hole of holes) {
    if (hole.layer !== layer) continue;
    const box = contourExtent(hole.contour);
    const before = opened.get(hole.owner);
    opened.set(hole.owner, before === undefined ? box : joinedExtent(before, box));
  }
  return opened;
};

const faceReach = ({ face, at }: PlacedComponent): Extent =>
  face.length === 0 ? extent(at.x, at.y, at.x, at.y) : face.map(contourExtent).reduce(joinedExtent);
