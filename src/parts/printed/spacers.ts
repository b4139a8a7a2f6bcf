// The printed spacers of a stack: black outside, white inside where there is light in them, in pieces where the bed is
// smaller. One for each layer with `print`.

import type { StockDesign, WorkshopDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import type { MetricThread } from "../../standards/metric-fasteners.ts";
import { NO_SPLIT, NO_WHITE_STOCK } from "./codes.ts";
import { type Joint, jointAt, jointScrew, leastJointDepth } from "./joint.ts";
import { type LayeredBody, piecesOf } from "./pieces.ts";
import {
  isPrinted,
  type PrintedContext,
  type PrintedMaker,
  printerFor,
} from "./printed-context.ts";
import type { PrintedFacts } from "./printed-facts.ts";
import type { PrintedPart, PrintedParts } from "./printed-part.ts";
import { withoutSlivers } from "./slivers.ts";
import { spacerFacts } from "./spacer-facts.ts";
import { linerSolid, spacerSolid, whiteSolid } from "./spacer-layers.ts";
import { type SpacerPlan, spacerPlan } from "./spacer-plan.ts";

export const spacersOf: PrintedMaker = (layout, context): PrintedParts => {
  const made = layout.layers.flatMap((layer) =>
    layer.kind === "spacer" && layer.stock !== null
      ? [spacerOf({ layout, layer, stock: layer.stock, context })]
      : [],
  );
  return {
    parts: made.flatMap(({ parts }) => parts),
    findings: made.flatMap(({ findings }) => findings),
  };
};

interface SpacerScene {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly stock: StockDesign;
  readonly context: PrintedContext;
}

const spacerOf = (scene: SpacerScene): PrintedParts => {
  const { layout, layer, stock, context } = scene;
  const printer = printerFor(layer.id, context);
  const isLit = layer.design.kind === "spacer" && layer.design.lighting !== null;
  const inside = isLit ? insideOf(scene) : { how: "none" as const, white: null, findings: [] };
  const { plan, findings } = spacerPlan({
    layout,
    layer,
    stock,
    printer,
    context,
    lining: inside.white === null || inside.how === "paint" ? "none" : inside.how,
  });
  if (plan === null) return { parts: [], findings: [...inside.findings, ...findings] };
  const joined = jointsOf(plan, context);
  const facts = { ...spacerFacts(plan, joined.joints), inside: inside.how };
  const main = spacerPart(plan, { facts, joints: joined.joints, white: inside.white });
  const liners =
    inside.how === "liner" && inside.white !== null ? linersOf(plan, inside.white) : [];
  const swept = [main, ...liners].map(withoutSlivers);
  return {
    parts: swept.flatMap(({ parts }) => parts),
    findings: [
      ...inside.findings,
      ...findings,
      ...joined.findings,
      ...swept.flatMap((part) => part.findings),
    ],
  };
};

interface Inside {
  readonly how: "white-body" | "liner" | "paint" | "none";
  readonly white: StockDesign | null;
  readonly findings: readonly Finding[];
}

/** As the workshop has it; without white stock to print, paint. */
const insideOf = ({ layer, context }: SpacerScene): Inside => {
  const how = context.workshop?.inside ?? "paint";
  if (how === "paint") return { how, white: null, findings: [] };
  const white = whiteStock(context.workshop, context);
  if (white !== null) return { how, white, findings: [] };
  const workshop = context.workshop;
  return {
    how: "paint",
    white: null,
    findings: [
      finding(NO_WHITE_STOCK, {
        message: `The inside of ${layer.id} is to be white by a ${how === "liner" ? "liner" : "second body"}, and the workshop has no white filament. Add one to stock, white-petg: { material: petg, colour: white }, or write inside: paint.`,
        span: workshop === null ? layer.design.written.span : spanOf(workshop.written, "inside"),
        subjects: [layer.id],
      }),
    ],
  };
};

const whiteStock = (
  workshop: WorkshopDesign | null,
  { catalogue }: PrintedContext,
): StockDesign | null =>
  [...Object.values(workshop?.stock ?? {}), ...catalogue.stock.values()].find(
    (stock) => isPrinted(stock) && stock.colour.toLowerCase().includes("white"),
  ) ?? null;

const jointsOf = (
  plan: SpacerPlan,
  context: PrintedContext,
): { readonly joints: readonly Joint[]; readonly findings: readonly Finding[] } => {
  const { heights, layer, layout, printer, wall } = plan;
  const thread = layout.design.fixings?.screws ?? "m3";
  const screw = jointScrew(thread);
  if (screw === null)
    return { joints: [], findings: plan.bands.length > 0 ? [noJointScrew(plan, thread)] : [] };
  const isTooThin = heights.front - heights.rear < leastJointDepth(screw);
  if (plan.bands.length > 0 && isTooThin)
    return {
      joints: [],
      findings: [
        finding(NO_SPLIT, {
          message: `${layer.id} is larger than the printer's bed and too thin for a lapped joint: a screw's head and a wall under it take ${leastJointDepth(screw)} mm in all.`,
          span: layer.design.written.span,
          subjects: [layer.id],
          measured: { value: heights.front - heights.rear, unit: "mm" },
          limit: { value: leastJointDepth(screw), unit: "mm" },
          source: { kind: "geometry", name: "a lapped joint with sunk screws" },
        }),
      ],
    };
  const options = { ...heights, layer: wall.layer, screw, printer, context };
  return {
    joints: plan.bands.map((band, index) => jointAt(band, index + 1, options)),
    findings: [],
  };
};

const noJointScrew = ({ layer, layout }: SpacerPlan, thread: MetricThread): Finding =>
  finding(NO_SPLIT, {
    message: `${layer.id} is larger than the printer's bed, and its halves would be held by ${thread} screws, whose heads no table here holds: M3 to M6 do. Write fixings: { screws: m3 }.`,
    span: layout.design.fixings?.written.span ?? layer.design.written.span,
    subjects: [layer.id],
    source: { kind: "standard", name: "ISO 4762, heads of M3 to M6" },
  });

const spacerPart = (
  plan: SpacerPlan,
  made: {
    readonly facts: PrintedFacts;
    readonly joints: readonly Joint[];
    readonly white: StockDesign | null;
  },
): PrintedPart => {
  const { layout, layer, stock } = plan;
  const isLined = made.facts.inside === "white-body";
  const white = made.white;
  const lit = plan.areas.filter(({ lanes }) => lanes.length > 0);
  const bodies: readonly LayeredBody[] = [
    { name: layer.id, colour: stock.colour, solid: spacerSolid(plan, isLined) },
    ...(isLined && white !== null
      ? lit.map((area, index) => ({
          name: `white.${index + 1}`,
          colour: white.colour,
          solid: whiteSolid(area, plan),
        }))
      : []),
  ];
  return {
    kind: "printed-part",
    id: `${layout.name}-${layer.id}`,
    panel: layout.name,
    title: `${layout.design.title}, ${layer.id}`,
    revision: layout.design.revision,
    role: "spacer",
    owner: layer.id,
    stock,
    printer: plan.printer,
    bodies,
    bedSide: "rear",
    facts: made.facts,
    pieces: piecesOf(bodies, made.joints, contourExtent(plan.outline)),
    span: layer.design.written.span,
  };
};

/** One liner for each lit area. */
const linersOf = (plan: SpacerPlan, white: StockDesign): readonly PrintedPart[] => {
  const { layout, layer } = plan;
  return plan.areas
    .filter(({ lanes }) => lanes.length > 0)
    .flatMap((area, index) => {
      const solid = linerSolid(area, plan);
      if (solid === null) return [];
      const bodies = [{ name: "liner", colour: white.colour, solid }];
      const facts = spacerFacts({ ...plan, areas: [], bosses: [], pockets: [], rooms: [] }, []);
      return [
        {
          kind: "printed-part" as const,
          id: `${layout.name}-${layer.id}-liner-${index + 1}`,
          panel: layout.name,
          title: `${layout.design.title}, white liner ${index + 1} of ${layer.id}`,
          revision: layout.design.revision,
          role: "liner" as const,
          owner: layer.id,
          stock: white,
          printer: plan.printer,
          bodies,
          bedSide: "rear" as const,
          facts: {
            ...facts,
            box: { ...facts.box, plan: contourExtent(area.region.outline) },
            walls: [],
            floor: null,
            rim: null,
            inside: "liner" as const,
          },
          pieces: piecesOf(bodies, [], contourExtent(area.region.outline)),
          span: layer.design.written.span,
        },
      ];
    });
};
