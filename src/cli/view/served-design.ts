// The design as the page gets it: texts, which of them can be written, shapes, and what stood in the way. Read from the
// disk each time that it is asked for.

import { basename, join } from "node:path";
import { binariesOf, includesOf } from "../../design/includes.ts";
import { textHash } from "../../diagnostics/text-edit.ts";
import type { DesignPlace } from "../design-argument.ts";
import type { Disk } from "../disk.ts";
import { type LoadedDesign, loadDesign } from "../load-design.ts";
import type { DesignMessage } from "./view-messages.ts";

export interface ServedDesign {
  readonly loaded: LoadedDesign;
  /** Paths that the design's texts name, there or not, and its first file: nothing else is written. */
  readonly paths: ReadonlySet<string>;
  /** Those, and the shapes and photographs that are named: what is not there yet may come. */
  readonly watched: ReadonlySet<string>;
  readonly message: DesignMessage;
}

export interface DesignSource {
  readonly place: DesignPlace;
  readonly isReadOnly: boolean;
  readonly disk: Disk;
}

export const servedDesign = ({ place, isReadOnly, disk }: DesignSource): ServedDesign => {
  const loaded = loadDesign(place, disk);
  const named = [...loaded.files].flatMap(([path, text]) => includesOf(path, text));
  const paths = new Set([place.entry, ...named].filter(isDesignText));
  const shapes = [...loaded.files].flatMap(([path, text]) => binariesOf(path, text));
  const files = [...loaded.files].map(([path, text]) => ({
    path,
    text,
    isWritable: !isReadOnly && isDesignText(path) && disk.isWritable(join(place.root, path)),
  }));
  return {
    loaded,
    paths,
    watched: new Set([...paths, ...shapes]),
    message: {
      id: textHash(join(place.root, place.entry)),
      name: nameOf(place),
      entry: place.entry,
      isReadOnly,
      files,
      shapes: [...loaded.binaries].flatMap(([path, bytes]) => (bytes === null ? [] : [path])),
      troubles: loaded.findings.map(({ message }) => message),
    },
  };
};

export const isDesignText = (path: string): boolean => /\.ya?ml$/i.test(path);

/** What the person calls it: the folder where the file has a usual name, else the file. */
const nameOf = ({ root, entry }: DesignPlace): string =>
  /^(console|panel)\.ya?ml$/.test(entry) ? basename(root) : entry;
