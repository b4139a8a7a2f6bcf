// What a round tool needs to let square boards into square corners: reliefs in slots and at the roots of tabs, by the
// thickest tool that finds room. Lasers and knives need none.

import type { MachineDesign } from "../../design/workshop-design.ts";
import type { Loop } from "../../geometry/contour.ts";
import { dogbonedLoop, dogbonedOutline } from "../../geometry/corners.ts";
import { RAIL_TAB } from "./frame-practice.ts";

export interface Relief {
  /** Of the tool; 0 where the machine leaves sharp corners. */
  readonly radius: number;
  /** The least tool's diameter and the most that would fit, where none of them does. */
  readonly tooThick: { readonly least: number; readonly most: number } | null;
}

/** `narrowest`: the shortest side of any slot. Two reliefs take √2 of the tool's diameter of a side. */
export const reliefFor = (machine: MachineDesign, narrowest: number): Relief => {
  if (machine.kind !== "router") return { radius: 0, tooThick: null };
  const most = Math.min(narrowest / Math.SQRT2, MOST);
  const diameters = machine.tools.map(({ diameter }) => diameter);
  const fitting = diameters.filter((diameter) => diameter < most);
  if (fitting.length === 0) return { radius: 0, tooThick: { least: Math.min(...diameters), most } };
  return { radius: Math.max(...fitting) / 2, tooThick: null };
};

/** As much as the webs of the rails' tabs allow. */
const MOST = RAIL_TAB.web * Math.SQRT2;

/** Radius of the thickest tool that reliefs could be cut with, whatever the slots; 0 where none is, or none is needed. */
export const widestRelief = (machine: MachineDesign): number =>
  machine.kind === "router"
    ? Math.max(
        0,
        ...machine.tools.map(({ diameter }) => diameter).filter((diameter) => diameter < MOST),
      ) / 2
    : 0;

export const relievedSlot = (slot: Loop, { radius }: Relief): Loop => dogbonedLoop(slot, radius);

export const relievedPiece = (outline: Loop, { radius }: Relief): Loop =>
  dogbonedOutline(outline, radius);

/** What a relief takes of each side of a square corner: √2 of the tool's radius. */
export const reliefReach = ({ radius }: Pick<Relief, "radius">): number => Math.SQRT2 * radius;
