// The built page: every file of it by the address that it has, with its type. An address that is not in the list is not
// served, so that none can lead out of the folder.

import { readdirSync, readFileSync, statSync } from "node:fs";
import { extname, join, sep } from "node:path";

export interface PageFile {
  readonly bytes: Uint8Array;
  readonly type: string;
}

export type PageFiles = (address: string) => PageFile | null;

/** null where the page was not built. */
export const pageFiles = (folder: string): PageFiles | null => {
  const first = join(folder, "index.html");
  if (statSync(first, { throwIfNoEntry: false })?.isFile() !== true) return null;
  const places = new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((place) => [
        `/${place
          .slice(folder.length + 1)
          .split(sep)
          .join("/")}`,
        place,
      ]),
  );
  return (address) => {
    const place = places.get(address === "/" ? "/index.html" : address);
    const type = TYPES[extname(place ?? "")];
    if (place === undefined || type === undefined) return null;
    const bytes = readFileSync(place);
    return { type, bytes: place === first ? servedPage(bytes) : bytes };
  };
};

/** The page can't see from its address alone that a server stands behind it. */
const servedPage = (bytes: Uint8Array): Uint8Array =>
  Buffer.from(
    Buffer.from(bytes)
      .toString("utf8")
      .replace("<head>", '<head>\n    <meta name="consolewright-design" content="served">'),
  );

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};
