// Clears away a pack that has a successor: foreign files move over to the new folder, ours are removed.
// Every step may be the last one before an interruption; begun again, it goes on where it was.

import { dirname, join } from "node:path";
import type { Disk } from "./disk.ts";
import { ownManifest, ownPaths } from "./pack-folder.ts";

export const retireOldPack = (retired: string, target: string, disk: Disk): void => {
  const own = ownPaths(retired, ownManifest(retired, disk), disk);
  carryOver("", { retired, target, own }, disk);
  // The manifest is the last of `own`.
  for (const path of own) {
    const place = join(retired, path);
    if (isReached(retired, path, disk) && disk.look(place) === "file") disk.removeFile(place);
  }
  removeEmptyFolders(retired, disk);
};

/** Removes a folder that this program laid down, links as links. */
export const removeTree = (folder: string, disk: Disk): void => {
  if (disk.look(folder) !== "folder") return;
  for (const name of disk.list(folder)) {
    const place = join(folder, name);
    if (disk.look(place) === "folder") removeTree(place, disk);
    else disk.removeFile(place);
  }
  disk.removeFolder(folder);
};

interface Retirement {
  readonly retired: string;
  readonly target: string;
  readonly own: readonly string[];
}

const carryOver = (folder: string, work: Retirement, disk: Disk): void => {
  for (const name of disk.list(join(work.retired, folder))) {
    const path = folder === "" ? name : `${folder}/${name}`;
    const from = join(work.retired, path);
    const to = join(work.target, path);
    const isShared = disk.look(from) === "folder" && disk.look(to) === "folder";
    const holdsOurs = work.own.some((own) => own === path || own.startsWith(`${path}/`));
    if (isShared || (holdsOurs && disk.look(from) === "folder")) carryOver(path, work, disk);
    else if (!holdsOurs && disk.look(to) === "nothing") {
      disk.makeFolder(dirname(to));
      disk.rename(from, to);
    }
  }
};

/** True where no step of the path is a link: what lies behind a link is not in this folder. */
const isReached = (folder: string, path: string, disk: Disk): boolean => {
  const steps = path.split("/").slice(0, -1);
  return steps.every(
    (_, index) => disk.look(join(folder, ...steps.slice(0, index + 1))) === "folder",
  );
};

const removeEmptyFolders = (folder: string, disk: Disk): void => {
  for (const name of disk.list(folder)) {
    const place = join(folder, name);
    if (disk.look(place) === "folder") removeEmptyFolders(place, disk);
  }
  if (disk.list(folder).length === 0) disk.removeFolder(folder);
};
