// Console panels on rails with quarter-turn studs: MS25212 (panel) and MIL-F-25173A (fasteners and rail), read in secondary
// copies. What a rail covers and where the first stud sits are from memory: measure the rail that you have.

import { type Mm, mm } from "../geometry/quantity.ts";

export const CONSOLE_RAIL = {
  /** 5 3/4 in: MS25212. */
  panelWidth: mm(146.05),
  /** 3/8 in, height module and receptacle pitch: MIL-F-25173A. */
  module: mm(9.525),
  /** 5 3/8 in between the stud columns: MIL-F-25173A. */
  columnsApart: mm(136.525),
  /** (146.05 - 136.525) / 2. */
  columnInset: mm(4.7625),
  /** Stud head, body and panel hole: MIL-F-25173A. */
  studHead: mm(9.53),
  studBody: mm(6.53),
  studHole: mm(6.6),
  /** In painted acrylic, one column slotted: common practice. */
  studHoleInAcrylic: mm(7),
  /** Cumulative error of the pitch, 0.005 in a foot to each side: MIL-F-25173A. */
  pitchErrorPerFoot: mm(0.127),
  /** First row half a module from the nominal end: from memory, unverified. */
  firstRow: mm(4.7625),
  /** Strip of the rear that a rail covers, and the width left between: from memory, unverified. */
  seat: mm(9.5),
  clearWidth: mm(127),
  /** Finished size under nominal, a side: common practice. */
  undersize: mm(0.175),
  source: "MS25212, MIL-F-25173A (secondary copies)",
} as const;

/** Nominal height of a panel of n modules. */
export const consolePanelHeight = (modules: number): Mm => mm(CONSOLE_RAIL.module * modules);
