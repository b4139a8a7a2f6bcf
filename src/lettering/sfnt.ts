// The table directory of a TrueType or OpenType file, and WOFF 1.0 unpacked to one.
// WOFF 1.0 (W3C, 2012, sections 3 to 5) is an sfnt whose tables are deflated one by one.

import { unzlibSync } from "fflate";
import { invariant } from "../geometry/invariant.ts";

export interface Sfnt {
  readonly bytes: Uint8Array;
  readonly view: DataView;
  /** Where each table starts, by its four-letter tag. */
  readonly tables: ReadonlyMap<string, number>;
}

const WOFF_1 = 0x774f4646;
const WOFF_2 = 0x774f4632;
const WOFF_HEADER = 44;
const WOFF_ENTRY = 20;
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;

/** Opens a WOFF 1.0, TrueType or OpenType file. WOFF 2 is a programmer's mistake: nothing here reads it. */
export const openSfnt = (file: Uint8Array): Sfnt => {
  const signature = viewOf(file).getUint32(0);
  invariant(signature !== WOFF_2, "a packed font is WOFF 1.0, TrueType or OpenType, not WOFF 2");
  const bytes = signature === WOFF_1 ? unpackedWoff(file) : file;
  const view = viewOf(bytes);
  const tables = new Map<string, number>();
  for (let index = 0; index < view.getUint16(4); index += 1) {
    const entry = SFNT_HEADER + SFNT_ENTRY * index;
    tables.set(tagAt(view, entry), view.getUint32(entry + 8));
  }
  return { bytes, view, tables };
};

/** A four-letter tag, as all OpenType tables name their parts. */
export const tagAt = (view: DataView, offset: number): string =>
  String.fromCharCode(
    view.getUint8(offset),
    view.getUint8(offset + 1),
    view.getUint8(offset + 2),
    view.getUint8(offset + 3),
  );

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

interface PackedTable {
  readonly entry: number;
  readonly length: number;
  readonly place: number;
}

const unpackedWoff = (woff: Uint8Array): Uint8Array => {
  const source = viewOf(woff);
  const count = source.getUint16(12);
  const tables: PackedTable[] = [];
  let end = SFNT_HEADER + SFNT_ENTRY * count;
  for (let index = 0; index < count; index += 1) {
    const entry = WOFF_HEADER + WOFF_ENTRY * index;
    const length = source.getUint32(entry + 12);
    tables.push({ entry, length, place: end });
    end += Math.ceil(length / 4) * 4;
  }
  const bytes = new Uint8Array(end);
  const target = viewOf(bytes);
  writeHeader(target, source.getUint32(4), count);
  for (const [index, table] of tables.entries()) {
    const entry = SFNT_HEADER + SFNT_ENTRY * index;
    target.setUint32(entry, source.getUint32(table.entry));
    target.setUint32(entry + 4, source.getUint32(table.entry + 16));
    target.setUint32(entry + 8, table.place);
    target.setUint32(entry + 12, table.length);
    bytes.set(inflatedTable(woff, source, table), table.place);
  }
  return bytes;
};

const inflatedTable = (woff: Uint8Array, source: DataView, table: PackedTable): Uint8Array => {
  const start = source.getUint32(table.entry + 4);
  const packedLength = source.getUint32(table.entry + 8);
  const packed = woff.subarray(start, start + packedLength);
  const bytes = packedLength < table.length ? unzlibSync(packed) : packed;
  invariant(bytes.length === table.length, "a packed font table inflates to its stated length");
  return bytes;
};

/** The header's three search fields are derived from the table count (OpenType 1.9, "Table Directory"). */
const writeHeader = (target: DataView, flavour: number, count: number): void => {
  let selector = 0;
  while (2 << selector <= count) selector += 1;
  const range = SFNT_ENTRY << selector;
  target.setUint32(0, flavour);
  target.setUint16(4, count);
  target.setUint16(6, range);
  target.setUint16(8, selector);
  target.setUint16(10, SFNT_ENTRY * count - range);
};
