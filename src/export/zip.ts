// Files as one zip (PKWARE APPNOTE 6.3.10): sorted by name, one fixed date, one stated level of compression, so that the same
// files give the same bytes on every machine. Takes names with forward slashes; a name that could lead anywhere is a bug.

import { zipSync } from "fflate";
import { invariant } from "../geometry/invariant.ts";

export interface ZipEntry {
  /** Below the folder that it is unpacked into: "winch/cut/winch-face.svg". */
  readonly path: string;
  readonly bytes: Uint8Array;
}

export const zipFile = (entries: readonly ZipEntry[]): Uint8Array => {
  invariant(entries.length <= MOST_ENTRIES, "a zip holds no more than 65,535 files");
  const size = entries.reduce((sum, { bytes }) => sum + bytes.length, 0);
  invariant(size <= MOST_BYTES, "a zip of this kind holds less than 4 GiB");
  const taken = new Set<string>();
  for (const { path } of entries) {
    invariant(isHarmless(path), `"${path}" stays below the folder that it is unpacked into`);
    invariant(!taken.has(path.toLowerCase()), `"${path}" is in the zip once`);
    taken.add(path.toLowerCase());
  }
  const sorted = entries.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  return zipSync(Object.fromEntries(sorted.map(({ path, bytes }) => [path, bytes])), {
    level: LEVEL,
    mem: MEMORY,
    mtime: FIXED_DATE,
  });
};

/** APPNOTE 4.4.21 and 4.4.9: counts take two bytes, sizes four; the larger form (4.5.3) is read by fewer programs. */
const MOST_ENTRIES = 0xffff;
const MOST_BYTES = 0xffff_0000;

/** Of zlib's 0 to 9. */
const LEVEL = 6;

/** 2^16 places in the packer's table. Told, or it is worked out by a logarithm, and engines differ in its last bit. */
const MEMORY = 4;

/** Without a zone: a zip carries local time, so that every zone writes the same digits. */
const FIXED_DATE = "2000-01-01T12:00:00";

/** Letters, digits and a few signs; no step is empty, "." or "..", none begins with a sign (APPNOTE 4.4.17.1: no drive, no slash first). */
const isHarmless = (path: string): boolean =>
  path.split("/").every((step) => /^[A-Za-z0-9][A-Za-z0-9._-]*$/.test(step));
