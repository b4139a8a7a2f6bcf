// Holes of the rail bars that run into one another, their bar's edge or the ribs' slots.

import { spanOf } from "../../design/written.ts";
import {
  type CodeEntry,
  type Finding,
  type FindingParts,
  finding,
  type LimitSource,
  type Remedy,
} from "../../diagnostics/finding.ts";
import { inWords } from "../../diagnostics/nearest.ts";
import { decimal } from "../../geometry/number.ts";
import { downToTenth } from "../../geometry/tenths.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { RAIL_LIP } from "../../parts/frame/frame-practice.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { type RailHoleLimit, railHoleLimit } from "../../parts/frame/rail-hole-limit.ts";
import { railHoleSize } from "../../parts/frame/rail-holes.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-rail-hole",
  severity: "fault",
  title: "holes of the rails that run together",
  why: "Rail bars carry holes on the mount's pitch, beside their inner edge. Holes as wide as the pitch are a slit, and the panel's screws hold in nothing.",
  example: "frame: { type: side-console, sheet: birch-ply-12, rails: { hole: 12 mm } }",
};

export const railHolesMeet: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) =>
    worstOf(
      allSections(plan).flatMap((section) =>
        section.bays.flatMap((bay) => meeting(bay, section, texts)),
      ),
    ),
};

/** They leave no wood between them. */
export const holesMeet = (section: FramePlan, bay: FrameBay): boolean =>
  railHoleLimit(bay, section) !== null;

const meeting = (
  bay: FrameBay,
  section: FramePlan,
  texts: PlanFacts["texts"],
): readonly Finding[] => {
  const { design } = section;
  const limit = railHoleLimit(bay, section);
  const hole = railHoleSize(design, bay.railHoles);
  if (limit === null) return [];
  // A hole as wide as the panels' own is the least that their fasteners pass.
  const own = bay.railHoles.size;
  const words =
    own < limit.most
      ? holeTooWide(
          bay.id,
          { hole, own, limit },
          frameRemedy({ texts }, design, {
            group: "rails",
            key: "hole",
            value: `${decimal(own, 3)} mm`,
          }),
        )
      : ownHolesMeet(bay, hole, limit);
  return [
    finding(entry, {
      span: spanOf(design.written, "rails"),
      subjects: [bay.id],
      source: sourceOf(bay, limit),
      ...words,
    }),
  ];
};

/** Who set it: the mount's own columns of holes, or where the panels and the bar come. */
const sourceOf = ({ layout: { mount } }: FrameBay, { kind, names }: RailHoleLimit): LimitSource => {
  const holes = inWords(names, "and");
  switch (kind) {
    case "one-another":
      return mount.holes.kind === "columns" || mount.holes.kind === "units"
        ? { kind: "standard", name: mount.title }
        : { kind: "geometry", name: `the places of ${holes}` };
    case "inner-edge":
      return { kind: "geometry", name: `the wood from ${holes} to the bar's inner edge` };
    case "rib-slots":
      return { kind: "geometry", name: `a rib's tab and its webs beyond ${holes}` };
  }
};

type Worded = Pick<FindingParts, "message" | "measured" | "limit" | "remedies">;

/** Into what, and which first. */
const INTO: Readonly<Record<RailHoleLimit["kind"], (limit: RailHoleLimit) => string>> = {
  "one-another": ({ names, most }) =>
    `one another, ${inWords(names, "and")} first, ${decimal(most, 3)} mm from middle to middle`,
  "inner-edge": ({ names, most }) =>
    `the bar's edge, ${inWords(names)} first, its middle ${decimal(most / 2, 3)} mm from it`,
  "rib-slots": ({ names }) => `the ribs' slots, ${inWords(names)} first`,
};

/** The frame's text has widened them. */
const holeTooWide = (
  id: string,
  {
    hole,
    own,
    limit,
  }: { readonly hole: number; readonly own: number; readonly limit: RailHoleLimit },
  remedy: Remedy,
): Worded => ({
  message: `The rails of ${id}: holes of ${decimal(hole, 3)} mm run into ${INTO[limit.kind](limit)}; less than ${decimal(limit.most, 3)} mm leaves wood between them. hole: ${decimal(own, 3)} mm, as wide as the panels' own, does.`,
  measured: measureMm(hole),
  limit: measureMm(limit.most),
  remedies: [remedy],
});

/** No hole that the panels' fasteners pass would do. */
const ownHolesMeet = (bay: FrameBay, hole: number, limit: RailHoleLimit): Worded => {
  const { id, layout } = bay;
  switch (limit.kind) {
    case "one-another":
      return {
        message: `The rails of ${id}: the holes for ${inWords(limit.names, "and")}, ${millimetres(hole, limit.most)} wide, stand ${millimetres(limit.most, hole)} from middle to middle and run into one another, ${millimetres(hole - limit.most, 0)} too near. The panels that they are for stand too near to one another.`,
        measured: measureMm(limit.most),
        limit: measureMm(hole),
      };
    case "inner-edge": {
      const clear = 2 * (limit.inner - hole / 2 - RAIL_LIP);
      const apart = 2 * bay.halfClear;
      const none = layout.design.clearWidth === null ? "" : ", or none written";
      return {
        message: `The rails of ${id} are to be ${millimetres(apart, clear)} apart, and the holes for their panels, ${millimetres(2 * limit.inner)} from middle to middle, want ${millimetres(clear, apart)} at most: with ${millimetres(apart - clear, 0)} more they stand in no wood. clear-width: ${decimal(downToTenth(clear), 1)} mm does${none}.`,
        measured: measureMm(apart),
        limit: measureMm(clear),
      };
    }
    case "rib-slots":
      return {
        message: `The rails of ${id}: beside holes of ${millimetres(hole, limit.most)}, ${inWords(limit.names)} first, the ribs' slots have room where they are less than ${millimetres(limit.most, hole)}, ${millimetres(hole - limit.most, 0)} less.`,
        measured: measureMm(hole),
        limit: measureMm(limit.most),
      };
  }
};
