// The manifest of a pack of ours that lies in the output, as a folder or a zip of its own; null where none does. No link is
// followed: what lies behind one is not in the output.

import type { Manifest } from "../pack/manifest.ts";
import { zipManifests } from "../pack/pack-zip.ts";
import type { Disk } from "./disk.ts";
import type { PackForm } from "./made.ts";
import { ownManifest } from "./pack-folder.ts";

export const oldManifest = (place: string, as: PackForm, disk: Disk): Manifest | null =>
  as === "folders" ? inFolder(place, disk) : inZip(place, disk);

const inFolder = (place: string, disk: Disk): Manifest | null =>
  disk.look(place) === "folder" ? ownManifest(place, disk) : null;

const inZip = (place: string, disk: Disk): Manifest | null => {
  if (!place.endsWith(".zip") || disk.look(place) !== "file") return null;
  return [...(zipManifests(disk.read(place)) ?? new Map<string, Manifest>()).values()][0] ?? null;
};
