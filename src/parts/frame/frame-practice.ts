// Sizes that a frame needs and nobody writes down. Millimetres; common practice where no other source is named.

import { CLEARANCE_HOLES } from "../../standards/metric-fasteners.ts";

/** Between boards that meet without a joint, so that they go together. */
export const GAP = 0.5;

/** What stands of a rib beside the room of the panels, at its narrowest. */
export const RIB_ARM = 25;

/** A tab, and about how far apart they stand along a board. */
export const TAB = { length: 40, shortest: 8, pitch: 180 } as const;

/** From a board's end to its first tab or rib: its thickness, and a quarter more for clearance and the tool's reliefs. */
export const endWeb = (thickness: number): number => 1.25 * thickness;

/** Of the tab by which a rib holds a rail: its length, and the web left round its slot. */
export const RAIL_TAB = { longest: 24, web: 5 } as const;

/** Between rails, so that the ribs' edges there have room for reliefs: no tool's reaches farther along a side than a rail's web. */
export const LEAST_CLEAR = 2 * RAIL_TAB.web;

/** What stands of a rail inside the screws of a panel, at its narrowest: less is fragile in anything. */
export const RAIL_LIP = 1;

/** Of a knee space where nobody is said to sit higher: the knees of large people, 604 (NUREG-0700 Rev 3, table 11.4), and some air. */
export const USUAL_KNEE_HEIGHT = 620;

/** A strip shorter than this has no room for a tab and its webs. */
export const SHORTEST_STRIP = 40;

/** Screws of hatch and butt joints: M4 or wood screws of 4 mm (ISO 273, medium), and the pilot for them in wood. */
export const SCREW = { clearance: CLEARANCE_HOLES.m4.medium, pilot: 3, deep: 30 } as const;

/** Bolts between sections, and between units (ISO 273, medium); two stand no nearer than `apart`, for the heads and a spanner. */
export const BOLT = { hole: CLEARANCE_HOLES.m8.medium, inset: 40, apart: 40 } as const;

/** Cheeks of two units that stand nearer than this are bolted together, over spacers. */
export const LONGEST_SPACER = 60;

/** Before a hatch: a forearm and a screwdriver. */
export const HATCH_ROOM = 300;

/** A dowel is half as thick as its board at most: 6 in thin boards, 8 in thick ones. */
export const dowelDiameter = (thickness: number): number => (thickness < 16 ? 6 : 8);

/** The hatch laps its opening on every side; the opening takes two hands. */
export const HATCH = {
  lap: 15,
  widest: 300,
  highest: 240,
  least: 100,
  away: 45,
  corner: 6,
} as const;

/** Vents: slots with round ends, and where they and the cables stand from the board's lower and upper edges. */
export const VENT = { width: 8, length: 60, pitch: 20, count: 3, low: 110, high: 60 } as const;
export const CABLE_HEIGHT = 55;

/** Waste round a piece, for clamps and the witness. */
export const SHEET_MARGIN = 10;
