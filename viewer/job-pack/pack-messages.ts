// What the room of the job pack and its worker say to each other: a design and a pack that is wanted in, its files out, or why
// there are none. Plain data both ways.

import type { Extent } from "../../src/geometry/extent.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import type { PackOptions } from "../../src/pack/panel-pack.ts";
import type { DesignSources, PlacedFinding } from "../core-messages.ts";

/** The pack of one panel, of the console itself, or all of them in one zip. */
export type PackOf =
  | { readonly kind: "panel"; readonly panel: string }
  | { readonly kind: "console" }
  | { readonly kind: "all" };

/** Which kinds of files it holds: what `make` takes as `--only` and `--card`. */
export type PackKinds = Pick<PackOptions, "only" | "card">;

export type PackWant = PackOf & PackKinds;

export interface PackRequest extends DesignSources {
  readonly number: number;
  readonly want: PackWant;
}

export type PackReply =
  | { readonly kind: "progress"; readonly number: number; readonly words: string }
  | { readonly kind: "made"; readonly number: number; readonly made: MadePack }
  | { readonly kind: "failed"; readonly number: number; readonly why: string };

export interface MadePack {
  /** In the order of the manifest; none where a fault stands against the pack, and none of all packs together. */
  readonly files: readonly PackFile[];
  /** Sizes behind each cut file, by its path. */
  readonly cuts: ReadonlyMap<string, CutSizes>;
  /** Why a file that somebody may look for is not there. */
  readonly missing: readonly string[];
  readonly held: readonly HeldPack[];
  /** Queries: it may be made, and a person must decide before it is cut. */
  readonly questions: number;
  /** Of everything, as `make --zip` writes it, or with `--one-zip` of all packs; null where a fault stands against it. */
  readonly zip: { readonly name: string; readonly bytes: Uint8Array } | null;
}

/** A pack that is not written, and what speaks against it. */
export interface HeldPack {
  readonly name: string;
  readonly faults: readonly PlacedFinding[];
}

/** Outlines on the sheet as it lies under the tool, as path data with y down, in millimetres. */
export interface CutSizes {
  readonly width: number;
  readonly height: number;
  readonly isRearUp: boolean;
  readonly setUp: string;
  readonly instructions: readonly string[];
  /** null: left to the cutter, the file's lines are the cut sizes. */
  readonly kerf: number | null;
  /** As it leaves the machine. */
  readonly cut: string;
  /** Painted and ready; null where nothing is painted after the cut. */
  readonly finished: string | null;
  /** The beam's middle as if the kerf were so many times as wide; null where a slot would close, or without kerf. */
  readonly wide: { readonly times: number; readonly line: string } | null;
  readonly features: readonly CutFeature[];
}

/** One cut in numbers. */
export interface CutFeature {
  readonly feature: string;
  /** As it leaves the machine, on the sheet as it lies under the tool: from its lower left corner, y up. */
  readonly box: Extent;
  readonly cut: string;
  /** null where nothing is known of it but the cut. */
  readonly finished: string | null;
}
