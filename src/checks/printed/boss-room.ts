// A boss that a pocket or the edge of its part cuts into.

import {
  type CodeEntry,
  finding,
  type LimitSource,
  type Remedy,
} from "../../diagnostics/finding.ts";
import { containsPoint } from "../../geometry/containment.ts";
import type { Contour, Point } from "../../geometry/contour.ts";
import { pointToContour } from "../../geometry/distance.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { BossFact } from "../../parts/printed/printed-facts.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import { spacerOutline } from "../../parts/printed/spacer-outline.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import { firstMove } from "../move-remedy.ts";
import { awayWays } from "../move-ways.ts";
import type { Shift } from "../place-trouble.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { twoLines, twoLinesSource } from "./two-lines.ts";

const entry: CodeEntry = {
  code: "checks/boss-room",
  severity: "query",
  title: "a boss without room for its wall",
  why: "A heat-set insert needs plastic all round, as much as its datasheet says; a boss is made about twice as wide as the insert where there is room. A pocket or the edge that cuts into it lets the insert turn or break out. Move the screw or the component.",
  example: `stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm }
fixings: { screws: m3, dowels: 3 mm, at: [{ x: 14 mm, y: 30 mm }, { x: 106 mm, y: 30 mm }, { x: 60 mm, y: 52.5 mm }] }
components:
  a: { part: pot-16, at: { x: 60 mm, y: 40 mm } }`,
};

export const bossRoom: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts.flatMap((part) =>
      part.facts.bosses.flatMap((boss) => {
        const { needed, source } = leastWall(boss, part, facts);
        if (!isUnder(boss.wall, needed)) return [];
        const fixing = facts.layout.fixings.find(({ id }) => id === boss.owner);
        return [
          finding(entry, {
            message: `${boss.owner}: ${leftOf(boss, needed)} of ${part.owner} is left round its hole; ${millimetres(needed, boss.wall)} is wanted, ${millimetres(needed - boss.wall, 0)} more.`,
            span: fixing?.span ?? part.span,
            subjects: [boss.owner],
            measured: measureMm(boss.wall),
            limit: measureMm(needed),
            source,
            remedies: awayFromBoss(boss, { needed, part, facts }),
          }),
        ];
      }),
    ),
};

interface Room {
  readonly needed: number;
  readonly part: PrintedPart;
  readonly facts: PanelFacts;
}

/** Where it is a component's pocket that cuts in, and not the edge. */
const awayFromBoss = (boss: BossFact, { needed, part, facts }: Room): readonly Remedy[] => {
  const { layout } = facts;
  const { at, wall } = boss;
  const pockets = part.facts.pockets.map((pocket) => ({
    ...pocket,
    room: Math.min(...pocket.contours.map((one) => roomBeside(at, one))),
  }));
  const [nearest] = pockets.toSorted((a, b) => a.room - b.room);
  const component = layout.components.find(({ id }) => id === nearest?.owner);
  const outline = spacerOutline(layout);
  if (nearest === undefined || component === undefined || outline === null) return [];
  if (!containsPoint(outline, at) || pointToContour(at, outline).gap <= nearest.room) return [];
  const wanted = nearest.room + needed - wall;
  const suits = ({ x, y }: Shift): boolean =>
    pockets
      .filter(({ owner }) => owner === component.id)
      .flatMap(({ contours }) => contours)
      .every((one) => !isUnder(roomBeside(at, placedContour(one, placement(x, y))), wanted));
  return firstMove(awayWays(at, component.at), { component, suits }, facts);
};

/** Negative inside. */
const roomBeside = (at: Point, pocket: Contour): number => {
  const { gap } = pointToContour(at, pocket);
  return containsPoint(pocket, at) ? -gap : gap;
};

/** A negative wall is how far what cuts in reaches past the hole's own edge. */
const leftOf = ({ wall }: BossFact, needed: number): string =>
  wall < 0 ? `nothing (${millimetres(wall)})` : millimetres(wall, needed);

/** Least wall round a heat-set insert. A boss twice as wide as its insert has 2.6 mm; makers' least is less. */
const WALL: HouseRule = {
  key: "boss-wall",
  usual: 1.5,
  name: "1.5 mm of plastic round an insert (from memory, unverified)",
};

interface LeastWall {
  readonly needed: number;
  readonly source: LimitSource;
}

const leastWall = (boss: BossFact, part: PrintedPart, facts: PanelFacts): LeastWall => {
  if (boss.kind === "insert") {
    const { limit, source } = houseLimit(facts, WALL);
    return { needed: limit, source };
  }
  return {
    needed: twoLines(part.printer),
    source: twoLinesSource(part.printer),
  };
};
