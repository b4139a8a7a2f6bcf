// The folder that a pack goes into: which of its files are ours, and why a pack can't go there.
// Ours is what a manifest of ours lists, the manifest itself, and the note that the pack is stale.

import { basename, dirname, join } from "node:path";
import { MANIFEST_NAME, type Manifest, readManifest } from "../pack/manifest.ts";
import { utf8Text } from "../pack/utf8.ts";
import type { Disk } from "./disk.ts";

export const STALE_NAME = "STALE.txt";
/** First line of the note, by which it is known as ours. */
export const STALE_LINE = "This pack is older than its design. Do not cut from it.";

/** What came of marking an old pack. `unmarked`: there is one, and something else stands where the note would be. */
export type StaleMark =
  | { readonly kind: "marked" }
  | { readonly kind: "no-pack" }
  | { readonly kind: "unmarked"; readonly why: string };

/** Where the new pack is laid down, and where the old one waits until its foreign files are brought over. */
export const stagingFolder = (target: string): string =>
  join(dirname(target), `.${basename(target)}.new-pack`);

export const retiredFolder = (target: string): string =>
  join(dirname(target), `.${basename(target)}.old-pack`);

export const ownManifest = (folder: string, disk: Disk): Manifest | null => {
  const path = join(folder, MANIFEST_NAME);
  return disk.look(path) === "file" ? readManifest(utf8Text(disk.read(path))) : null;
};

/** Paths inside a folder that are ours, the manifest last: while it is there, the folder is known as ours. */
export const ownPaths = (
  folder: string,
  manifest: Manifest | null,
  disk: Disk,
): readonly string[] => {
  if (manifest === null) return [];
  const listed = manifest.files.map(({ path }) => path).filter((path) => path !== MANIFEST_NAME);
  return [...listed, ...(isOwnStaleNote(folder, disk) ? [STALE_NAME] : []), MANIFEST_NAME];
};

export const isOwnStaleNote = (folder: string, disk: Disk): boolean => {
  const path = join(folder, STALE_NAME);
  return disk.look(path) === "file" && utf8Text(disk.read(path)).startsWith(STALE_LINE);
};

/** Why no pack can be written at a place, whatever is in it; null where one can. */
export const targetRefusal = (target: string, disk: Disk): string | null => {
  switch (disk.look(target)) {
    case "nothing":
    case "folder":
      return null;
    case "file":
      return `${target} is a file; a pack needs a folder.`;
    case "link":
      return `${target} is a link to ${disk.linkTarget(target)}; name the folder itself.`;
    case "other":
      return `${target} is neither a file nor a folder.`;
  }
};

/** A foreign file or link that stands where the pack wants to put one of its own; null where none does. */
export const conflictIn = (
  target: string,
  pack: { readonly own: readonly string[]; readonly wanted: readonly string[] },
  disk: Disk,
): string | null => {
  const own = new Set(pack.own);
  for (const path of pack.wanted) {
    const steps = path.split("/");
    for (let count = 1; count <= steps.length; count++) {
      const prefix = steps.slice(0, count).join("/");
      const place = join(target, prefix);
      const thing = disk.look(place);
      if (thing === "nothing") break;
      const isFine = count < steps.length ? thing === "folder" : thing === "file" && own.has(path);
      if (!isFine && !own.has(prefix))
        return `${place} is in the way and is not from this program; move it, or choose another folder.`;
    }
  }
  return null;
};
