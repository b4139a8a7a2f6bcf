// A panel in millimetres: what `layout` gives to every floor above it. Facts only; nothing here says whether a number is good.
// Coordinates: x right, y up, z toward the operator; origin at the lower left of the nominal outline, z = 0 the finished front.

import type { Hardware } from "../catalogue/hardware.ts";
import type { Mount } from "../catalogue/mount.ts";
import type { BodyRole, Part } from "../catalogue/part.ts";
import type {
  ComponentCommon,
  LayerDesign,
  LegendDesign,
  LegendSide,
  PanelDesign,
  PlaceDesign,
} from "../design/panel-design.ts";
import type {
  FinishDesign,
  MachineDesign,
  Material,
  StockDesign,
} from "../design/workshop-design.ts";
import type { Written } from "../design/written.ts";
import type { Span } from "../diagnostics/finding.ts";
import type { Contour, Path, Point, Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";

export interface PanelLayout {
  readonly kind: "panel-layout";
  readonly name: string;
  readonly design: PanelDesign;
  readonly mount: Mount;
  /** The nominal outline: origin to (width, height). */
  readonly nominal: Extent;
  /** The finished outline: nominal less the mount's undersize, corners rounded. */
  readonly outline: Contour;
  readonly layers: readonly LayerLayout[];
  readonly components: readonly PlacedComponent[];
  readonly markings: readonly PlacedMarking[];
  readonly fixings: readonly PlacedFixing[];
  /** Where the design itself places what is no component; what layout has set by a rule is not among them. */
  readonly ownPlaces: readonly OwnPlace[];
  readonly mountHoles: readonly MountHole[];
  /** Strips of the rear that the rails cover. */
  readonly rails: readonly Extent[];
  /** Windows behind words that something is in the way of. */
  readonly closedWindows: readonly ClosedWindow[];
  /** Ids of entries that could not be placed; what refers to them is left out without a finding of its own. */
  readonly lost: readonly string[];
}

/** A place that a window, a free marking or a fixing has of its own; a line has one for each end, a pattern for each member. */
export interface OwnPlace {
  readonly id: string;
  /** What is moved with one statement: `window-1` for `window-1.3`. */
  readonly entry: string;
  readonly end: "at" | "from" | "to";
  readonly at: Point;
  readonly place: PlaceDesign;
}

/** A quantity with the range it may really have. `known` where somebody measured it. */
export interface Range {
  readonly low: Mm;
  readonly nominal: Mm;
  readonly high: Mm;
  readonly known: boolean;
}

export interface LayerLayout {
  readonly id: string;
  readonly design: LayerDesign;
  readonly index: number;
  readonly kind: "sheet" | "spacer" | "air" | "tray";
  readonly stock: StockDesign | null;
  readonly material: Material | null;
  readonly finish: FinishDesign | null;
  readonly machine: MachineDesign | null;
  /** Sheet thickness without paint; depth of spacer, air or tray. */
  readonly thickness: Range;
  /** Paint on each face. */
  readonly paint: Range;
  /** Paint on the wall of a hole: none where the sheet is painted before it is cut. */
  readonly holePaint: Range;
  /** z of its front and rear face at nominal thickness, paint included. */
  readonly front: Mm;
  readonly rear: Mm;
  /** Its own finished outline: the panel's, with notches where a stud's head must reach the sheet behind. */
  readonly outline: Contour;
  /** Everything cut out of it, in finished sizes. Empty for air. */
  readonly cutOuts: readonly CutOut[];
}

export type CutOutPurpose =
  | "clamp"
  | "tab"
  | "screw"
  | "front-clearance"
  | "rear-clearance"
  | "window"
  | "fixing"
  | "dowel"
  | "mount";

/** A hole in one layer, at its finished size: after cutting, painting and washing. */
export interface CutOut {
  /** `brake/clamp@backing`: unique in the panel, stable from run to run. */
  readonly id: string;
  /** Instance id of the component, window, fixing or mount hole it belongs to. */
  readonly owner: string;
  readonly purpose: CutOutPurpose;
  readonly layer: string;
  readonly centre: Point;
  readonly contour: Contour;
  /** What must go through the finished hole, and what must not; null for a mere clearance. */
  readonly gauge: Gauge | null;
  /** Cut as drawn although the sheet is painted: the design gave the cut size itself. */
  readonly asCut: boolean;
  readonly span: Span;
}

/** Behind this word the layer would have a window, were it not for what is in the way. */
export interface ClosedWindow {
  readonly marking: string;
  /** Which of the marking's words. */
  readonly word: Extent;
  readonly layer: string;
  readonly obstacle: WindowObstacle;
}

export interface WindowObstacle {
  /** Component, legend, fixing, mount or layer, and what of it: "nut", "hole", "edge". */
  readonly owner: string;
  readonly what: string;
  /** Left between it and a window no larger than the letters; 0 where it would cut into it. */
  readonly gap: Mm;
  readonly wanted: Mm;
  /** Margin that was asked for, and the largest that goes past it, in tenths; null where none does. */
  readonly margin: Mm;
  readonly works: Mm | null;
}

export interface Gauge {
  readonly what: string;
  /** The largest thing that must pass: a contour at the hole's place. */
  readonly go: Contour;
  /** Diameter (or least width) that the hole must stay under; null where anything larger is fine. */
  readonly noGo: Mm | null;
  /** Diameter or least width of `go`, and of the hole as finished. */
  readonly goSize: Mm;
  readonly finishedSize: Mm;
}

export interface PlacedComponent {
  readonly id: string;
  /** The entry in the text that it comes from (`warn` for `warn.3`). */
  readonly entry: string;
  readonly part: Part;
  readonly fitted: readonly Hardware[];
  readonly common: ComponentCommon;
  readonly legend: LegendDesign | null;
  readonly at: Point;
  readonly turn: Degrees;
  /** The layers it holds together: indices into `layers`, front to back. */
  readonly clamped: { readonly first: number; readonly last: number };
  /** z of the plane its shoulder bears on, at nominal thickness. */
  readonly seat: Mm;
  /** Its bodies in panel coordinates, nut and fitted hardware included. */
  readonly bodies: readonly PlacedBody[];
  /** What a hand takes hold of, seen from the front. null for lamps, displays, connectors. */
  readonly grasp: Contour | null;
  /** Outlines to draw on the face. */
  readonly face: readonly Contour[];
  readonly depth: DepthFacts;
  /** How the design places its entry: what a move edits. */
  readonly place: PlaceDesign;
  readonly written: Written;
  readonly span: Span;
  readonly placeSpan: Span;
}

export interface PlacedBody {
  readonly owner: string;
  readonly role: BodyRole | "knob" | "cap" | "guard" | "washer" | "spanner";
  readonly footprint: Contour;
  readonly low: Mm;
  readonly high: Mm;
}

/** Depth at both ends of every thickness range. */
export interface DepthFacts {
  /** Thickness that the component holds together, paint included. */
  readonly gripped: Range;
  /** Thread left in front of (or behind) what it clamps, less washers; compare with the nut's thickness. */
  readonly threadLeft: Range | null;
  readonly nutThickness: Mm | null;
  /** How far lever, shaft or button stands proud of the panel's front. */
  readonly protrusion: Range | null;
  /** From the panel's front to the rearmost point of body, tails, plug and cable. */
  readonly total: Range;
}

export interface PlacedFixing {
  readonly id: string;
  /** `fixing.1-6` of the members of a row or ring; else its id. */
  readonly entry: string;
  readonly kind: "screw" | "dowel-round" | "dowel-slotted";
  readonly at: Point;
  readonly diameter: Mm;
  readonly span: Span;
}

export interface MountHole {
  readonly id: string;
  readonly at: Point;
  readonly column: "left" | "right" | "none";
}

/** A marking as it will be seen on the finished face. */
export interface PlacedMarking {
  readonly id: string;
  readonly owner: string;
  readonly kind: "legend" | "scale" | "dial" | "arrow" | "line" | "border" | "bracket";
  /** The layer whose front carries it. */
  readonly layer: string;
  readonly side: LegendSide | null;
  /** Filled shapes, as seen; the exporter insets them by half the spot. */
  readonly fills: readonly Region[];
  /** Strokes, at the width as seen. */
  readonly strokes: readonly { readonly path: Path; readonly width: Mm }[];
  readonly text: string | null;
  readonly capHeight: Mm | null;
  /** Thinnest stroke of its letters or lines. */
  readonly strokeWidth: Mm;
  readonly box: Extent;
  /** The box of each text in it: a legend's one, every figure of a scale. Empty for lines alone. */
  readonly words: readonly Extent[];
  /** Characters that the font has no shape for. */
  readonly missing: readonly string[];
  readonly span: Span;
}
