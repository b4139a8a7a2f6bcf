// A file server on the loopback address for one folder, with the headers of a plain static host.

import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";

export interface StaticServer {
  readonly address: string;
  /** The files that were given, as they were asked for. */
  readonly served: readonly ServedFile[];
  /** Paths that were asked for and not there. */
  readonly missing: readonly string[];
  readonly close: () => Promise<void>;
}

export interface ServedFile {
  readonly path: string;
  /** When it was asked for, by the machine's clock, ms. */
  readonly asked: number;
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};

export async function serveFolder(folder: string): Promise<StaticServer> {
  const served: ServedFile[] = [];
  const missing: string[] = [];
  const server = createServer(async (request, response) => {
    const asked = Date.now();
    const { pathname } = new URL(request.url ?? "/", "http://loopback");
    const path = normalize(pathname.endsWith("/") ? `${pathname}index.html` : pathname);
    try {
      const bytes = await readFile(join(folder, path));
      response.writeHead(200, { "content-type": TYPES[extname(path)] ?? "text/plain" });
      response.end(bytes);
      served.push({ path, asked });
    } catch {
      missing.push(pathname);
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const bound = server.address();
  if (bound === null || typeof bound === "string") throw new Error("the server has no port");
  return {
    address: `http://127.0.0.1:${bound.port}/`,
    served,
    missing,
    close: () =>
      new Promise((done, failed) => {
        server.close((reason) => (reason === undefined ? done() : failed(reason)));
        server.closeAllConnections();
      }),
  };
}
