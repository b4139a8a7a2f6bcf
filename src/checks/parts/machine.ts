// Can the machine make the sheet part: its stock, its bed, its finest hole, its tightest corner.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Span } from "../../diagnostics/finding.ts";
import { tightestInsideRadius } from "../../geometry/corners.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { LayerLayout } from "../../layout/panel-layout.ts";
import type { Operation, SheetPart } from "../../parts/sheet-part.ts";
import { isOver, isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, measureOf, millimetres } from "../words.ts";

const stockCannot: CodeEntry = {
  code: "checks/stock-by-machine",
  severity: "fault",
  title: "stock that the machine must not or cannot cut",
  why: "Some pairs don't work and some are dangerous: vinyl and PVC give chlorine under a laser, ABS and polycarbonate burn, a blue diode passes through clear acrylic, and metal wants a router or a drill.",
  example: "use: { face: laser }",
};

const stockTry: CodeEntry = {
  code: "checks/stock-untried",
  severity: "query",
  title: "stock that the machine may or may not cut",
  why: "It depends on colour, thickness and power. Cut the test piece first.",
  example: "use: { face: diode }",
};

const bed: CodeEntry = {
  code: "checks/larger-than-bed",
  severity: "fault",
  title: "a part larger than the machine's bed",
  why: "The sheet with its waste must lie on the bed, turned a quarter where that helps.",
  example: "machines:\n  laser: { type: co2-laser, bed: [120, 80] }",
};

const corner: CodeEntry = {
  code: "checks/inside-corner",
  severity: "fault",
  title: "an inside corner tighter than the tool",
  why: "A round tool leaves its own radius in every inside corner. Round the corner by at least that, or give the workshop a smaller tool. Where a square part must enter, a dogbone clears the corner.",
  example:
    "machines:\n  router: { type: router, bed: [700, 500], tools: [ { diameter: 3.175 mm } ] }",
};

const sharp: CodeEntry = {
  code: "checks/sharp-corner",
  severity: "query",
  title: "a sharp inside corner in acrylic",
  why: "Cracks start in sharp inside corners. Half a millimetre of radius costs nothing on a laser.",
  example:
    "markings:\n  - window: { x: centre, y: centre, width: 20 mm, height: 10 mm, corner: 0 mm }",
};

const small: CodeEntry = {
  code: "checks/hole-below-machine",
  severity: "fault",
  title: "a hole smaller than the machine can cut",
  why: "A router can't make a hole narrower than its tool, a laser's spot burns anything near its own width, and a drill bench has the drills that it has.",
  example: "machines:\n  router: { type: router, bed: [700, 500], tools: [ { diameter: 6 mm } ] }",
};

interface Made {
  readonly part: SheetPart;
  readonly layer: LayerLayout;
  readonly machine: MachineDesign;
}

const made = (facts: PanelFacts): readonly Made[] =>
  facts.sheetParts.flatMap((part) => {
    const layer = facts.layout.layers.find(({ id }) => id === part.layer);
    const machine = part.setUps[0]?.machine;
    return layer === undefined || machine === undefined || layer.machine === null
      ? []
      : [{ part, layer, machine }];
  });

const verdictRule = (entry: CodeEntry, wanted: "cannot" | "try"): Rule => ({
  entry,
  judge: (facts) =>
    made(facts).flatMap(({ part, layer, machine }) => {
      const material = facts.catalogue.materials.get(part.stock.material);
      const verdict = material?.byMachine[machine.kind];
      if (verdict?.verdict !== wanted) return [];
      return [
        finding(entry, {
          message: `${layer.id}: ${machine.id} (${machine.kind.replaceAll("-", " ")}) and ${part.stock.id}: ${verdict.why}`,
          span: spanOf(layer.design.written, "sheet"),
          subjects: [layer.id],
          measured: measureOf(1, "count"),
          limit: measureOf(0, "count"),
          source: { kind: "machine", name: machine.id },
        }),
      ];
    }),
});

export const stockByMachine = verdictRule(stockCannot, "cannot");
export const stockUntried = verdictRule(stockTry, "try");

export const largerThanBed: Rule = {
  entry: bed,
  judge: (facts) =>
    made(facts).flatMap(({ part, layer, machine }) => {
      const sheet = part.setUps[0]?.sheet;
      if (sheet === undefined) return [];
      const sizes = [extentWidth(sheet), extentHeight(sheet)].toSorted((a, b) => a - b);
      const room = [machine.bed[0], machine.bed[1]].toSorted((a, b) => a - b);
      const [short = 0, long = 0] = sizes;
      const [narrow = 0, wide = 0] = room;
      if (!isOver(short, narrow) && !isOver(long, wide)) return [];
      const [size, most] = isOver(long, wide) ? [long, wide] : [short, narrow];
      return [
        finding(bed, {
          message: `${layer.id} with its waste is ${millimetres(long)} x ${millimetres(short)}; ${machine.id} takes ${millimetres(wide)} x ${millimetres(narrow)}.`,
          span: layer.design.written.span,
          subjects: [layer.id],
          measured: measureMm(size),
          limit: measureMm(most),
          source: { kind: "machine", name: machine.id },
        }),
      ];
    }),
};

type Cut = Operation & { readonly kind: "cut" };

const innerCuts = (part: SheetPart): readonly Cut[] =>
  part.setUps.flatMap(({ operations }) =>
    operations.filter(
      (operation): operation is Cut =>
        operation.kind === "cut" && operation.process !== "cut-outer",
    ),
  );

/** The first cut of each owner that is out of bounds: members of a row count as one. */
const firstOfEachOwner = (
  facts: PanelFacts,
  one: Made,
  judgeCut: (cut: Cut, span: Span) => Finding | null,
): readonly Finding[] => {
  const found = new Map<string, Finding>();
  for (const cut of innerCuts(one.part)) {
    const cutOut = one.layer.cutOuts.find(({ id }) => id === cut.feature);
    const owner = cutOut?.owner.split(".")[0] ?? cut.feature;
    const judged = found.has(owner)
      ? null
      : judgeCut(cut, cutOut?.span ?? facts.layout.design.written.span);
    if (judged !== null) found.set(owner, judged);
  }
  return [...found.values()];
};

export const insideCorner: Rule = {
  entry: corner,
  judge: (facts) =>
    made(facts).flatMap((one) => {
      const { machine } = one;
      if (machine.kind !== "router") return [];
      const radius = Math.min(...machine.tools.map(({ diameter }) => diameter)) / 2;
      return firstOfEachOwner(facts, one, (cut, span) => {
        const tightest = tightestInsideRadius(cut.contour);
        if (tightest === null || cut.contour.kind === "circle" || !isUnder(tightest, radius))
          return null;
        return finding(corner, {
          message: `${cut.feature}: an inside corner of radius ${millimetres(tightest)}; the finest tool of ${machine.id} leaves ${millimetres(radius)}.`,
          span,
          subjects: [cut.feature],
          measured: measureMm(tightest),
          limit: measureMm(radius),
          source: { kind: "machine", name: machine.id },
        });
      });
    }),
};

/** Cracks start below this radius: 0.5 mm on a laser, common practice. */
const SAFE_CORNER = 0.5;

export const sharpCorner: Rule = {
  entry: sharp,
  judge: (facts) =>
    made(facts).flatMap((one) => {
      if (!one.part.stock.material.startsWith("acrylic")) return [];
      return firstOfEachOwner(facts, one, (cut, span) => {
        const owner = one.layer.cutOuts.find(({ id }) => id === cut.feature);
        const tightest = tightestInsideRadius(cut.contour);
        // A part's own opening is the maker's shape; a window's corners are the design's.
        if (owner?.purpose !== "window" || tightest === null || !isUnder(tightest, SAFE_CORNER))
          return null;
        return finding(sharp, {
          message: `${cut.feature}: an inside corner of radius ${millimetres(tightest)} in acrylic; ${millimetres(SAFE_CORNER)} keeps cracks from starting.`,
          span,
          subjects: [cut.feature],
          measured: measureMm(tightest),
          limit: measureMm(SAFE_CORNER),
          source: {
            kind: "house-rule",
            name: "inside corners in acrylic (common practice)",
            key: "acrylic-corner",
          },
        });
      });
    }),
};

/** A beam makes clean holes from about four spots across: common practice. */
const SPOTS = 4;

const leastHole = (machine: MachineDesign): number => {
  switch (machine.kind) {
    case "co2-laser":
    case "diode-laser":
      return SPOTS * machine.spot;
    case "router":
      return Math.min(...machine.tools.map(({ diameter }) => diameter));
    case "drill-bench":
      return Math.min(...machine.drills);
    case "printer":
      return 0;
  }
};

export const holeBelowMachine: Rule = {
  entry: small,
  judge: (facts) =>
    made(facts).flatMap((one) => {
      const least = leastHole(one.machine);
      return firstOfEachOwner(facts, one, (cut, span) => {
        const box = contourExtent(cut.contour);
        const size = Math.min(extentWidth(box), extentHeight(box));
        if (!isUnder(size, least)) return null;
        return finding(small, {
          message: `${cut.feature} is ${millimetres(size)} wide; the least that ${one.machine.id} makes is ${millimetres(least)}.`,
          span,
          subjects: [cut.feature],
          measured: measureMm(size),
          limit: measureMm(least),
          source: { kind: "machine", name: one.machine.id },
        });
      });
    }),
};
