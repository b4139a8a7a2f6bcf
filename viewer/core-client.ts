// The page's end of the worker: one call reads a design. A newer call makes an older one's answer void.

import type { CoreReply, CoreRequest, DesignTexts } from "./core-messages.ts";

const worker = new Worker(new URL("./core.worker.ts", import.meta.url), { type: "module" });
const waiting = new Map<number, (reply: CoreReply) => void>();
let latest = 0;

worker.addEventListener("message", ({ data }: MessageEvent<CoreReply>) => {
  waiting.get(data.number)?.(data);
  waiting.delete(data.number);
});

worker.addEventListener("error", (event) => {
  for (const [number, answer] of waiting) answer({ kind: "failed", number, why: event.message });
  waiting.clear();
});

/** The reading of a design; null where another was asked for in the meantime. */
export async function readDesign(texts: DesignTexts): Promise<CoreReply | null> {
  latest += 1;
  const request: CoreRequest = { number: latest, texts };
  const reply = await new Promise<CoreReply>((answer) => {
    waiting.set(request.number, answer);
    worker.postMessage(request);
  });
  return reply.number === latest ? reply : null;
}
