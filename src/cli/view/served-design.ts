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
  /** Paths that the design's texts name, there or not, its first file, and what was read before: nothing else is written. */
  readonly paths: ReadonlySet<string>;
  /** Those, and the shapes and photographs that are named: what is not there yet may come. */
  readonly watched: ReadonlySet<string>;
  /** Texts that stand there and can't be read, and why. */
  readonly unread: ReadonlyMap<string, string>;
  readonly message: DesignMessage;
}

export interface DesignSource {
  readonly place: DesignPlace;
  readonly isReadOnly: boolean;
  readonly disk: Disk;
}

export const servedDesign = (source: DesignSource): ServedDesign => {
  const { place, isReadOnly, disk } = source;
  const loaded = loadedWithKnown(source);
  const named = [...loaded.files].flatMap(([path, text]) => includesOf(path, text));
  const paths = new Set([place.entry, ...named, ...knownOf(source)].filter(isDesignText));
  const shapes = [...loaded.files].flatMap(([path, text]) => binariesOf(path, text));
  const files = [...loaded.files].map(([path, text]) => ({
    path,
    text,
    isWritable: !isReadOnly && isDesignText(path) && disk.isWritable(join(place.root, path)),
  }));
  const unread = new Map(
    loaded.findings
      .filter(({ span }) => !loaded.files.has(span.file))
      .map(({ span, message }) => [span.file, message]),
  );
  return {
    loaded,
    paths,
    unread,
    watched: new Set([...paths, ...shapes]),
    message: {
      id: textHash(join(place.root, place.entry)),
      name: nameOf(place),
      entry: place.entry,
      isReadOnly,
      files,
      unread: [...unread.keys()],
      shapes: [...loaded.binaries].flatMap(([path, bytes]) => (bytes === null ? [] : [path])),
      troubles: loaded.findings.map(({ message }) => message),
    },
  };
};

/**
 * What has once been read belongs to the design as long as it is served: where the file that named the others is deleted, or can't
 * be read for the moment, they stay in the page, and their texts can be written back.
 */
const loadedWithKnown = (source: DesignSource): LoadedDesign => {
  const { place, disk } = source;
  const before = knownOf(source);
  let loaded = loadDesign(place, disk);
  for (const path of before)
    if (!loaded.files.has(path))
      loaded = joined(loaded, loadDesign({ ...place, entry: path }, disk));
  for (const path of loaded.files.keys()) before.add(path);
  return loaded;
};

const joined = (first: LoadedDesign, more: LoadedDesign): LoadedDesign => ({
  ...first,
  files: new Map([...first.files, ...more.files]),
  binaries: new Map([...first.binaries, ...more.binaries]),
  findings: [
    ...first.findings,
    ...more.findings.filter(
      ({ message }) => !first.findings.some((one) => one.message === message),
    ),
  ],
});

const known = new WeakMap<DesignSource, Set<string>>();

/** Paths that were read of this source. */
const knownOf = (source: DesignSource): Set<string> => {
  const before = known.get(source);
  if (before !== undefined) return before;
  const none = new Set<string>();
  known.set(source, none);
  return none;
};

export const isDesignText = (path: string): boolean => /\.ya?ml$/i.test(path);

/** What the person calls it: the folder where the file has a usual name, else the file. */
const nameOf = ({ root, entry }: DesignPlace): string =>
  /^(console|panel)\.ya?ml$/.test(entry) ? basename(root) : entry;
