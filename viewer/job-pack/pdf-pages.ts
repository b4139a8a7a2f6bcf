// Reads a pack's PDF back to be drawn and printed: every page's paths in millimetres, y down. Written from ISO 32000-1:2008 (7.5
// file structure, 8.4 and 8.5 operators) for files of paths alone, which a pack's are; null where a file is anything else.

import { unzlibSync } from "fflate";
import { type PaintedPage, paintedPage } from "./pdf-paint.ts";

/** `tell`: each page as soon as it is read, and of how many. */
export const pdfPages = (
  bytes: Uint8Array,
  tell: (page: PaintedPage, of: number) => void,
): readonly PaintedPage[] | null => {
  try {
    return pagesOf(objectsOf(bytes), tell);
  } catch {
    return null;
  }
};

interface PdfObject {
  readonly dictionary: string;
  readonly stream: () => string;
}

type PdfObjects = ReadonlyMap<number, PdfObject>;

/** By the table that `startxref` points to (7.5.4, 7.5.5). */
const objectsOf = (bytes: Uint8Array): PdfObjects => {
  const text = latin(bytes);
  const start = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text)?.[1]);
  const table = /^xref\n0 \d+\n((?:\d{10} \d{5} [fn][ \r][\r\n])+)/.exec(text.slice(start));
  const entries = table?.[1]?.match(/.{20}/gs) ?? [];
  const objects = new Map<number, PdfObject>();
  for (const [number, entry] of entries.entries()) {
    if (!entry.includes("n")) continue;
    const at = Number(entry.slice(0, 10));
    objects.set(number, objectAt(text, at, bytes));
  }
  return objects;
};

const objectAt = (text: string, at: number, bytes: Uint8Array): PdfObject => {
  const streamAt = text.indexOf("\nstream\n", at);
  const endAt = text.indexOf("\nendobj", at);
  if (streamAt < 0 || streamAt > endAt)
    return { dictionary: text.slice(at, endAt), stream: () => "" };
  const dictionary = text.slice(at, streamAt);
  const length = Number(/\/Length (\d+)/.exec(dictionary)?.[1]);
  const from = streamAt + "\nstream\n".length;
  // What all pages place is unpacked once.
  let content: string | null = null;
  const stream = (): string => {
    content ??= latin(unpacked(bytes.subarray(from, from + length)));
    return content;
  };
  return { dictionary, stream };
};

/** What is printed from here is drilled by: the checksum behind the data (Adler-32, RFC 1950, 8.2) is held against it. */
const unpacked = (packed: Uint8Array): Uint8Array => {
  const bytes = unzlibSync(packed);
  let [a, b] = [1, 0];
  for (const byte of bytes) {
    a = (a + byte) % 65_521;
    b = (b + a) % 65_521;
  }
  const stated = new DataView(packed.buffer, packed.byteOffset).getUint32(packed.length - 4);
  if (b * 0x1_0000 + a !== stated) throw new Error("a stream that is spoilt");
  return bytes;
};

const pagesOf = (
  objects: PdfObjects,
  tell: (page: PaintedPage, of: number) => void,
): readonly PaintedPage[] | null => {
  const tree = [...objects.values()].find(({ dictionary }) => dictionary.includes("/Type /Pages"));
  const kids = [...(listIn(tree, "Kids") ?? "").matchAll(/(\d+) 0 R/g)];
  const pages: PaintedPage[] = [];
  for (const [, number] of kids) {
    const page = pageOf(objects.get(Number(number)), objects);
    if (page === null) return null;
    pages.push(page);
    tell(page, kids.length);
  }
  return pages.length === 0 ? null : pages;
};

const pageOf = (page: PdfObject | undefined, objects: PdfObjects): PaintedPage | null => {
  const [, , width = 0, height = 0] = (listIn(page, "MediaBox") ?? "").split(" ").map(Number);
  const content = referred(page, "Contents", objects);
  const resources = referred(page, "Resources", objects);
  if (content === undefined || !(width > 0 && height > 0)) return null;
  const form = (name: string): string => {
    const placed = referred(resources, name, objects);
    if (placed === undefined) throw new Error(`a page that places ${name}, which is not there`);
    return placed.stream();
  };
  return paintedPage(content.stream(), { width, height, form });
};

const listIn = (object: PdfObject | undefined, key: string): string | undefined =>
  new RegExp(`/${key} \\[([^\\]]*)\\]`).exec(object?.dictionary ?? "")?.[1];

const referred = (
  object: PdfObject | undefined,
  key: string,
  objects: PdfObjects,
): PdfObject | undefined =>
  objects.get(Number(new RegExp(`/${key} (\\d+) 0 R`).exec(object?.dictionary ?? "")?.[1]));

/** A byte is a character. */
const latin = (bytes: Uint8Array): string => new TextDecoder("latin1").decode(bytes);
