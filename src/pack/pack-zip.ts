// Packs as one zip, each in a folder of its own: unpacked, it is what `make` writes as folders. And the other way round: what an
// old zip of ours says that it holds, for what changed since, and so that nobody else's zip is written over.

import { unzipSync } from "fflate";
import { zipFile } from "../export/zip.ts";
import { invariant } from "../geometry/invariant.ts";
import { pathFault } from "./file-name.ts";
import { MANIFEST_NAME, type Manifest, readManifest } from "./manifest.ts";
import type { PackFile } from "./pack-file.ts";
import { utf8Text } from "./utf8.ts";

export interface PackInZip {
  /** From the zip's root, with a slash behind: "winch/", "tug-trainer/winch/". */
  readonly folder: string;
  readonly files: readonly PackFile[];
}

export const packZip = (packs: readonly PackInZip[]): Uint8Array =>
  zipFile(
    packs.flatMap(({ folder, files }) =>
      files.map(({ path, bytes }) => {
        const fault = pathFault(`${folder}${path}`);
        invariant(fault === null, `${folder}${path} can be written everywhere: ${fault}`);
        return { path: `${folder}${path}`, bytes };
      }),
    ),
  );

/**
 * The manifests in a zip by the folder that they stand in; null where the bytes are no zip, or one that holds a file which none
 * of them lists: such a zip is not ours.
 */
export const zipManifests = (bytes: Uint8Array): ReadonlyMap<string, Manifest> | null => {
  const names: string[] = [];
  const texts = unpackedManifests(bytes, names);
  if (texts === null) return null;
  const manifests = new Map<string, Manifest>();
  for (const [name, content] of Object.entries(texts)) {
    const manifest = readManifest(utf8Text(content));
    if (manifest !== null) manifests.set(name.slice(0, -MANIFEST_NAME.length), manifest);
  }
  const ours = new Set(
    [...manifests].flatMap(([folder, { files }]) => [
      `${folder}${MANIFEST_NAME}`,
      ...files.map(({ path }) => `${folder}${path}`),
    ]),
  );
  return names.length > 0 && names.every((name) => ours.has(name)) ? manifests : null;
};

/** Of a thousand files it is 200 kB; what claims to be more is not unpacked. */
const LARGEST_MANIFEST = 16_000_000;

const unpackedManifests = (
  bytes: Uint8Array,
  names: string[],
): Readonly<Record<string, Uint8Array>> | null => {
  try {
    return unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        names.push(name);
        return name.split("/").at(-1) === MANIFEST_NAME && originalSize <= LARGEST_MANIFEST;
      },
    });
  } catch {
    return null;
  }
};
