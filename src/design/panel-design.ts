// A panel as its author wrote it: intent, not coordinates. Places are still "centre" or "right of brake",
// heights still modules; layout turns them into millimetres once the mount and the parts are known.

import type { Span } from "../diagnostics/finding.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { MetricThread } from "../standards/metric-fasteners.ts";
import type { PhotoDesign } from "./photo-design.ts";
import type { AngledBoxDesign, LampBoxDesign, TrimDesign } from "./printed-design.ts";
import type { IsoDate, Size, Written } from "./written.ts";

export interface PanelDesign {
  readonly kind: "panel";
  readonly written: Written;
  readonly file: string;
  readonly name: string;
  readonly title: string;
  readonly revision: string;
  readonly dated: IsoDate | null;
  /** Path of the workshop file, relative to this file, as written. */
  readonly workshop: string | null;
  /** Files of the user's own parts, relative to this file, as written. */
  readonly catalogue: readonly string[];
  readonly mount: string;
  /** Only for mounts that leave the width open (corner screws, box lid, subrack). */
  readonly width: Size | null;
  readonly height: Size;
  readonly viewingDistance: Mm;
  readonly stack: readonly LayerDesign[];
  readonly fixings: FixingsDesign | null;
  readonly components: readonly ComponentEntry[];
  readonly spares: readonly SpareDesign[];
  readonly markings: readonly MarkingDesign[];
  readonly lettering: LetteringDesign;
  /** Depth there is behind the face, where the builder knows it (in a console the bay says). */
  readonly depth: Mm | null;
  /** Key `box`: the printed box that the panel lies on. */
  readonly box: AngledBoxDesign | null;
  /** A photograph that is laid under the drawing. Nothing is made from it. */
  readonly photo: PhotoDesign | null;
  readonly note: string | null;
  /** Keys whose values could not be read (each has its finding); what stands for them here is as if they were not written. */
  readonly unread: readonly string[];
}

export type LayerDesign =
  | {
      readonly kind: "sheet";
      readonly id: string;
      readonly sheet: string;
      readonly finish: string | null;
      /** Key `worked-from`: which face looks at the machine while it is cut. */
      readonly workedFrom: "front" | "rear";
      /** Whether an opaque sheet between lamps and legends opens behind each of them. */
      readonly windows: "legends" | "none";
      /** Key `window-margin`: from a legend to the edge of the window behind it. */
      readonly windowMargin: Mm;
      readonly written: Written;
    }
  | {
      readonly kind: "spacer";
      readonly id: string;
      readonly print: string;
      readonly depth: Mm;
      readonly lighting: LightingDesign | null;
      readonly written: Written;
    }
  | { readonly kind: "air"; readonly id: string; readonly depth: Mm; readonly written: Written }
  | {
      readonly kind: "tray";
      readonly id: string;
      /** Clear depth between the layer in front and the boards. */
      readonly behind: Mm;
      readonly boards: readonly TrayBoard[];
      readonly written: Written;
    };

/** A board on a tray. `turn`: counter-clockwise from the record's own drawing; null where the tray may choose. */
export interface TrayBoard {
  readonly board: string;
  readonly turn: Degrees | null;
  readonly span: Span;
}

export interface LightingDesign {
  /** A strip, or a board of lamps, from the catalogue. */
  readonly strip: string;
  readonly circuit: string;
  /** Areas on circuits of their own, with a wall round each. */
  readonly apart: readonly LitAreaDesign[];
  readonly written: Written;
}

export interface LitAreaDesign {
  readonly circuit: string;
  /** The components whose faces and legends stand in it. */
  readonly around: readonly string[];
  /** From what stands in it to its wall. */
  readonly gap: Mm;
  readonly written: Written;
}

export interface FixingsDesign {
  readonly screws: MetricThread;
  readonly dowels: Mm;
  /** Named places; where none are given, layout sets them by the house rule and says so. */
  readonly at: readonly ScrewsDesign[] | null;
  readonly dowelsAt: readonly PlaceDesign[] | null;
  readonly written: Written;
}

/** One item of the screws' list: a screw by its place, or several that are set out together. */
export interface ScrewsDesign {
  /** Place of the first one; of a ring, its centre. */
  readonly place: PlaceDesign;
  /** null for one by itself. */
  readonly pattern: PatternDesign | null;
}

/** One statement an axis. `in-line` keeps the neighbour's line (an axis left unsaid beside a neighbour). */
export type AxisPlace =
  | {
      readonly kind: "from-low";
      readonly distance: Mm;
      readonly key: "x" | "y" | "left" | "bottom";
    }
  | { readonly kind: "from-high"; readonly distance: Mm; readonly key: "right" | "top" }
  | { readonly kind: "low-edge" | "high-edge"; readonly key: string }
  | { readonly kind: "centre"; readonly key: string }
  | {
      readonly kind: "beside";
      readonly neighbour: string;
      /** Toward higher x or y (right-of, above) or lower (left-of, below). */
      readonly toward: "high" | "low";
      readonly measure: "centres" | "gap";
      readonly distance: Mm;
      readonly key: "right-of" | "left-of" | "above" | "below";
    }
  | { readonly kind: "in-line"; readonly neighbour: string };

export interface PlaceDesign {
  readonly across: AxisPlace;
  readonly along: AxisPlace;
  /** Set where a place was read off a photograph: "from photo, ± residual". */
  readonly residual: Mm | null;
  readonly written: Written;
}

/** What a placed thing carries whether it stands alone or in a row. */
export interface ComponentCommon {
  readonly part: string;
  readonly fittedWith: readonly FittedDesign[];
  /** The layers that its nut or flange holds together, front to back; empty means the last rigid sheet. */
  readonly clamps: readonly string[];
  readonly turn: Degrees;
  readonly group: string | null;
  readonly circuit: string | null;
  readonly fitted: "now" | "later";
  readonly important: boolean;
  readonly positions: PositionsDesign | null;
  readonly scale: ScaleDesign | null;
  readonly dial: DialDesign | null;
  /** Key `hole`: the clamp hole is cut at this size, whatever paint and fit would ask for. */
  readonly holeAsCut: Mm | null;
  /** Key `washer: light-tight`: a printed washer closes the hole round its nut. */
  readonly lightTight: boolean;
  readonly trim: TrimDesign | null;
  readonly lampBox: LampBoxDesign | null;
  /** Values of the part as measured on the real thing; each names the part's field. */
  readonly measured: MeasuredDesign | null;
  readonly note: string | null;
}

export interface ComponentDesign extends ComponentCommon {
  readonly kind: "component";
  readonly id: string;
  readonly at: PlaceDesign;
  readonly legend: LegendDesign | null;
  readonly written: Written;
}

/** Several of one part, set out together; members are `id.1`, `id.2` ... in reading order. */
export interface ComponentPattern extends ComponentCommon {
  readonly kind: "pattern";
  readonly id: string;
  readonly pattern: PatternDesign;
  /** Place of the first member; of a ring, its centre. */
  readonly at: PlaceDesign;
  readonly legends: readonly (LegendDesign | null)[];
  readonly written: Written;
}

/** A component that could not be read: its followers are suppressed and counted. */
export interface UnreadableComponent {
  readonly kind: "unreadable";
  readonly id: string;
  readonly span: Span;
}

export type ComponentEntry = ComponentDesign | ComponentPattern | UnreadableComponent;

export type PatternDesign = (
  | { readonly kind: "row"; readonly count: number; readonly pitch: Mm }
  | { readonly kind: "column"; readonly count: number; readonly pitch: Mm }
  | {
      readonly kind: "grid";
      readonly columns: number;
      readonly rows: number;
      readonly pitch: Mm;
      readonly rowPitch: Mm;
    }
  | {
      readonly kind: "ring";
      readonly count: number;
      readonly radius: Mm;
      /** Clock angle of the first member, degrees clockwise from twelve. */
      readonly from: Degrees;
      readonly step: Degrees;
    }
) & {
  /** Where its numbers stand, whether its place is written among them or beside them. */
  readonly written: Written;
};

/** A knob, cap, guard, bezel or boot that goes on a component. */
export interface FittedDesign {
  readonly role: "knob" | "cap" | "guard" | "bezel" | "boot" | "plug";
  readonly part: string;
  readonly span: Span;
}

export interface PositionsDesign {
  readonly labels: Readonly<Record<string, string>>;
  readonly written: Written;
}

export interface MeasuredDesign {
  readonly values: Readonly<Record<string, Mm>>;
  readonly dated: IsoDate | null;
  readonly written: Written;
}

export interface SpareDesign {
  readonly part: string;
  readonly count: number;
  readonly written: Written;
}

export type Side = "above" | "below" | "left" | "right";

/** A legend may also stand on what it names: the word of a lamp window. */
export type LegendSide = Side | "on";

export interface LetteringDesign {
  readonly font: string;
  readonly height: Mm;
  readonly gap: Mm;
}

export interface LegendDesign {
  readonly text: string;
  /** null: the panel's. */
  readonly height: Mm | null;
  readonly font: string | null;
  /** null: the usual side of its part. */
  readonly side: LegendSide | null;
  readonly gap: Mm | null;
  readonly turn: Degrees;
  readonly alert: "none" | "advisory" | "caution" | "warning";
  readonly written: Written;
}

/** Ticks and figures round a knob, a selector or a slider. */
export interface ScaleDesign {
  readonly from: number;
  readonly to: number;
  readonly major: number;
  readonly minor: number | null;
  readonly legend: LegendDesign | null;
  /** Words in place of figures, one a stop. */
  readonly labels: readonly string[] | null;
  readonly written: Written;
}

/** The printed or engraved face behind a needle. */
export interface DialDesign {
  readonly sweep: Degrees;
  readonly from: number;
  readonly to: number;
  readonly major: number;
  readonly minor: number | null;
  readonly unit: string | null;
  readonly radius: Mm | null;
  readonly written: Written;
}

/** `pattern`: several set out together, with members `id.1`, `id.2` ... in reading order; null for one by itself. */
export type MarkingDesign =
  | {
      readonly kind: "legend";
      readonly id: string;
      /** What each member reads, the only one where it stands by itself; null for a member without a word. */
      readonly legends: readonly (LegendDesign | null)[];
      /** Place of the first member; of a ring, its centre. */
      readonly at: PlaceDesign;
      readonly align: "left" | "centre" | "right";
      readonly pattern: PatternDesign | null;
      readonly written: Written;
    }
  | {
      readonly kind: "line" | "arrow";
      readonly id: string;
      /** Ends of the first member. */
      readonly from: PlaceDesign;
      readonly to: PlaceDesign;
      readonly width: Mm | null;
      /** No ring: the members of one are not turned. */
      readonly pattern: Exclude<PatternDesign, { readonly kind: "ring" }> | null;
      readonly written: Written;
    }
  | {
      readonly kind: "border";
      readonly id: string;
      readonly around: readonly string[];
      readonly gap: Mm;
      readonly corner: Mm;
      readonly width: Mm | null;
      readonly legend: LegendDesign | null;
      readonly written: Written;
    }
  | {
      readonly kind: "bracket";
      readonly id: string;
      readonly around: readonly string[];
      readonly side: Side;
      readonly gap: Mm;
      readonly width: Mm | null;
      readonly legend: LegendDesign | null;
      readonly written: Written;
    }
  | {
      /** An opening or clear area through the layers named. */
      readonly kind: "window";
      readonly id: string;
      /** Place of the first member; of a ring, its centre. */
      readonly at: PlaceDesign;
      readonly width: Mm;
      readonly height: Mm;
      readonly corner: Mm;
      readonly layers: readonly string[];
      readonly pattern: PatternDesign | null;
      readonly written: Written;
    };
