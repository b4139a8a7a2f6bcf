// The manifest of a pack of ours that lies in the output, as a folder or a zip of its own; null where none does. No link is
// followed: what lies behind one is not in the output.

import type { Manifest } from "../pack/manifest.ts";
import { zipManifests } from "../pack/pack-zip.ts";
import type { Disk } from "./disk.ts";
import type { PackForm } from "./made.ts";
import { ownManifest } from "./pack-folder.ts";

export const oldManifest = (place: string, as: PackForm, disk: Disk): Manifest | null =>
  oldManifests(place, as, disk)[0] ?? null;

/** Of every pack that lies there: a zip may hold several. */
export const oldManifests = (place: string, as: PackForm, disk: Disk): readonly Manifest[] =>
  as === "folders" ? inFolder(place, disk) : inZip(place, disk);

const inFolder = (place: string, disk: Disk): readonly Manifest[] => {
  const manifest = disk.look(place) === "folder" ? ownManifest(place, disk) : null;
  return manifest === null ? [] : [manifest];
};

const inZip = (place: string, disk: Disk): readonly Manifest[] =>
  place.endsWith(".zip") && disk.look(place) === "file"
    ? [...(zipManifests(disk.read(place))?.values() ?? [])]
    : [];
