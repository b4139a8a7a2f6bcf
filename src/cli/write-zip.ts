// Writes packs as one zip, all of it or nothing: laid down beside its place, then one rename. What is there and was not made by
// this program is never written over. A zip can't be added to, so that the note of a stale one lies beside it.

import { basename, dirname, join } from "node:path";
import { changesBetween, type PartChange } from "../pack/changes.ts";
import { MANIFEST_NAME, type Manifest, readManifest } from "../pack/manifest.ts";
import { type PackInZip, packZip, zipManifests } from "../pack/pack-zip.ts";
import { utf8Bytes, utf8Text } from "../pack/utf8.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import { STALE_LINE, STALE_NAME, type StaleMark } from "./pack-folder.ts";

export type ZipResult =
  | {
      readonly kind: "written";
      readonly bytes: Uint8Array;
      /** By folder in the zip; a pack that the old zip did not hold is not in here. */
      readonly changes: ReadonlyMap<string, readonly PartChange[]>;
    }
  | { readonly kind: "refused"; readonly why: string };

export const writeZip = (target: string, packs: readonly PackInZip[], disk: Disk): ZipResult => {
  const outcome = attempt(() => writeOrRefuse(target, packs, disk));
  if (outcome.kind === "done") return outcome.result;
  // Cleaning up may meet the same trouble; then the next run does it.
  attempt(() => removeIfThere(stagingFile(target), disk));
  return { kind: "refused", why: `${target} could not be written: ${outcome.why}.` };
};

/** The note lies beside an old zip of ours. */
export const markZipStale = (target: string, reasons: readonly string[], disk: Disk): StaleMark => {
  removeIfThere(stagingFile(target), disk);
  if (disk.look(target) !== "file" || zipManifests(disk.read(target)) === null)
    return { kind: "no-pack" };
  const note = staleNote(target);
  if (disk.look(note) !== "nothing" && !isOwnNote(note, disk))
    return { kind: "unmarked", why: `${note} is in the way` };
  removeIfThere(note, disk);
  disk.write(note, utf8Bytes(`${[STALE_LINE, "", ...reasons].join("\n")}\n`));
  return { kind: "marked" };
};

const stagingFile = (target: string): string =>
  join(dirname(target), `.${basename(target)}.new-pack`);

const staleNote = (target: string): string => `${target}.${STALE_NAME}`;

const isOwnNote = (note: string, disk: Disk): boolean =>
  disk.look(note) === "file" && utf8Text(disk.read(note)).startsWith(STALE_LINE);

const removeIfThere = (file: string, disk: Disk): void => {
  if (disk.look(file) === "file") disk.removeFile(file);
};

const writeOrRefuse = (target: string, packs: readonly PackInZip[], disk: Disk): ZipResult => {
  const thing = disk.look(target);
  const before = thing === "file" ? zipManifests(disk.read(target)) : null;
  if (thing !== "nothing" && before === null)
    return {
      kind: "refused",
      why: `${target} is in the way and is no zip of this program, or is damaged; move it, or choose another folder.`,
    };
  const bytes = packZip(packs);
  const staging = stagingFile(target);
  removeIfThere(staging, disk);
  disk.makeFolder(dirname(target));
  disk.write(staging, bytes);
  disk.rename(staging, target);
  // A note that can't be cleared now would speak of the new zip: the next run clears it.
  const note = staleNote(target);
  attempt(() => (isOwnNote(note, disk) ? disk.removeFile(note) : undefined));
  return { kind: "written", bytes, changes: changesOf(packs, before ?? new Map()) };
};

const changesOf = (
  packs: readonly PackInZip[],
  before: ReadonlyMap<string, Manifest>,
): ReadonlyMap<string, readonly PartChange[]> => {
  const changes = new Map<string, readonly PartChange[]>();
  for (const { folder, files } of packs) {
    const file = files.find(({ path }) => path === MANIFEST_NAME);
    const after = file === undefined ? null : readManifest(utf8Text(file.bytes));
    const old = before.get(folder);
    if (old !== undefined && after !== null) changes.set(folder, changesBetween(old, after));
  }
  return changes;
};
