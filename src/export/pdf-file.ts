// The bytes of a PDF from its objects: header, objects in order, table of their places, trailer (ISO 32000-1, 7.5).
// Streams are compressed by a library that is plain arithmetic, so that every engine writes the same bytes.

import { zlibSync } from "fflate";

/** Object 1 is the catalogue, object 3 the information. */
export type PdfObject =
  | string
  | {
      /** What stands in the dictionary beside filter and length, with a space at its end. */
      readonly entries: string;
      readonly stream: string;
    };

/** Bytes above 127 in a comment tell file programs that the file is not text (7.5.2). */
const HEADER = "%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n";

const COMPRESSION = 6;

export const pdfFile = (objects: readonly PdfObject[]): Uint8Array => {
  const chunks: Uint8Array[] = [latinBytes(HEADER)];
  const offsets: number[] = [];
  let length = HEADER.length;
  const add = (chunk: Uint8Array): void => {
    chunks.push(chunk);
    length += chunk.length;
  };
  for (const [index, object] of objects.entries()) {
    offsets.push(length);
    for (const chunk of objectChunks(object, index + 1)) add(chunk);
  }
  add(latinBytes(closing(offsets, length)));
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
};

const objectChunks = (object: PdfObject, number: number): readonly Uint8Array[] => {
  if (typeof object === "string") return [latinBytes(`${number} 0 obj\n${object}\nendobj\n`)];
  const data = zlibSync(latinBytes(object.stream), { level: COMPRESSION });
  const dictionary = `<< ${object.entries}/Filter /FlateDecode /Length ${data.length} >>`;
  return [
    latinBytes(`${number} 0 obj\n${dictionary}\nstream\n`),
    data,
    latinBytes("\nendstream\nendobj\n"),
  ];
};

/** Every entry of the table is 20 bytes long, its line end included (7.5.4). */
const closing = (offsets: readonly number[], start: number): string => {
  const entries = offsets.map((offset) => `${String(offset).padStart(10, "0")} 00000 n \n`);
  const count = offsets.length + 1;
  const table = `xref\n0 ${count}\n0000000000 65535 f \n${entries.join("")}`;
  return `${table}trailer\n<< /Size ${count} /Root 1 0 R /Info 3 0 R >>\nstartxref\n${start}\n%%EOF\n`;
};

/** Everything that is not compressed is of characters below 256: a character is a byte. */
const latinBytes = (text: string): Uint8Array => {
  const bytes = new Uint8Array(text.length);
  for (let index = 0; index < text.length; index += 1) bytes[index] = text.charCodeAt(index);
  return bytes;
};
