// Little wood between two holes of a rail bar, or a hole and the bar's edge or a rib's slot.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { invariant } from "../../geometry/invariant.ts";
import { decimal } from "../../geometry/number.ts";
import { downToTenth, tenths } from "../../geometry/tenths.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { thinnestWeb } from "../../parts/frame/webs.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import { measureMm } from "../words.ts";
import { fastenerThrough } from "./fastener-through.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";
import { webWords } from "./web-limit.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-rail-web",
  severity: "query",
  title: "little wood beside a hole of a rail",
  why: "Rail bars are cut from the frame's sheet, and their holes stand on the mount's pitch near the inner edge: 1.46 mm are left beside a hole of 6.6 mm, 2.9 between two. The panel's studs pull there. Less than 1 mm breaks out; a smaller hole, or a bar of metal, holds.",
  example: "frame: { type: side-console, sheet: birch-ply-12, rails: { hole: 8 mm } }",
};

const RAIL_WEB: HouseRule = {
  key: "rail-web",
  usual: 1,
  name: "1 mm beside a rail's hole (common practice: less is fragile in anything)",
};

export const railWood: FrameRule<BoardFacts> = {
  entry,
  judge: (facts) =>
    worstOf(
      facts.frame.parts
        .filter(({ role }) => role === "rail-bar")
        .flatMap((part) => thin(part, facts)),
    ),
};

const isRailHole = (feature: string): boolean => feature.startsWith("rail-hole.");

const thin = (part: FramePart, facts: BoardFacts): readonly Finding[] => {
  const { limit, source } = houseLimit(facts, RAIL_WEB);
  const web = thinnestWeb(part, { from: isRailHole, to: () => true });
  if (web === null || !isUnder(web.gap, limit)) return [];
  const { design } = facts.plan.sheet;
  const size = holeSize(part);
  // A hole that is smaller by twice the lack leaves the wood on either side of it.
  const hole = downToTenth(size - 2 * (limit - web.gap));
  const value = `${decimal(hole, 1)} mm`;
  const helps = hole >= leastHole(facts) - samePlace;
  return [
    finding(entry, {
      message: `${webWords(part.id, web, limit)}${helps ? ` hole: ${value} leaves it.` : ""}`,
      span: spanOf(design.written, "rails"),
      subjects: [part.id],
      measured: measureMm(web.gap),
      limit: measureMm(limit),
      source,
      remedies: helps ? [frameRemedy(facts, design, { group: "rails", key: "hole", value })] : [],
    }),
  ];
};

/** One number holds for every bay: what the widest fastener of any passes; some, where nothing is known of them. */
const leastHole = (facts: BoardFacts): number =>
  Math.max(
    tenths(1),
    ...allSections(facts.plan).flatMap(({ bays }) =>
      bays.map(({ layout }) => fastenerThrough(layout.mount, facts.catalogue)?.diameter ?? 0),
    ),
  );

/** All of a bar are alike. */
const holeSize = ({ holes }: FramePart): number => {
  const hole = holes.find(({ feature }) => isRailHole(feature));
  invariant(hole?.contour.kind === "circle", "a rail's holes are drilled round");
  return 2 * hole.contour.radius;
};
