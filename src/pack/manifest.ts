// The manifest of a pack: every file with its size and hash, every part with the hash of what is cut.
// It says which files in a folder are ours, and at the next writing what changed. It holds no date.

import { pathFault } from "./file-name.ts";
import type { PackFile, PackFileKind } from "./pack-file.ts";
import type { PartHash } from "./part-hash.ts";
import { sha256 } from "./sha256.ts";
import { utf8Bytes } from "./utf8.ts";

export const MANIFEST_NAME = "manifest.json";
const FORMAT = "consolewright-pack-1";

export interface Manifest {
  readonly panel: string;
  readonly revision: string;
  readonly files: readonly ManifestFile[];
  readonly parts: readonly PartHash[];
}

export interface ManifestFile {
  readonly path: string;
  readonly kind: PackFileKind;
  readonly part: string;
  readonly bytes: number;
  readonly sha256: string;
}

export const manifestOf = (
  panel: { readonly name: string; readonly revision: string },
  files: readonly PackFile[],
  parts: readonly PartHash[],
): Manifest => ({
  panel: panel.name,
  revision: panel.revision,
  files: files.map(({ path, kind, part, bytes }) => ({
    path,
    kind,
    part,
    bytes: bytes.length,
    sha256: sha256(bytes),
  })),
  parts,
});

export const manifestFile = (manifest: Manifest): PackFile => ({
  path: MANIFEST_NAME,
  kind: "manifest",
  part: "",
  bytes: utf8Bytes(`${JSON.stringify({ format: FORMAT, ...manifest }, null, 2)}\n`),
});

/** Null where the text is not a manifest of ours: somebody else's file of the same name, or a damaged one. */
export const readManifest = (text: string): Manifest | null => {
  const value = parsed(text);
  if (!isRecord(value) || value["format"] !== FORMAT) return null;
  const { panel, revision, files, parts } = value;
  const isWhole =
    typeof panel === "string" &&
    typeof revision === "string" &&
    isListOf(files, isManifestFile) &&
    isListOf(parts, isPartHash);
  return isWhole ? { panel, revision, files, parts } : null;
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isListOf = <Item>(
  value: unknown,
  isItem: (item: unknown) => item is Item,
): value is readonly Item[] => Array.isArray(value) && value.every(isItem);

// A path that leads out of the folder makes the whole manifest foreign: files are removed by this list.
const isManifestFile = (value: unknown): value is ManifestFile =>
  isRecord(value) &&
  typeof value["path"] === "string" &&
  pathFault(value["path"]) === null &&
  typeof value["kind"] === "string" &&
  typeof value["part"] === "string" &&
  typeof value["bytes"] === "number" &&
  typeof value["sha256"] === "string";

const isPartHash = (value: unknown): value is PartHash =>
  isRecord(value) &&
  typeof value["id"] === "string" &&
  typeof value["shape"] === "string" &&
  typeof value["setting"] === "string";
