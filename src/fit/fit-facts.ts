// What is known about a console before anybody judges it. Every list is in a defined order: by id, then by place.
// Lengths in millimetres, places in console coordinates, volumes in mm³.

import type { Span } from "../diagnostics/finding.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { Vector } from "../geometry/space/vector.ts";
import type { HandKind } from "../standards/separation.ts";
import type { ToleranceShare } from "./along-rail/tolerance-sum.ts";
import type { ConsoleBody } from "./console-body.ts";

export interface FitFacts {
  readonly bodies: readonly ConsoleBody[];
  readonly pairs: readonly PairFact[];
  readonly outside: readonly OutsideFact[];
  readonly latches: readonly LatchFact[];
  readonly depths: readonly DepthFact[];
  readonly lifts: readonly LiftFact[];
  readonly drivers: readonly DriverFact[];
  readonly loops: readonly LoopFact[];
  readonly hands: readonly HandFact[];
  readonly reaches: readonly ReachFact[];
  readonly sights: readonly SightFact[];
  readonly knees: KneeFact | null;
  readonly frontEdges: readonly FrontEdgeFact[];
  readonly tolerances: readonly ToleranceFact[];
}

/**
 * Two bodies of different panels, or of a panel and the console, nearer than whoever judges asks.
 * clash: they share more than 0.01 mm³ (a body wholly within another shares all of itself). touching: they share no more
 * than that and no gap is left. apart: the least distance between their surfaces.
 */
export interface PairFact {
  readonly a: ConsoleBody;
  readonly b: ConsoleBody;
  readonly relation: PairRelation;
}

export type PairRelation =
  /** `at`: the middle of what they share; `depth`: its least extent along an axis of a's frame. */
  | {
      readonly kind: "clash";
      readonly volume: number;
      readonly depth: Mm;
      readonly at: Vector;
      readonly isWithin: boolean;
    }
  | { readonly kind: "touching"; readonly at: Vector }
  | { readonly kind: "apart"; readonly gap: Mm; readonly at: Vector };

/** What of a body stands out of the console. Only what lies behind its panel's seat is asked; touching the wall is inside. */
export interface OutsideFact {
  readonly body: ConsoleBody;
  /** Out of what: the envelope that is written, else what the frame's cheeks enclose. */
  readonly of: "envelope" | "frame";
  readonly volume: number;
  /** How far the farthest of it lies from the inside. */
  readonly depth: Mm;
  readonly at: Vector;
}

/** A latch that a thumb does not come to. Not among the pairs: where it only touches or comes near nothing is wrong. */
export interface LatchFact {
  readonly latch: ConsoleBody;
  /** null: the room stands out of the console's inside. */
  readonly other: ConsoleBody | null;
  /** Outward from the plug's side. */
  readonly needs: Mm;
  readonly has: Mm;
  readonly at: Vector;
}

/** Depth behind the seat: what the bay has, and what the deepest body of the panel takes, plug and bend included. */
export interface DepthFact {
  readonly panel: string;
  readonly bay: string;
  readonly has: Mm;
  readonly takes: Mm;
  readonly body: ConsoleBody;
}

/** How a panel comes out past what stands round it; null: none of the ways that were tried is free. */
export interface LiftFact {
  readonly panel: string;
  readonly way: LiftWay | null;
  /** What was met on the straight way, nearest first. */
  readonly blockers: readonly ConsoleBody[];
}

export type LiftWay =
  | { readonly kind: "straight" }
  /** The end that is lifted first, and the tilt at which it comes free. */
  | { readonly kind: "tilted"; readonly first: "low-end" | "high-end"; readonly tilt: Degrees };

/** Room for the driver before a mount fastener. */
export interface DriverFact {
  readonly panel: string;
  readonly fastener: string;
  readonly at: Vector;
  readonly needs: { readonly diameter: Mm; readonly length: Mm };
  /** null: free. */
  readonly met: DriverStop | null;
}

/** What stands in a driver's room: its length's, where it stands on the axis, else its width's. */
export interface DriverStop {
  /** The nearest. */
  readonly blocker: ConsoleBody;
  readonly side: "length" | "diameter";
  /** Of that: how much is free. */
  readonly free: Mm;
}

/** How long a loom must be to lay the panel on its face beside its place. */
export interface LoopFact {
  readonly panel: string;
  /** null: nobody has written it. */
  readonly has: Mm | null;
  readonly needs: Mm;
  /** The neighbour that it lies on; null: on what is beside the console. */
  readonly onto: string | null;
  readonly plug: ConsoleBody | null;
}

/** Two controls of different panels, edge to edge; `needs` by how a hand takes hold of each. */
export interface HandFact {
  readonly a: HandPlace;
  readonly b: HandPlace;
  readonly gap: Mm;
  readonly needs: Mm;
  readonly source: string;
}

export interface HandPlace {
  readonly panel: string;
  readonly component: string;
  readonly hand: HandKind;
  readonly span: Span;
}

/** From the plane of the seat back at shoulder height to what a hand takes hold of. */
export interface ReachFact {
  readonly panel: string;
  readonly component: string;
  readonly isImportant: boolean;
  readonly distance: Mm;
  readonly functional: Mm;
  readonly extended: Mm;
  readonly at: Vector;
  readonly span: Span;
}

/** A legend as the eye sees it: its true distance, how far from square on, and the angle that its capitals fill there. */
export interface SightFact {
  readonly panel: string;
  readonly marking: string;
  readonly owner: string;
  readonly isImportant: boolean;
  readonly isAlerting: boolean;
  readonly capHeight: Mm;
  readonly distance: Mm;
  /** Between the line of sight and the panel's normal. */
  readonly obliquity: Degrees;
  /** Of a capital's height as foreshortened, in minutes of arc. */
  readonly arcMinutes: number;
  /** Of the two eyes the one that sees it smaller. */
  readonly eye: "small" | "large";
  /** The body between eye and legend; null: free. */
  readonly hiddenBy: ConsoleBody | null;
  readonly span: Span;
}

/** Room for knees under a console that a person sits at, in each direction of the box. */
export interface KneeFact {
  readonly width: KneeRoom;
  readonly depthAtKnee: KneeRoom;
  readonly depthAtFoot: KneeRoom;
  readonly height: KneeRoom;
}

export interface KneeRoom {
  readonly has: Mm;
  /** What bounds it; of a width one on either side. */
  readonly by: readonly ConsoleBody[];
}

/** How far a control lies from the front edge of its console, along the surface of the panels. */
export interface FrontEdgeFact {
  readonly panel: string;
  readonly component: string;
  readonly isImportant: boolean;
  readonly distance: Mm;
  /** What is added to it by a millimetre along the panel's rails. */
  readonly further: number;
  readonly span: Span;
}

/** The sum along a bay: what is free at nominal size, and what every part's tolerance may take of it. */
export interface ToleranceFact {
  readonly bay: string;
  readonly free: Mm;
  readonly worstCase: Mm;
  readonly rootSumSquare: Mm;
  /** Each part's share of the worst case, largest first. */
  readonly shares: readonly ToleranceShare[];
}
