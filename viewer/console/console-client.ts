// The page's end of the console's worker. Steps of a drag are asked one at a time: while one is answered only the newest
// place waits. The fit has a worker of its own, so that it can be given up at once and nothing else has to wait for it.

import type { DesignSources } from "../core-messages.ts";
import type { ConsoleReply, ConsoleRequest, PanelMove } from "./console-messages.ts";

export interface ConsoleClient {
  /** null where the design has been opened anew in the meantime. */
  readonly open: (sources: DesignSources) => Promise<ConsoleReply | null>;
  readonly trueShapes: () => Promise<ConsoleReply>;
  readonly settle: (move: PanelMove) => Promise<ConsoleReply>;
  /** null where a newer place has been asked for. */
  readonly drag: (move: PanelMove) => Promise<ConsoleReply | null>;
  /** Ends at once whatever is asked; the next `open` begins anew. */
  readonly giveUp: () => void;
}

/** What is asked, without the number that tells its answer from another's. */
type Question<Each = ConsoleRequest> = Each extends ConsoleRequest ? Omit<Each, "number"> : never;

export const consoleClient = (): ConsoleClient => {
  let connection = connected();
  const ask = (question: Question): Promise<ConsoleReply> => connection.ask(question);
  let opening = 0;
  let step: Promise<ConsoleReply> | null = null;
  let next: { move: PanelMove; answer: (reply: ConsoleReply | null) => void } | null = null;
  const stepNow = (move: PanelMove): Promise<ConsoleReply> => {
    step = ask({ kind: "drag", move });
    void step.then(() => {
      step = null;
      const waiting = next;
      next = null;
      if (waiting !== null) void stepNow(waiting.move).then(waiting.answer);
    });
    return step;
  };
  return {
    open: async ({ texts, binaries }) => {
      opening += 1;
      const asked = opening;
      const reply = await ask({ kind: "open", texts, binaries });
      return asked === opening ? reply : null;
    },
    trueShapes: () => ask({ kind: "true-shapes" }),
    settle: (move) => ask({ kind: "settle", move }),
    drag: (move) => {
      if (step === null) return stepNow(move);
      return new Promise((answer) => {
        next?.answer(null);
        next = { move, answer };
      });
    },
    giveUp: () => {
      opening += 1;
      next?.answer(null);
      next = null;
      connection.close();
      connection = connected();
    },
  };
};

export interface FitRun {
  readonly done: Promise<ConsoleReply>;
  readonly cancel: () => void;
}

export const runFit = (
  { texts, binaries }: DesignSources,
  tell: (words: string) => void,
): FitRun => {
  const { ask, close } = connected(tell);
  return { done: ask({ kind: "fit", texts, binaries }).finally(close), cancel: close };
};

interface Connection {
  readonly ask: (question: Question) => Promise<ConsoleReply>;
  readonly close: () => void;
}

const connected = (tell: (words: string) => void = () => undefined): Connection => {
  const worker = new Worker(new URL("./console.worker.ts", import.meta.url), { type: "module" });
  const waiting = new Map<number, (reply: ConsoleReply) => void>();
  let latest = 0;
  worker.addEventListener("message", ({ data }: MessageEvent<ConsoleReply>) => {
    if (data.kind === "progress") {
      tell(data.words);
      return;
    }
    waiting.get(data.number)?.(data);
    waiting.delete(data.number);
  });
  const fail = (why: string): void => {
    for (const [number, answer] of waiting) answer({ kind: "failed", number, why });
    waiting.clear();
  };
  worker.addEventListener("error", ({ message }) => fail(message));
  return {
    ask: (question) =>
      new Promise((answer) => {
        latest += 1;
        waiting.set(latest, answer);
        worker.postMessage({ ...question, number: latest });
      }),
    close: () => {
      worker.terminate();
      fail("given up");
    },
  };
};
