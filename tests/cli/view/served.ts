// A small design in a temporary folder with the server of `view` before it, and plain HTTP requests to it: node:http, so
// that a test may say any Host and Origin that a browser would not let a page say.

import { mkdirSync, writeFileSync } from "node:fs";
import { request as httpRequest, type OutgoingHttpHeaders } from "node:http";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { type Disk, realDisk } from "../../../src/cli/disk.ts";
import { type DesignServer, startServer } from "../../../src/cli/view/design-server.ts";
import { pageFiles } from "../../../src/cli/view/page-files.ts";
import { temporaryFolder } from "../temporary-folder.ts";

export const WORKSHOP = "consolewright: 1\nkind: workshop\nname: shed\n";
export const PANEL = "consolewright: 1\nkind: panel\nname: pumps\nworkshop: ../shed.yaml\n";

export interface Served {
  readonly root: string;
  readonly server: DesignServer;
  readonly ask: (path: string, asked?: Asked) => Promise<Answer>;
  readonly save: (changes: readonly object[], headers?: OutgoingHttpHeaders) => Promise<Answer>;
}

export interface Asked {
  readonly method?: string;
  /** Over the usual ones; undefined leaves one out. */
  readonly headers?: OutgoingHttpHeaders;
  readonly body?: string | Uint8Array;
}

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly text: string;
}

export const serveDesign = async (
  given: { readonly disk?: Disk; readonly isReadOnly?: boolean } = {},
): Promise<Served> => {
  const folder = temporaryFolder();
  const root = join(folder, "design");
  for (const below of ["panels", "../page/assets"])
    mkdirSync(join(root, below), { recursive: true });
  writeFileSync(join(root, "shed.yaml"), WORKSHOP);
  writeFileSync(join(root, "panels/pumps.yaml"), PANEL);
  writeFileSync(join(root, "secret.yaml"), "kind: note\n");
  writeFileSync(join(folder, "page/index.html"), "<html><head></head></html>");
  writeFileSync(join(folder, "page/assets/page.js"), "export {};");
  const source = {
    place: { root, entry: "panels/pumps.yaml" },
    isReadOnly: given.isReadOnly ?? false,
    disk: given.disk ?? realDisk,
  };
  const page = pageFiles(join(folder, "page"));
  if (page === null) throw new Error("the page is not there");
  const started = await startServer({ source, page, port: 0 });
  if (started.kind !== "started") throw new Error(started.kind);
  const { server } = started;
  onTestFinished(() => server.close());
  const ask = (path: string, asked: Asked = {}): Promise<Answer> => askAt(server, path, asked);
  const save: Served["save"] = (changes, headers = {}) =>
    ask("/design/texts", { method: "PUT", headers, body: JSON.stringify({ changes }) });
  return { root, server, ask, save };
};

const askAt = (server: DesignServer, path: string, asked: Asked): Promise<Answer> =>
  new Promise((done, failed) => {
    const host = `127.0.0.1:${server.port}`;
    const usual: OutgoingHttpHeaders = { host, authorization: `Bearer ${server.key}` };
    if (asked.method === "PUT") usual["origin"] = `http://${host}`;
    const headers = Object.entries({ ...usual, ...asked.headers }).filter(
      ([, value]) => value !== undefined,
    );
    const request = httpRequest(
      {
        host: "127.0.0.1",
        port: server.port,
        path,
        method: asked.method ?? "GET",
        headers: Object.fromEntries(headers),
        setHost: false,
        agent: false,
      },
      (response) => {
        let text = "";
        response.setEncoding("utf8");
        response.on("data", (piece) => {
          text += piece;
        });
        response.on("end", () =>
          done({ status: response.statusCode ?? 0, headers: response.headers, text }),
        );
      },
    );
    request.on("error", failed);
    request.end(asked.body);
  });
