// The page's end of the worker: one call reads a design. While the worker reads, only the newest question waits: what it
// replaces is answered with null, so that a row of quick edits costs two readings and not one each.

import type {
  CoreFailure,
  CoreReply,
  CoreRequest,
  DesignSources,
  PanelReading,
  SentReading,
} from "./core-messages.ts";
import type { PanelAnswer, PanelQuestion } from "./panel/panel-messages.ts";
import { panelsAfter } from "./panel-updates.ts";

interface Question {
  readonly request: CoreRequest;
  readonly answer: (reply: CoreReply | null) => void;
}

let asked: Question | null = null;
let waiting: Question | null = null;
let latest = 0;
/** Below nothing, so that no reading has the same. */
let latestQuestion = 0;

const questions = new Map<number, (answer: PanelAnswer) => void>();

/** Of the last reading, whether or not anybody still wanted it: the next one names what has stayed. */
let panels: readonly PanelReading[] = [];

type Answer = SentReading | CoreFailure | PanelAnswer;

let worker = started();

function started(): Worker {
  const next = new Worker(new URL("./core.worker.ts", import.meta.url), { type: "module" });
  next.addEventListener("message", ({ data }: MessageEvent<Answer>) => take(data));
  next.addEventListener("error", ({ message }) =>
    settle({ kind: "failed", number: asked?.request.number ?? 0, why: message }),
  );
  return next;
}

function take(data: Answer): void {
  const answer = questions.get(data.number);
  questions.delete(data.number);
  if (data.kind === "read") {
    panels = panelsAfter(data.panels, panels);
    settle({ ...data, panels });
    return;
  }
  if (answer !== undefined) answer(data);
  else if (data.kind === "failed") settle(data);
}

/** Ends whatever the worker is at, by another one in its place: nothing else stops a reading. Whoever waits is told. */
export function giveUpAll(): void {
  worker.terminate();
  worker = started();
  panels = [];
  for (const [number, answer] of questions) answer({ kind: "failed", number, why: "given up" });
  questions.clear();
  for (const question of [asked, waiting]) question?.answer(null);
  asked = null;
  waiting = null;
}

/** Where something is being read: another design need not wait for the reading of one that nobody looks at any more. */
export function giveUpReadings(): void {
  if (asked !== null) giveUpAll();
}

/**
 * The reading of a design; null where another was asked for before the worker came to it. A reading that is no more the
 * newest is handed over all the same: else a picture would stand still while somebody types.
 */
export function readDesign(sources: DesignSources): Promise<CoreReply | null> {
  latest += 1;
  const request: CoreRequest = { number: latest, ...sources };
  return new Promise((answer) => {
    waiting?.answer(null);
    waiting = { request, answer };
    if (asked === null) askNext();
  });
}

type Numberless<Question> = Question extends unknown ? Omit<Question, "number"> : never;

/** What the panel view asks beside the reading; answered in its own time. */
export function askPanel(question: Numberless<PanelQuestion>): Promise<PanelAnswer> {
  latestQuestion -= 1;
  const number = latestQuestion;
  return new Promise((answer) => {
    questions.set(number, answer);
    worker.postMessage({ ...question, number });
  });
}

function askNext(): void {
  asked = waiting;
  waiting = null;
  if (asked !== null) worker.postMessage(asked.request);
}

function settle(reply: CoreReply): void {
  if (asked?.request.number !== reply.number) return;
  asked.answer(reply);
  askNext();
}
