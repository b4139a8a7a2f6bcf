// The binary container of glTF 2.0: a header of 12 bytes, the JSON chunk filled up with spaces and the binary chunk with
// zeros, each to a multiple of four bytes (specification, section 4.4). Takes the JSON's text and the buffer; gives bytes.

import { strToU8 } from "fflate";

/** "glTF", "JSON" and "BIN" as little-endian words. */
const MAGIC = 0x46546c67;
const JSON_CHUNK = 0x4e4f534a;
const BINARY_CHUNK = 0x004e4942;
const VERSION = 2;
const HEADER = 12;
const CHUNK_HEADER = 8;
const SPACE = 0x20;

/** A file without a buffer has no binary chunk. */
export const glbContainer = (json: string, buffer: Uint8Array): Uint8Array => {
  const chunks = [
    { type: JSON_CHUNK, bytes: filledUp(strToU8(json), SPACE) },
    ...(buffer.length === 0 ? [] : [{ type: BINARY_CHUNK, bytes: filledUp(buffer, 0) }]),
  ];
  const length = chunks.reduce((sum, { bytes }) => sum + CHUNK_HEADER + bytes.length, HEADER);
  const file = new Uint8Array(length);
  const view = new DataView(file.buffer);
  view.setUint32(0, MAGIC, true);
  view.setUint32(4, VERSION, true);
  view.setUint32(8, length, true);
  let at = HEADER;
  for (const { type, bytes } of chunks) {
    view.setUint32(at, bytes.length, true);
    view.setUint32(at + 4, type, true);
    file.set(bytes, at + CHUNK_HEADER);
    at += CHUNK_HEADER + bytes.length;
  }
  return file;
};

const filledUp = (bytes: Uint8Array, fill: number): Uint8Array => {
  const whole = new Uint8Array(Math.ceil(bytes.length / 4) * 4).fill(fill);
  whole.set(bytes);
  return whole;
};
