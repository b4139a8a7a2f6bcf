// What the view of a console and the page's worker say to each other: shapes as typed arrays, each once; frames as often as they
// change; what a drag meets, what a drop would write. What the worker of the fit has found. Plain data both ways.

import type { Finding } from "../../src/diagnostics/finding.ts";
import type { TextEdit } from "../../src/diagnostics/text-edit.ts";
import type { ConsoleBodyRole } from "../../src/fit/console-body.ts";
import type { Frame } from "../../src/geometry/space/frame.ts";
import type { Vector } from "../../src/geometry/space/vector.ts";
import type { DesignSources } from "../core-messages.ts";

/** What the view of a console asks of the page's worker, which has compiled the same texts for the page's own reading. */
export type ConsoleQuestion =
  | ({ readonly kind: "open" } & DesignSources)
  | { readonly kind: "drag"; readonly move: PanelMove }
  | { readonly kind: "settle"; readonly move: PanelMove }
  /** Composed solids as they are, by the solid kernel: asked again and again until the scene comes. */
  | { readonly kind: "true-shapes" };

export interface PanelMove {
  readonly panel: string;
  readonly module: number;
}

export type ConsoleReply =
  | { readonly kind: "scene"; readonly scene: ConsoleScene }
  /** The design holds no console. */
  | { readonly kind: "no-console" }
  | ({ readonly kind: "shaping" } & ShapingStep)
  | { readonly kind: "dragged"; readonly step: DragReading }
  | { readonly kind: "settled"; readonly settlement: Settlement }
  | { readonly kind: "failed"; readonly why: string };

/** So many of the true shapes are made, and what is at hand next, in words. */
export interface ShapingStep {
  readonly words: string;
  readonly done: number;
  readonly of: number;
}

/** A question of the console's view, and what is answered. */
export interface ConsoleAsked {
  readonly kind: "console";
  readonly number: number;
  readonly question: ConsoleQuestion;
}

export interface ConsoleAnswer {
  readonly kind: "console";
  readonly number: number;
  readonly reply: ConsoleReply;
}

/** From the worker of the fit, which is sent the sources and nothing else. */
export type FitReply = { readonly kind: "progress"; readonly words: string } | FitOutcome;

export type FitOutcome =
  | {
      readonly kind: "fitted";
      readonly findings: readonly FitFinding[];
      readonly held: readonly HeldBack[];
    }
  | { readonly kind: "no-console" }
  | { readonly kind: "failed"; readonly why: string };

export interface ConsoleScene {
  readonly name: string;
  readonly title: string;
  readonly groups: readonly SceneGroup[];
  readonly bays: readonly SceneBay[];
  readonly panels: readonly ScenePanel[];
  readonly operator: SceneOperator | null;
  /** Edges of the space that the console gives, two points each; null where nothing bounds it. */
  readonly envelope: Float32Array | null;
  /** Lowest and highest corner of everything that stands in it. */
  readonly box: { readonly low: Vector; readonly high: Vector };
}

/** What moves as one: a panel with all that it carries; or the console itself. */
export interface SceneGroup {
  /** The panel's name; empty for the console's own. */
  readonly key: string;
  readonly frame: Frame;
  readonly bodies: readonly SceneBody[];
  /** null: as they were sent before. */
  readonly lots: readonly SceneLot[] | null;
}

export interface SceneBody {
  readonly id: string;
  readonly role: ConsoleBodyRole | "upright" | "marking";
  readonly thing: string;
  readonly what: string;
}

/** Triangles of one tone at one level of a stack, in the frame of their group. */
export interface SceneLot {
  readonly tone: Tone;
  /** 0 what stands before the face, then each layer; then what hangs behind, and last the box of which a panel is the lid. */
  readonly level: number;
  readonly positions: Float32Array;
  readonly triangles: Uint32Array;
  /** Two points each: the lines that a draughtsman would draw. */
  readonly edges: Float32Array;
  readonly ranges: readonly LotRange[];
}

export interface LotRange {
  /** Index into the group's bodies. */
  readonly body: number;
  /** In triangles, and in edges. */
  readonly triangles: { readonly from: number; readonly count: number };
  readonly edges: { readonly from: number; readonly count: number };
}

/** What a body is made of, as far as the eye can tell. */
export type Tone =
  | "clear"
  | "opal"
  | "opaque"
  | "painted"
  | "pale"
  | "print"
  | "metal"
  | "case"
  | "board"
  | "wire"
  | "knob"
  | "cap"
  | "guard"
  | "button"
  | "lamp"
  | "display"
  | "marking"
  | "dark-marking"
  | "sweep"
  | "rail"
  | "timber"
  | "wall"
  | "obstacle";

export interface SceneBay {
  readonly id: string;
  readonly frame: Frame;
  readonly pitch: number;
  readonly length: number;
  readonly modules: number;
  readonly width: number;
  readonly depth: number;
}

export interface ScenePanel {
  readonly name: string;
  readonly title: string;
  /** null where it stands on feet of its own. */
  readonly place: {
    readonly bay: string;
    readonly module: number;
    readonly modules: number;
  } | null;
  readonly width: number;
  readonly height: number;
  /** From its finished front to the rearmost point of what it carries. */
  readonly depth: number;
  readonly levels: readonly string[];
  /** Panels that go along when it moves: they are written after it. */
  readonly followers: readonly string[];
}

export interface SceneOperator {
  readonly hand: "right" | "left";
  readonly seat: Vector;
  readonly shoulder: Vector;
  readonly eyes: readonly Vector[];
  readonly functional: number;
  readonly extended: number;
  readonly source: string;
}

export interface DragReading {
  readonly move: PanelMove;
  /** Where the panel and its followers go. */
  readonly frames: readonly { readonly panel: string; readonly frame: Frame }[];
  /** Gravest first. */
  readonly meetings: readonly DragMeeting[];
  /** Of the panel's own stretch: 3 to 12, in modules. */
  readonly from: number;
  readonly to: number;
  /** How many modules it runs over the end of its bay. */
  readonly over: number;
  /** How far round it gaps are looked for, mm. */
  readonly within: number;
  /** What the step took in the worker. */
  readonly milliseconds: number;
}

export interface DragMeeting {
  readonly kind: "clash" | "touching" | "near";
  readonly a: BodyName;
  readonly b: BodyName;
  /** clash: along the rail, what the two want of the same stretch at most; near: the least gap. */
  readonly length: number;
  readonly at: Vector;
}

export interface BodyName {
  readonly group: string;
  readonly id: string;
  readonly words: string;
}

/** What a drop would write. */
export type Settlement =
  | { readonly kind: "edit"; readonly what: string; readonly edit: TextEdit }
  | { readonly kind: "choice"; readonly why: string; readonly options: readonly SettleOption[] }
  | { readonly kind: "nothing" }
  | { readonly kind: "refused"; readonly why: string };

export interface SettleOption {
  readonly words: string;
  readonly edit: TextEdit;
}

/** Two panels that want the same modules, and how many clashes between them are no findings of their own. */
export interface HeldBack {
  readonly a: string;
  readonly b: string;
  readonly clashes: number;
}

export interface FitFinding {
  readonly finding: Finding;
  readonly line: number;
  readonly column: number;
  /** Bodies to mark. */
  readonly bodies: readonly { readonly group: string; readonly id: string }[];
  /** A ball that holds them; null where there is none. */
  readonly ball: { readonly middle: Vector; readonly radius: number } | null;
}
