// Writes a picture that the page lays under a panel: into the design's folder, whole or not at all, never over a file that
// is there, through no link that leads out. What is no picture is not written: nothing else comes onto the disk this way.

import { basename, dirname, join } from "node:path";
import { resolveInclude } from "../../design/resolve-include.ts";
import { pictureSize } from "../../inspection/picture-size.ts";
import { isSameBytes } from "../../pack/same-bytes.ts";
import type { Disk } from "../disk.ts";
import { attempt } from "../disk-trouble.ts";
import { isBelow } from "../is-below.ts";
import type { DesignSource } from "./served-design.ts";
import { trueTarget } from "./true-target.ts";
import type { SaveReply } from "./view-messages.ts";

export interface PictureOutcome {
  readonly status: 200 | 403 | 409 | 507;
  readonly reply: SaveReply;
}

/** `path` is from the design's root, forward slashes. */
export const savePicture = (
  path: string,
  bytes: Uint8Array,
  { place, isReadOnly, disk }: DesignSource,
): PictureOutcome => {
  if (isReadOnly) return refused(403, "the design was opened read-only");
  const why = nameTrouble(path);
  if (why !== null) return refused(403, why);
  const size = pictureSize(bytes);
  if (size.kind === "refused") return refused(403, `${path}: ${size.why}. ${size.works}`);
  const written = attempt(() => writeBelow(place.root, path, { bytes, disk }));
  return written.kind === "done" ? written.result : refused(507, written.why);
};

const nameTrouble = (path: string): string | null => {
  const resolved = resolveInclude("", path);
  if (resolved.kind === "refused") return `${path} can't be used: ${resolved.why}`;
  if (resolved.path !== path || path.split("/").some((step) => step.startsWith(".")))
    return `${path} is not written as a plain path`;
  return /\.(?:jpe?g|png|webp)$/i.test(path) ? null : `${path} is not named as a picture is`;
};

const writeBelow = (
  root: string,
  path: string,
  { bytes, disk }: { readonly bytes: Uint8Array; readonly disk: Disk },
): PictureOutcome => {
  const target = join(root, path);
  if (!isBelow(root, trueTarget(target, disk)))
    return refused(403, `${path} leads out of the design's folder by a link`);
  switch (disk.look(target)) {
    case "nothing":
      layWhole(target, bytes, disk);
      return SAVED;
    case "file":
      return isSameBytes(disk.read(target), bytes)
        ? SAVED
        : refused(409, `another picture is called ${path}; give this one another name`);
    case "folder":
    case "link":
    case "other":
      return refused(403, `something that is no file is called ${path}`);
  }
};

/** Laid beside its place first: a full disk leaves no half of a picture under its name. */
const layWhole = (target: string, bytes: Uint8Array, disk: Disk): void => {
  const folder = dirname(target);
  disk.makeFolder(folder);
  const beside = join(folder, `.${basename(target)}.new-picture`);
  if (disk.look(beside) === "file") disk.removeFile(beside);
  try {
    disk.write(beside, bytes);
    disk.rename(beside, target);
  } catch (error) {
    attempt(() => disk.removeFile(beside));
    throw error;
  }
};

const SAVED: PictureOutcome = { status: 200, reply: { kind: "saved" } };

const refused = (status: PictureOutcome["status"], why: string): PictureOutcome => ({
  status,
  reply: { kind: "refused", why },
});
