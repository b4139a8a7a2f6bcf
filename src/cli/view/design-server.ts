// The server behind `view`: the built page and one design, on the loopback address only. Takes a design and a port, gives
// the address with its key, and a way to end it. It reads and writes nothing but what the design is made of.

import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { MOST_PICTURE_BYTES } from "../../design/file-caps.ts";
import { reasonWords } from "../../diagnostics/reason-words.ts";
import type { PageFiles } from "./page-files.ts";
import { readBody, readBytes, readSave } from "./read-body.ts";
import { hostsOf, METHODS, type Refusal, refuseKeyless, refuseStranger } from "./request-guard.ts";
import { savePicture } from "./save-picture.ts";
import { saveTexts } from "./save-texts.ts";
import { type DesignSource, servedDesign } from "./served-design.ts";
import { watchDesign } from "./watch-design.ts";

export interface DesignServer {
  readonly port: number;
  /** With the key: whoever has it may read and write the design. */
  readonly address: string;
  readonly key: string;
  readonly close: () => Promise<void>;
}

export interface ServerSettings {
  readonly source: DesignSource;
  readonly page: PageFiles;
  /** 0: any that is free. */
  readonly port: number;
}

export type Started =
  | { readonly kind: "started"; readonly server: DesignServer }
  | { readonly kind: "port-taken" }
  | { readonly kind: "no-address"; readonly why: string };

/** How long a request may take to come, and how often that is looked at, ms. */
export interface Patience {
  readonly head: number;
  readonly request: number;
  readonly look: number;
}

/** All texts of a large design come in a fraction of it from the same machine. */
const PATIENCE: Patience = { head: 10_000, request: 30_000, look: 5000 };

export const startServer = async (
  settings: ServerSettings,
  patience: Patience = PATIENCE,
): Promise<Started> => {
  const key = randomBytes(KEY_BYTES).toString("base64url");
  const listeners = new Set<ServerResponse>();
  const hosts: string[] = [];
  const desk: ServedDesk = { ...settings, key, hosts, listeners };
  // Of the two times Node takes the smaller one for the head: said alone, the one for the request would be the default for heads.
  const times = {
    headersTimeout: patience.head,
    requestTimeout: patience.request,
    connectionsCheckingInterval: patience.look,
  };
  const server = createServer(times, (request, response) => void answer(request, response, desk));
  const bound = await listen(server, settings.port);
  if (bound.kind !== "bound") return bound;
  hosts.push(...hostsOf(bound.port));
  const watching = watchFor(desk);
  const beat = setInterval(() => tell(listeners, ": still here\n\n"), BEAT_MS);
  return {
    kind: "started",
    server: {
      port: bound.port,
      key,
      address: `http://${bound.host}:${bound.port}/#key=${key}`,
      close: async () => {
        clearInterval(beat);
        watching.close();
        for (const listener of listeners) listener.end();
        await new Promise<void>((done) => {
          server.close(() => done());
          server.closeAllConnections();
        });
      },
    },
  };
};

const KEY_BYTES = 24;
/** Often enough for a page to notice that the server is gone. */
const BEAT_MS = 10_000;
/** All texts of a large design in one save. */
const MOST_BODY = 16_000_000;

interface ServedDesk extends ServerSettings {
  readonly key: string;
  readonly hosts: readonly string[];
  readonly listeners: Set<ServerResponse>;
}

type Bound =
  | { readonly kind: "bound"; readonly port: number; readonly host: string }
  | Exclude<Started, { readonly kind: "started" }>;

/** Where a machine has no IPv4 loopback, the other one. */
const listen = async (server: Server, port: number): Promise<Bound> => {
  const first = await listenAt(server, port, "127.0.0.1");
  return first.kind === "no-address" ? listenAt(server, port, "::1") : first;
};

const listenAt = (server: Server, port: number, host: string): Promise<Bound> =>
  new Promise((done) => {
    const failed = (error: NodeJS.ErrnoException): void => {
      const taken = error.code === "EADDRINUSE" || error.code === "EACCES";
      done(taken ? { kind: "port-taken" } : { kind: "no-address", why: error.message });
    };
    server.once("error", failed);
    server.listen(port, host, () => {
      server.off("error", failed);
      const at = server.address();
      const name = host === "::1" ? "[::1]" : host;
      if (typeof at === "object" && at !== null) done({ kind: "bound", port: at.port, host: name });
    });
  });

const watchFor = ({ source, listeners }: ServedDesk): { readonly close: () => void } => {
  const watching = watchDesign(source.place.root, () => {
    watching.follow(servedDesign(source).watched);
    tell(listeners, "data: changed\n\n");
  });
  watching.follow(servedDesign(source).watched);
  return watching;
};

const tell = (listeners: ReadonlySet<ServerResponse>, words: string): void => {
  for (const listener of listeners) listener.write(words);
};

const answer = async (
  request: IncomingMessage,
  response: ServerResponse,
  desk: ServedDesk,
): Promise<void> => {
  try {
    const { method = "", headers, rawHeaders } = request;
    const head = { method, headers, rawHeaders };
    const stranger = refuseStranger(head, desk.hosts);
    if (stranger !== null) return refuse(response, stranger);
    const address = addressOf(request.url ?? "");
    if (address === null) return refuse(response, { status: 400, why: "no such address" });
    if (!address.startsWith("/design"))
      return answerPage(response, head.method, desk.page(address));
    const keyless = refuseKeyless(head, desk.key);
    if (keyless !== null) return refuse(response, keyless);
    await answerDesign({ request, response, method: head.method }, address, desk);
  } catch (error) {
    // A page that goes away in the middle of its request is no fault; anything else is told in words, and the server lives on.
    if (!response.headersSent) send(response, 500, { kind: "refused", why: reasonWords(error) });
    else response.end();
  }
};

interface Asked {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  readonly method: string;
}

const addressOf = (url: string): string | null => {
  try {
    return url.startsWith("/") ? decodeURIComponent(url.split(/[?#]/)[0] ?? "") : null;
  } catch {
    return null;
  }
};

const answerPage = (
  response: ServerResponse,
  method: string,
  file: ReturnType<PageFiles>,
): void => {
  if (method === "PUT") refuse(response, { status: 405, why: "the page is not written" });
  else if (file === null) send(response, 404, { kind: "refused", why: "there is no such file" });
  else {
    response.writeHead(200, { ...HEADERS, "content-type": file.type });
    response.end(method === "HEAD" ? undefined : file.bytes);
  }
};

const answerDesign = async (asked: Asked, address: string, desk: ServedDesk): Promise<void> => {
  const { response, method } = asked;
  const wanted = `${method === "HEAD" ? "GET" : method} ${address}`;
  if (wanted === "GET /design") return send(response, 200, servedDesign(desk.source).message);
  if (wanted === "GET /design/changes") return listenTo(asked, desk);
  if (wanted === "PUT /design/texts") return save(asked, desk);
  const picture = /^PUT \/design\/pictures\/(.+)$/.exec(wanted)?.[1];
  if (picture !== undefined) return keepPicture(picture, asked, desk);
  const shape = /^GET \/design\/shapes\/(.+)$/.exec(wanted)?.[1];
  const bytes = shape === undefined ? undefined : shapeAt(shape, desk);
  if (bytes !== undefined) {
    response.writeHead(200, { ...HEADERS, "content-type": "application/octet-stream" });
    response.end(method === "HEAD" ? undefined : bytes);
  } else if (method === "PUT") refuse(response, { status: 405, why: `${address} is not written` });
  else send(response, 404, { kind: "refused", why: "there is no such address" });
};

const shapeAt = (path: string, { source }: ServedDesk): Uint8Array | undefined =>
  servedDesign(source).loaded.binaries.get(path) ?? undefined;

const listenTo = ({ response, method }: Asked, { listeners }: ServedDesk): void => {
  response.writeHead(200, { ...HEADERS, "content-type": "text/event-stream" });
  if (method === "HEAD") {
    response.end();
    return;
  }
  response.write(": listening\n\n");
  listeners.add(response);
  response.on("close", () => listeners.delete(response));
};

const save = async ({ request, response }: Asked, { source }: ServedDesk): Promise<void> => {
  const body = await readBody(request, MOST_BODY);
  if (body.kind === "refused") {
    response.setHeader("connection", "close");
    return send(response, body.status, { kind: "refused", why: body.why });
  }
  const message = readSave(body.text);
  if (message === null)
    return send(response, 400, { kind: "refused", why: "it is not a list of texts to save" });
  const { status, reply } = saveTexts(message.changes, source);
  send(response, status, reply);
};

const keepPicture = async (
  path: string,
  { request, response }: Asked,
  { source }: ServedDesk,
): Promise<void> => {
  const body = await readBytes(request, MOST_PICTURE_BYTES);
  if (body.kind === "refused") {
    response.setHeader("connection", "close");
    return send(response, body.status, { kind: "refused", why: body.why });
  }
  const { status, reply } = savePicture(path, body.bytes, source);
  send(response, status, reply);
};

const refuse = (response: ServerResponse, { status, why }: Refusal): void => {
  if (status === 405) response.setHeader("allow", METHODS.join(", "));
  send(response, status, { kind: "refused", why });
};

const send = (response: ServerResponse, status: number, message: object): void => {
  response.writeHead(status, { ...HEADERS, "content-type": "application/json" });
  response.end(JSON.stringify(message));
};

/**
 * No script but the page's own, no frame round it, nothing kept, nothing told to others. The one style that may stand inline, by
 * its hash, is that of the fit report, which the job pack's room shows in a frame; viewer/index.html has the same.
 */
const HEADERS = {
  "content-security-policy":
    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; style-src 'self' 'sha256-l8RRgHDtgHFNec9RqrMtyxf8ajH+mnW3dXbTtu4hEtA='; connect-src 'self'; " +
    "img-src 'self' data: blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-resource-policy": "same-origin",
  "cross-origin-opener-policy": "same-origin",
  "cache-control": "no-store",
};
