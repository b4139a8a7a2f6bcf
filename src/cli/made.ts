// What `make` has made: each pack, where it went, whether it was written, and what was found.

import type { Finding } from "../diagnostics/finding.ts";
import type { PartChange } from "../pack/changes.ts";
import type { Manifest } from "../pack/manifest.ts";
import type { PanelPack } from "../pack/panel-pack.ts";
import type { OpenProject } from "./open-project.ts";

/** A folder for each pack, a zip for each, or all of them in one zip, which is written only where none has a fault. */
export type PackForm = "folders" | "zips" | "one-zip";

export interface MadePanel {
  readonly name: string;
  /** Folder from `out`, or from the root of the zip, with a slash behind; empty where the pack lies in `out` itself. */
  readonly folder: string;
  /** The zip's name in `out`; null where the pack is a folder. */
  readonly zip: string | null;
  readonly pack: PanelPack;
  readonly isWritten: boolean;
  /** An old pack stays and carries the note that it is stale. */
  readonly isStale: boolean;
  /** Since the last pack in this folder or zip; null where there was none. */
  readonly changes: readonly PartChange[] | null;
}

/** A zip that was written. */
export interface MadeZip {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A pack among those of a console that is of none of its panels. */
export interface LeftOverPack {
  /** Of the folder or the zip, in `out`. */
  readonly name: string;
  readonly place: string;
  readonly manifest: Manifest;
}

export interface Made {
  readonly out: string;
  readonly opened: OpenProject;
  readonly panels: readonly MadePanel[];
  readonly zips: readonly MadeZip[];
  readonly leftOver: readonly LeftOverPack[];
  /** Older packs of the same panels: folders beside a zip, a zip beside folders. */
  readonly otherForm: readonly LeftOverPack[];
  readonly findings: readonly Finding[];
}
