// A panel with faults keeps its old pack, whole; a note in it says that the design has moved on.
// Nothing is marked in a folder that holds no pack of ours.

import { join } from "node:path";
import { utf8Bytes } from "../pack/utf8.ts";
import type { Disk } from "./disk.ts";
import {
  isOwnStaleNote,
  ownManifest,
  STALE_LINE,
  STALE_NAME,
  type StaleMark,
} from "./pack-folder.ts";
import { recoverPack } from "./write-pack.ts";

export const markStale = (target: string, reasons: readonly string[], disk: Disk): StaleMark => {
  if (disk.look(target) === "link") return { kind: "no-pack" };
  recoverPack(target, disk);
  if (ownManifest(target, disk) === null) return { kind: "no-pack" };
  const place = join(target, STALE_NAME);
  const isForeign = disk.look(place) !== "nothing" && !isOwnStaleNote(target, disk);
  if (isForeign) return { kind: "unmarked", why: `${place} is in the way` };
  if (disk.look(place) === "file") disk.removeFile(place);
  disk.write(place, utf8Bytes(`${[STALE_LINE, "", ...reasons].join("\n")}\n`));
  return { kind: "marked" };
};
