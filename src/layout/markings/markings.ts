// Everything read on the face: scales and legends of components in order, then what stands by itself or goes round a group.

import type { PanelDesign } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { type Extent, extent, joinedExtent } from "../../geometry/extent.ts";
import { madeOnceWith } from "../../geometry/made-once.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { Face } from "../../lettering/face.ts";
import type { LayoutContext } from "../context.ts";
import type { CutOut, PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import type { PlaceFinder } from "../place-finder.ts";
import type { BareLayer } from "../stack.ts";
import { freeMarking } from "./free-markings.ts";
import type { LegendScene } from "./legend-scene.ts";
import { componentLegends, type PlacedLegends } from "./legends.ts";
import { componentScale } from "./scales.ts";
import { panelStyle, type TextStyle } from "./style.ts";

export interface MarkingScene {
  readonly design: PanelDesign;
  readonly context: LayoutContext;
  readonly layers: readonly BareLayer[];
  readonly components: readonly PlacedComponent[];
  /** A component's own cut-outs: its letters stand clear of them. */
  readonly holesOf: (component: PlacedComponent) => readonly CutOut[];
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
  const legends = sceneOf(styled.style.face, {
    ...styled.style,
    ...scene.context,
    layer: face.id,
  });
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

const sceneOf = madeOnceWith(
  (face: Face, given: Omit<TextStyle, "face"> & LayoutContext & Pick<LegendScene, "layer">) => {
    const { height, gap, cutWidth, layer, workshop, catalogue, lettering } = given;
    const style: TextStyle = { face, height, gap, cutWidth };
    return { style, layer, context: { workshop, catalogue, lettering } };
  },
);

/** Scales and legends of the components; gives each component's reach with them, by id and by entry. */
const componentMarkings = (
  { components, holesOf }: MarkingScene,
  legends: LegendScene,
  into: { readonly markings: PlacedMarking[]; readonly findings: Finding[] },
): ReadonlyMap<string, Extent> => {
  const reaches = new Map<string, Extent>();
  for (const component of components) {
    const { markings, findings, reach } = lettered(component, {
      scene: legends,
      holes: holesOf(component),
    });
    into.markings.push(...markings);
    into.findings.push(...findings);
    reaches.set(component.id, reach);
    const group = reaches.get(component.entry);
    reaches.set(component.entry, group === undefined ? reach : joinedExtent(group, reach));
  }
  return reaches;
};

/** A component's scale, then its legends clear of that and of what is open in the lettered layer. */
const lettered = madeOnceWith(
  (
    component: PlacedComponent,
    given: { readonly scene: LegendScene; readonly holes: readonly CutOut[] },
  ): PlacedLegends => {
    const { scene, holes } = given;
    const scale = componentScale(component, scene);
    const open = holes.filter(({ layer }) => layer === scene.layer);
    const scaled = [
      faceReach(component),
      ...open.map(({ contour }) => contourExtent(contour)),
      ...scale.markings.map(({ box }) => box),
    ].reduce(joinedExtent);
    const words = componentLegends(component, scaled, scene);
    return {
      markings: [...scale.markings, ...words.markings],
      findings: [...scale.findings, ...words.findings],
      reach: words.reach,
    };
  },
);

const faceReach = ({ face, at }: PlacedComponent): Extent =>
  face.length === 0 ? extent(at.x, at.y, at.x, at.y) : face.map(contourExtent).reduce(joinedExtent);
