// The page's end of the worker: one call reads a design. While the worker reads, only the newest question waits: what it
// replaces is answered with null, so that a row of quick edits costs two readings and not one each.

import type { ConsoleAnswer, ConsoleQuestion, ConsoleReply } from "./console/console-messages.ts";
import type {
  CoreFailure,
  CoreReply,
  CoreRequest,
  DesignSources,
  PanelReading,
  SentPictures,
  SentReading,
} from "./core-messages.ts";
import type { PanelAnswer, PanelQuestion } from "./panel/panel-messages.ts";
import { panelsAfter } from "./panel-updates.ts";

interface Question {
  readonly request: CoreRequest;
  readonly drawn: (panels: readonly PanelReading[]) => void;
  readonly answer: (reply: CoreReply | null) => void;
}

let asked: Question | null = null;
let waiting: Question | null = null;
let latest = 0;
/** Below nothing, so that no reading has the same. */
let latestQuestion = 0;

const questions = new Map<number, (answer: PanelAnswer) => void>();
const onConsole = new Map<number, (reply: ConsoleReply | null) => void>();

/** Of the last reading, whether or not anybody still wanted it: the next one names what has stayed. */
let panels: readonly PanelReading[] = [];

type Answer = SentPictures | SentReading | CoreFailure | PanelAnswer | ConsoleAnswer;

let worker = started();

function started(): Worker {
  const next = new Worker(new URL("./core.worker.ts", import.meta.url), { type: "module" });
  next.addEventListener("message", ({ data }: MessageEvent<Answer>) => take(data));
  next.addEventListener("error", ({ message: why }) => {
    failQuestions(why);
    for (const answer of onConsole.values()) answer({ kind: "failed", why });
    onConsole.clear();
    settle({ kind: "failed", number: asked?.request.number ?? 0, why });
  });
  return next;
}

function take(data: Answer): void {
  if (data.kind === "console") {
    onConsole.get(data.number)?.(data.reply);
    onConsole.delete(data.number);
    return;
  }
  if (data.kind === "drawn") {
    panels = panelsAfter(data.panels, panels);
    if (asked?.request.number === data.number) asked.drawn(panels);
    return;
  }
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
  for (const question of [asked, waiting]) question?.answer(null);
  asked = null;
  waiting = null;
  giveUpQuestions();
}

/** The same of all but the reading, which the other worker is asked for. */
export function giveUpQuestions(): void {
  worker.terminate();
  worker = started();
  panels = [];
  failQuestions("given up");
  for (const answer of onConsole.values()) answer(null);
  onConsole.clear();
  if (asked !== null) worker.postMessage(asked.request);
}

function failQuestions(why: string): void {
  const unanswered = [...questions];
  questions.clear();
  for (const [number, answer] of unanswered) answer({ kind: "failed", number, why });
}

/** Where something is being read: another design need not wait for the reading of one that nobody looks at any more. */
export function giveUpReadings(): void {
  if (asked !== null) giveUpAll();
}

/**
 * The reading of a design; null where another was asked for before the worker came to it. A reading that is no more the
 * newest is handed over all the same: else a picture would stand still while somebody types. `drawn` is told of the panels that
 * the page has and that are laid out anew, before they are judged.
 */
export function readDesign(
  sources: DesignSources,
  drawn: (panels: readonly PanelReading[]) => void = () => undefined,
): Promise<CoreReply | null> {
  latest += 1;
  const request: CoreRequest = { number: latest, ...sources };
  return new Promise((answer) => {
    waiting?.answer(null);
    waiting = { request, drawn, answer };
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

/** What the console's view asks of the design; null where all was given up. */
export function askOnConsole(question: ConsoleQuestion): Promise<ConsoleReply | null> {
  latestQuestion -= 1;
  const number = latestQuestion;
  return new Promise((answer) => {
    onConsole.set(number, answer);
    worker.postMessage({ kind: "console", number, question });
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
