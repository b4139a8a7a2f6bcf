// A picture as a PNG file: eight bits a channel, red, green, blue, no date and no other chunk, so that the same picture has
// the same bytes (W3C Portable Network Graphics, third edition: signature, IHDR, IDAT, IEND).

import { zlibSync } from "fflate";
import type { Raster } from "../drawings/raster.ts";

const SIGNATURE: readonly number[] = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

export const pngFile = (raster: Raster): Uint8Array => {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, raster.width);
  view.setUint32(4, raster.height);
  // Eight bits a sample, colour type 2 (red, green, blue), the only compression, filtering and interlacing there is.
  header.set([8, 2, 0, 0, 0], 8);
  const chunks = [
    chunk("IHDR", header),
    chunk("IDAT", zlibSync(filteredRows(raster), { level: 9 })),
    chunk("IEND", new Uint8Array(0)),
  ];
  const size = chunks.reduce((sum, { length }) => sum + length, SIGNATURE.length);
  const bytes = new Uint8Array(size);
  bytes.set(SIGNATURE);
  let at = SIGNATURE.length;
  for (const each of chunks) {
    bytes.set(each, at);
    at += each.length;
  }
  return bytes;
};

/** Each row behind its filter byte: 1, the difference to the pixel on the left, which packs plain areas well. */
const filteredRows = ({ width, height, rgb }: Raster): Uint8Array => {
  const stride = 3 * width;
  const rows = new Uint8Array((stride + 1) * height);
  for (let row = 0; row < height; row += 1) {
    const into = row * (stride + 1);
    rows[into] = 1;
    for (let at = 0; at < stride; at += 1) {
      const left = at < 3 ? 0 : (rgb[row * stride + at - 3] ?? 0);
      rows[into + 1 + at] = (rgb[row * stride + at] ?? 0) - left;
    }
  }
  return rows;
};

const chunk = (kind: string, data: Uint8Array): Uint8Array => {
  const bytes = new Uint8Array(data.length + 12);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(
    [...kind].map((letter) => letter.charCodeAt(0)),
    4,
  );
  bytes.set(data, 8);
  view.setUint32(data.length + 8, crc(bytes.subarray(4, data.length + 8)));
  return bytes;
};

/** CRC-32 of kind and data, polynomial 0xedb88320 (PNG, annex D). */
const crc = (bytes: Uint8Array): number => {
  let value = 0xffffffff;
  for (const byte of bytes) value = (CRC_TABLE[(value ^ byte) & 0xff] ?? 0) ^ (value >>> 8);
  return (value ^ 0xffffffff) >>> 0;
};

const CRC_TABLE: readonly number[] = Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value >>> 0;
});
