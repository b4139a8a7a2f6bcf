// The design behind the server of `view`: loaded, saved and followed by requests that carry the key of the address.

import type { DesignMessage, SaveMessage, SaveReply } from "../../src/cli/view/view-messages.ts";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import type {
  Following,
  KeptPicture,
  LoadOutcome,
  SaveOutcome,
  Store,
  TextChange,
} from "./store.ts";

export type ServerStore =
  | { readonly kind: "store"; readonly store: Store }
  | { readonly kind: "trouble"; readonly why: string };

/** The store, once the server has said what its design is. */
export async function serverStore(): Promise<ServerStore> {
  const first = await askDesign();
  if (first.kind === "trouble") return first;
  const { id, name } = first.message;
  return { kind: "store", store: { id, name, saving: "Save", load, save, keepPicture, follow } };
}

/** Read at each request: an address that `view` prints anew is opened in the same page, and only its key differs. */
const key = (): string => new URLSearchParams(location.hash.slice(1)).get("key") ?? "";

const ask = (address: string, init: RequestInit = {}): Promise<Response> =>
  fetch(address, { ...init, headers: { authorization: `Bearer ${key()}` } });

const NO_ANSWER = "the server does not answer: it has ended, or this machine is asleep";

type AskedDesign =
  | { readonly kind: "message"; readonly message: DesignMessage }
  | { readonly kind: "trouble"; readonly why: string };

async function askDesign(): Promise<AskedDesign> {
  try {
    const answer = await ask("design");
    if (!answer.ok) return { kind: "trouble", why: await refusalOf(answer) };
    const message: DesignMessage = await answer.json();
    return { kind: "message", message };
  } catch {
    return { kind: "trouble", why: NO_ANSWER };
  }
}

async function refusalOf(answer: Response): Promise<string> {
  if (answer.status === 401)
    return "this address lacks the key of the server's present run: open the address that the program has printed";
  const reply: SaveReply = await answer.json();
  return reply.kind === "refused" ? reply.why : `the server answers ${answer.status}`;
}

async function load(): Promise<LoadOutcome> {
  const asked = await askDesign();
  if (asked.kind === "trouble") return asked;
  const { files, unread, shapes, isReadOnly, troubles } = asked.message;
  const binaries = await Promise.all(shapes.map(shapeAt));
  return {
    kind: "loaded",
    design: {
      texts: new Map(files.map(({ path, text }) => [path, text])),
      unread,
      binaries: new Map(binaries.flat()),
      locked: new Map(
        files
          .filter(({ isWritable }) => !isWritable)
          .map(({ path }) => [path, `${path} is read-only on the disk`]),
      ),
      isReadOnly,
      troubles,
    },
  };
}

async function shapeAt(path: string): Promise<readonly (readonly [string, Uint8Array])[]> {
  try {
    const answer = await ask(`design/shapes/${inAddress(path)}`);
    return answer.ok ? [[path, new Uint8Array(await answer.arrayBuffer())]] : [];
  } catch {
    // Reading the design says at its place that the shape is missing.
    return [];
  }
}

const inAddress = (path: string): string => path.split("/").map(encodeURIComponent).join("/");

async function keepPicture(path: string, bytes: Uint8Array<ArrayBuffer>): Promise<KeptPicture> {
  try {
    const answer = await ask(`design/pictures/${inAddress(path)}`, { method: "PUT", body: bytes });
    return answer.ok ? { kind: "kept" } : { kind: "refused", why: await refusalOf(answer) };
  } catch {
    return { kind: "refused", why: NO_ANSWER };
  }
}

async function save(changes: readonly TextChange[]): Promise<SaveOutcome> {
  const message: SaveMessage = {
    changes: changes.map(({ file, before, after }) => ({
      path: file,
      baseHash: before === null ? null : textHash(before),
      text: after,
    })),
  };
  try {
    const answer = await ask("design/texts", { method: "PUT", body: JSON.stringify(message) });
    if (answer.status === 401) return { kind: "refused", why: await refusalOf(answer) };
    const reply: SaveReply = await answer.json();
    return outcomeOf(reply);
  } catch {
    return { kind: "refused", why: NO_ANSWER };
  }
}

function outcomeOf(reply: SaveReply): SaveOutcome {
  switch (reply.kind) {
    case "saved":
      return { kind: "saved", how: "Saved" };
    case "changed-outside":
      return {
        kind: "changed-outside",
        files: new Map(reply.files.map(({ path, text }) => [path, text])),
      };
    case "refused":
      return { kind: "refused", why: reply.why };
  }
}

/** How long until the server is asked again, ms. */
const AGAIN_MS = 1000;

function follow(following: Following): () => void {
  const ending = new AbortController();
  void keepListening(following, ending.signal);
  return () => ending.abort();
}

async function keepListening(following: Following, ending: AbortSignal): Promise<void> {
  while (!ending.aborted) {
    try {
      const answer = await ask("design/changes", { signal: ending });
      if (answer.ok && answer.body !== null) {
        following.lost(null);
        // Whatever changed while nobody listened, or since the design was read.
        following.changed();
        await listen(answer.body, following.changed);
        following.lost(NO_ANSWER);
      } else following.lost(await refusalOf(answer));
    } catch {
      if (!ending.aborted) following.lost(NO_ANSWER);
    }
    await new Promise((done) => setTimeout(done, AGAIN_MS));
  }
}

/** Server-sent events (WHATWG HTML 9.2), by `fetch` because an EventSource can't say the key. */
async function listen(
  body: ReadableStream<Uint8Array<ArrayBuffer>>,
  changed: () => void,
): Promise<void> {
  const reader = body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    const lines = (rest + value).split("\n");
    rest = lines.pop() ?? "";
    if (lines.some((line) => line.startsWith("data:"))) changed();
  }
}
