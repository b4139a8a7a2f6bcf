// Replaces text files of a design, all of them or none: new texts are laid beside the old ones, then renamed over them.
// A file that has changed on the disk since it was read is not touched.

import { basename, dirname, join } from "node:path";
import { isSameBytes } from "../pack/same-bytes.ts";
import { utf8Bytes } from "../pack/utf8.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";

export interface TextChange {
  readonly place: string;
  readonly before: string;
  readonly after: string;
}

/** null when done, else what stood in the way. */
export const replaceTexts = (changes: readonly TextChange[], disk: Disk): string | null => {
  const outcome = attempt(() => {
    // A link stays a link; the file that it leads to is replaced.
    const placed = changes.map((change) => ({ ...change, place: disk.truePath(change.place) }));
    const moved = placed.find(({ place, before }) => !isText(disk.read(place), before));
    if (moved !== undefined) return `${moved.place} has changed since it was read`;
    replaceAll(placed, disk);
    return null;
  });
  return outcome.kind === "trouble" ? outcome.why : outcome.result;
};

/** Compared as bytes: a decoder drops the mark at a text's beginning. */
const isText = (bytes: Uint8Array, text: string): boolean => isSameBytes(bytes, utf8Bytes(text));

const besideOf = (place: string): string => join(dirname(place), `.${basename(place)}.new-text`);

const replaceAll = (changes: readonly TextChange[], disk: Disk): void => {
  const replaced: TextChange[] = [];
  try {
    for (const { place, after } of changes) layBeside(place, after, disk);
    for (const change of changes) {
      disk.rename(besideOf(change.place), change.place);
      replaced.push(change);
    }
  } catch (error) {
    for (const { place } of changes) attempt(() => clear(besideOf(place), disk));
    for (const { place, before } of replaced)
      attempt(() => {
        layBeside(place, before, disk);
        disk.rename(besideOf(place), place);
      });
    throw error;
  }
};

const layBeside = (place: string, text: string, disk: Disk): void => {
  const beside = besideOf(place);
  clear(beside, disk);
  disk.write(beside, utf8Bytes(text), place);
};

const clear = (beside: string, disk: Disk): void => {
  if (disk.look(beside) === "file") disk.removeFile(beside);
};
