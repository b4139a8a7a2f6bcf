// The body of a request up to a cap, and the message in it. What is too long is not read to its end.

import type { IncomingMessage } from "node:http";
import type { SaveMessage, TextChangeMessage } from "./view-messages.ts";

export type ReadBody =
  | { readonly kind: "body"; readonly text: string }
  | { readonly kind: "refused"; readonly status: 400 | 413; readonly why: string };

export const readBody = async (request: IncomingMessage, most: number): Promise<ReadBody> => {
  const read = await readBytes(request, most);
  if (read.kind === "refused") return read;
  try {
    const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
    return { kind: "body", text: decoder.decode(read.bytes) };
  } catch {
    return { kind: "refused", status: 400, why: "it is not UTF-8 text" };
  }
};

export type ReadBytes =
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  | Extract<ReadBody, { readonly kind: "refused" }>;

export const readBytes = async (request: IncomingMessage, most: number): Promise<ReadBytes> => {
  const tooLong: ReadBytes = {
    kind: "refused",
    status: 413,
    why: `more than ${most} bytes are not taken at once`,
  };
  if (Number(request.headers["content-length"] ?? 0) > most) return tooLong;
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of request) {
    if (!(piece instanceof Uint8Array)) continue;
    size += piece.length;
    if (size > most) return tooLong;
    pieces.push(piece);
  }
  return { kind: "bytes", bytes: Buffer.concat(pieces) };
};

/** null where it is no such message. */
export const readSave = (text: string): SaveMessage | null => {
  const value = parsed(text);
  if (!isRecord(value) || !Array.isArray(value["changes"])) return null;
  const changes = value["changes"].flatMap(readChange);
  const paths = new Set(changes.map(({ path }) => path));
  return changes.length === value["changes"].length && paths.size === changes.length
    ? { changes }
    : null;
};

const readChange = (value: unknown): readonly TextChangeMessage[] => {
  if (!isRecord(value)) return [];
  const { path, baseHash, text } = value;
  return typeof path === "string" &&
    typeof text === "string" &&
    (typeof baseHash === "string" || baseHash === null)
    ? [{ path, baseHash, text }]
    : [];
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
