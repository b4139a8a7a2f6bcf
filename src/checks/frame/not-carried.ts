// What keeps a frame from being planned at all: bays that it can't carry. Takes the faults as facts; gives each as one finding, and
// where the bay has only to stand higher, the place at which it does.

import { spanOf } from "../../design/written.ts";
import {
  type Finding,
  type FindingParts,
  finding,
  type Measure,
} from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { BayFault, CarryingFault } from "../../parts/frame/bay-faults.ts";
import { carriedBays } from "../../parts/frame/carried-bays.ts";
import { BAY_NOT_CARRIED, BAYS_CROSS } from "../../parts/frame/codes.ts";
import type { FrameSheet } from "../../parts/frame/planned-frame.ts";
import { measureMm, millimetres } from "../words.ts";
import { raisedBays, raising } from "./raising.ts";

export interface NotCarriedScene {
  readonly layout: ConsoleLayout;
  readonly sheet: FrameSheet;
  readonly texts: ReadonlyMap<string, string>;
}

export const notCarried = (
  faults: readonly CarryingFault[],
  scene: NotCarriedScene,
): readonly Finding[] => faults.map((fault) => findingOf(fault, scene));

const findingOf = (fault: CarryingFault, scene: NotCarriedScene): Finding => {
  const { design } = scene.sheet;
  switch (fault.kind) {
    case "no-bay":
      return finding(BAY_NOT_CARRIED, {
        message: "The console has no bay; the frame is made round its bays.",
        span: design.written.span,
      });
    case "bay":
      return finding(BAY_NOT_CARRIED, {
        ...wordsOf(fault.bay, fault.fault, scene),
        source: { kind: "geometry", name: "cheeks, ribs and floor board" },
        span: fault.bay.design.written.span,
        subjects: [fault.bay.id],
      });
    case "crossing": {
      const { bay, other } = fault;
      return finding(BAYS_CROSS, {
        message: `${bay.id} and ${other.id}: their ribs, ${decimal(design.ribs.web, 2)} mm below the room of the panels, want the same place. Move one of them along, or give it less depth.`,
        span: spanOf(other.design.written, "at"),
        related: [{ what: bay.id, span: spanOf(bay.design.written, "at") }],
        subjects: [bay.id, other.id],
      });
    }
  }
};

type Worded = Pick<FindingParts, "message" | "measured" | "limit" | "remedies">;

const wordsOf = (bay: BayLayout, fault: BayFault, scene: NotCarriedScene): Worded => {
  const { id, mount, length } = bay;
  switch (fault.kind) {
    case "off-plane":
      return {
        message: `${id} runs ${decimal(fault.angle, 2)}° out of the plane of the first bay, and cheeks are flat: 0° can be carried.`,
        measured: inDegrees(fault.angle),
        limit: inDegrees(0),
      };
    case "looks-down":
      return { message: `The panels of ${id} look down, or along its own cheeks.` };
    case "no-width":
      return {
        message: `Nothing says how wide ${id} is between its rails: its mount ${mount.id} leaves that open, and no panel stands on it. Write clear-width: 120 mm, as wide as its panels will be, or put a panel on it.`,
      };
    case "clear-too-narrow":
      return {
        message: `The rails of ${id} are to be ${millimetres(fault.clear, fault.least)} apart, and the ribs' edges between them take ${millimetres(fault.least, fault.clear)}. clear-width: ${decimal(fault.least, 2)} mm does.`,
        measured: measureMm(fault.clear),
        limit: measureMm(fault.least),
      };
    case "screws-meet":
      return {
        message: `The screws of the narrowest panel on ${id} stand ${millimetres(fault.from, fault.least)} from its middle, and rails under them with room between take ${millimetres(fault.least, fault.from)}. One ${millimetres(2 * (fault.least - fault.from))} wider leaves it.`,
        measured: measureMm(fault.from),
        limit: measureMm(fault.least),
      };
    case "too-low":
      return tooLow(bay, fault, scene);
    case "too-short":
      return {
        message: `${id} is ${decimal(length, 2)} mm long, and two ribs with their webs take ${decimal(fault.least, 2)} mm.`,
        measured: measureMm(length),
        limit: measureMm(fault.least),
      };
  }
};

const tooLow = (
  bay: BayLayout,
  { reaches, least, depth }: BayFault & { readonly kind: "too-low" },
  scene: NotCarriedScene,
): Worded => {
  const by = least - reaches;
  const raise = raising([bay], by);
  const advice = depth > 0 ? `, and so does depth: ${depth} mm` : "";
  return {
    message: `The ribs of ${bay.id} reach down to ${decimal(reaches, 2)} mm and may reach to ${decimal(least, 2)} mm, just over the floor board: ${decimal(by, 2)} mm too low. ${raise.words} does${advice}.`,
    measured: measureMm(reaches),
    limit: measureMm(least),
    remedies: isCarriedAt(bay, raise.by, scene) ? [raise.remedy(scene.texts)] : [],
  };
};

/** Nothing is against it where the bay stands that much higher: other bays of its row neither. */
const isCarriedAt = (bay: BayLayout, by: number, { layout, sheet }: NotCarriedScene): boolean => {
  const { design, thickness } = sheet;
  const raised = carriedBays(raisedBays(layout, [bay.id], by), design, thickness);
  if (raised.kind === "carried") return true;
  return !raised.faults.some(
    (fault) =>
      (fault.kind === "bay" && fault.bay.id === bay.id) ||
      (fault.kind === "crossing" && (fault.bay.id === bay.id || fault.other.id === bay.id)),
  );
};

const inDegrees = (value: number): Measure => ({ value: Number(decimal(value, 6)), unit: "deg" });
