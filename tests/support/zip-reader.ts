// Zip, strictly, from PKWARE's APPNOTE 6.3: central directory and local headers must agree, entries are stored or
// deflated, checksums hold, and every byte of the file belongs to something.

import { crc32, inflateRawSync } from "node:zlib";

export interface ZipEntry {
  readonly name: string;
  readonly bytes: Buffer;
  /** DOS date and time as one number. */
  readonly stamp: number;
}

export function zipEntries(file: Buffer): readonly ZipEntry[] {
  const end = file.length - 22;
  check(end >= 0 && file.readUInt32LE(end) === 0x06054b50, "the directory's end stands last");
  const count = file.readUInt16LE(end + 10);
  let at = file.readUInt32LE(end + 16);
  let used = 0;
  const entries: ZipEntry[] = [];
  for (let index = 0; index < count; index += 1) {
    check(file.readUInt32LE(at) === 0x02014b50, "a directory entry");
    const nameLength = file.readUInt16LE(at + 28);
    const length = 46 + nameLength + file.readUInt16LE(at + 30) + file.readUInt16LE(at + 32);
    const entry = entryAt(file, at, file.subarray(at + 46, at + 46 + nameLength).toString());
    check(entry.start === used, "entries follow one another without a gap");
    used = entry.end;
    entries.push(entry);
    at += length;
  }
  check(at === end, "the directory reaches its end");
  check(file.readUInt32LE(end + 16) === used, "the directory follows the entries");
  return entries;
}

function entryAt(
  file: Buffer,
  directory: number,
  name: string,
): ZipEntry & { readonly start: number; readonly end: number } {
  const [method, time, date] = [10, 12, 14].map((place) => file.readUInt16LE(directory + place));
  const [sum, packed, size] = [16, 20, 24].map((place) => file.readUInt32LE(directory + place));
  check((file.readUInt16LE(directory + 8) & ~0x0800) === 0, "no encryption, no trailing sizes");
  check(method === 0 || method === 8, "stored or deflated");
  const start = file.readUInt32LE(directory + 42);
  check(file.readUInt32LE(start) === 0x04034b50, "a local header");
  check(file.readUInt16LE(start + 8) === method, "both headers name one method");
  check(file.readUInt32LE(start + 14) === sum, "both headers name one checksum");
  const nameLength = file.readUInt16LE(start + 26);
  check(file.subarray(start + 30, start + 30 + nameLength).toString() === name, "one name");
  const data = start + 30 + nameLength + file.readUInt16LE(start + 28);
  const end = data + packed!;
  const raw = file.subarray(data, end);
  const bytes = method === 0 ? raw : inflateRawSync(raw);
  check(bytes.length === size, `${name} has its stated size`);
  check(crc32(bytes) === sum, `${name} has its stated checksum`);
  return { name, bytes, stamp: date! * 0x10000 + time!, start, end };
}

function check(condition: boolean, what: string): asserts condition {
  if (!condition) throw new Error(`zip: ${what} does not hold`);
}
