// Writes one panel's pack, all of it or nothing. The new pack is laid down beside the target, then two renames
// swap it in; what an interrupted run left is put right first. Files that are not ours are never deleted.

import { dirname, join } from "node:path";
import { changesBetween, type PartChange } from "../pack/changes.ts";
import { MANIFEST_NAME, type Manifest, readManifest } from "../pack/manifest.ts";
import type { PackFile } from "../pack/pack-file.ts";
import { utf8Text } from "../pack/utf8.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import {
  conflictIn,
  ownManifest,
  ownPaths,
  retiredFolder,
  stagingFolder,
  targetRefusal,
} from "./pack-folder.ts";
import { removeTree, retireOldPack } from "./retire-pack.ts";

export type WriteResult =
  | {
      readonly kind: "written";
      /** null: there was no pack of ours before. */
      readonly changes: readonly PartChange[] | null;
    }
  | { readonly kind: "refused"; readonly why: string };

export const writePack = (target: string, files: readonly PackFile[], disk: Disk): WriteResult => {
  const outcome = attempt(() => writeOrRefuse(target, files, disk));
  if (outcome.kind === "done") return outcome.result;
  // Cleaning up may meet the same trouble; then the next run does it.
  attempt(() => removeTree(stagingFolder(target), disk));
  return { kind: "refused", why: `${target} could not be written: ${outcome.why}.` };
};

/** What an interrupted run left: a half-laid pack goes, an old pack without a successor comes back. */
export const recoverPack = (target: string, disk: Disk): void => {
  removeTree(stagingFolder(target), disk);
  const retired = retiredFolder(target);
  if (disk.look(retired) !== "folder") return;
  if (disk.look(target) === "nothing") disk.rename(retired, target);
  else retireOldPack(retired, target, disk);
};

const writeOrRefuse = (target: string, files: readonly PackFile[], disk: Disk): WriteResult => {
  const refusal = targetRefusal(target, disk);
  if (refusal !== null) return { kind: "refused", why: refusal };
  recoverPack(target, disk);
  const before = ownManifest(target, disk);
  const own = ownPaths(target, before, disk);
  const conflict = conflictIn(target, { own, wanted: files.map(({ path }) => path) }, disk);
  if (conflict !== null) return { kind: "refused", why: conflict };
  stage(stagingFolder(target), files, disk);
  if (before === null && isOccupied(target, disk)) addToFolder(target, files, disk);
  else swapIn(target, disk);
  return { kind: "written", changes: before === null ? null : changesSince(before, files) };
};

const isOccupied = (target: string, disk: Disk): boolean =>
  disk.look(target) === "folder" && disk.list(target).length > 0;

const stage = (staging: string, files: readonly PackFile[], disk: Disk): void => {
  disk.makeFolder(staging);
  for (const { path, bytes } of files) {
    const place = join(staging, path);
    disk.makeFolder(dirname(place));
    disk.write(place, bytes);
  }
};

const swapIn = (target: string, disk: Disk): void => {
  const staging = stagingFolder(target);
  const retired = retiredFolder(target);
  if (disk.look(target) === "nothing") {
    disk.rename(staging, target);
    return;
  }
  disk.rename(target, retired);
  try {
    disk.rename(staging, target);
  } catch (error) {
    disk.rename(retired, target);
    throw error;
  }
  // The new pack is in place; remains that can't be cleared now are cleared at the next run.
  attempt(() => retireOldPack(retired, target, disk));
};

/**
 * Into a folder that holds somebody's own files: nothing of theirs moves. The manifest goes first, so that
 * after an interruption the next run knows which files are ours.
 */
const addToFolder = (target: string, files: readonly PackFile[], disk: Disk): void => {
  const staging = stagingFolder(target);
  const manifestFirst = [...files].sort(
    (a, b) => Number(b.path === MANIFEST_NAME) - Number(a.path === MANIFEST_NAME),
  );
  const placed: string[] = [];
  try {
    for (const { path } of manifestFirst) {
      const place = join(target, path);
      disk.makeFolder(dirname(place));
      disk.rename(join(staging, path), place);
      placed.push(place);
    }
  } catch (error) {
    for (const place of placed.reverse()) attempt(() => disk.removeFile(place));
    throw error;
  }
  attempt(() => removeTree(staging, disk));
};

const changesSince = (before: Manifest, files: readonly PackFile[]): readonly PartChange[] => {
  const file = files.find(({ path }) => path === MANIFEST_NAME);
  const after = file === undefined ? null : readManifest(utf8Text(file.bytes));
  return after === null ? [] : changesBetween(before, after);
};
