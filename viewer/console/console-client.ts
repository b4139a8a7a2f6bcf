// The page's end of what its worker says of the console. Steps of a drag are asked one at a time: while one is answered only the
// newest place waits. The fit has a worker of its own, so that it can be given up at once and nothing else has to wait for it.

import { askOnConsole, giveUpQuestions } from "../core-client.ts";
import type { DesignSources } from "../core-messages.ts";
import type {
  ConsoleQuestion,
  ConsoleReply,
  FitOutcome,
  FitReply,
  PanelMove,
} from "./console-messages.ts";

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

export const consoleClient = (): ConsoleClient => {
  let opening = 0;
  let step: Promise<ConsoleReply> | null = null;
  let next: { move: PanelMove; answer: (reply: ConsoleReply | null) => void } | null = null;
  const stepNow = (move: PanelMove): Promise<ConsoleReply> => {
    step = asked({ kind: "drag", move });
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
      const mine = opening;
      const reply = await askOnConsole({ kind: "open", texts, binaries });
      return mine === opening ? reply : null;
    },
    trueShapes: () => asked({ kind: "true-shapes" }),
    settle: (move) => asked({ kind: "settle", move }),
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
      giveUpQuestions();
    },
  };
};

const asked = async (question: ConsoleQuestion): Promise<ConsoleReply> =>
  (await askOnConsole(question)) ?? { kind: "failed", why: "given up" };

export interface FitRun {
  readonly done: Promise<FitOutcome>;
  readonly cancel: () => void;
}

export const runFit = (
  { texts, binaries }: DesignSources,
  tell: (words: string) => void,
): FitRun => {
  const worker = new Worker(new URL("./fit.worker.ts", import.meta.url), { type: "module" });
  let end: (outcome: FitOutcome) => void = () => undefined;
  const done = new Promise<FitOutcome>((answer) => {
    end = (outcome) => {
      worker.terminate();
      answer(outcome);
    };
  });
  worker.addEventListener("message", ({ data }: MessageEvent<FitReply>) => {
    if (data.kind === "progress") tell(data.words);
    else end(data);
  });
  worker.addEventListener("error", ({ message: why }) => end({ kind: "failed", why }));
  worker.postMessage({ texts, binaries });
  return { done, cancel: () => end({ kind: "failed", why: "given up" }) };
};
