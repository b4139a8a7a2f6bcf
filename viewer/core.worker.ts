// The program in a worker: reads a design's texts and answers with its panels and findings, and whatever else is asked of the
// same compilation. The same code as the command line runs, on the same library data, which is fetched once.

import type { Finding } from "../src/diagnostics/finding.ts";
import { lineAndColumn } from "../src/diagnostics/position.ts";
import { reasonWords } from "../src/diagnostics/reason-words.ts";
import { madeOnce } from "../src/geometry/made-once.ts";
import type { PanelLayout, PlacedMarking } from "../src/layout/panel-layout.ts";
import type { LaidPanel, Project } from "../src/project.ts";
import { compiledTexts } from "./compiled-texts.ts";
import type { ConsoleAnswer, ConsoleAsked } from "./console/console-messages.ts";
import type {
  CoreFailure,
  CoreRequest,
  DesignTexts,
  PanelReading,
  PlacedFinding,
  SentPictures,
  SentReading,
} from "./core-messages.ts";
import { kept } from "./kept.ts";
import type { PanelAnswer, PanelQuestion } from "./panel/panel-messages.ts";
import { panelPicture } from "./panel/panel-picture.ts";
import { shapeData } from "./panel/shape-data.ts";
import { panelUpdates } from "./panel-updates.ts";
import { openedKernel, openedLibrary } from "./worker-library.ts";

// On its way before anybody asks; whoever does is told why it failed.
openedLibrary().catch(() => undefined);

/** Kept from reading to reading: what was written of a shape holds for its copies. */
const shapes = shapeData();
const compiled = compiledTexts();
/** As the page has them. */
let lastSent: readonly PanelReading[] = [];

self.addEventListener(
  "message",
  ({ data }: MessageEvent<CoreRequest | PanelQuestion | ConsoleAsked>) => {
    if (!("kind" in data)) void replyTo(data).then((reply) => self.postMessage(reply));
    else if (data.kind !== "console")
      void answerTo(data).then((answer) => self.postMessage(answer));
    // In their order: a step of a drag is of the console that was opened before it.
    else consoleQueue = consoleQueue.then(() => answerOnConsole(data));
  },
);

let consoleQueue: Promise<void> = Promise.resolve();

/** Loaded when a console is first looked at. */
const onConsole = kept(async () => {
  const { consoleAnswers, handedOver } = await import("./console/console-answers.ts");
  const answers = consoleAnswers({
    compiled: async (sources) => compiled.of(sources, await openedLibrary()),
    kernel: openedKernel,
  });
  return { answers, handedOver };
});

async function answerOnConsole({ number, question }: ConsoleAsked): Promise<void> {
  const send = (answer: ConsoleAnswer, transfer: ArrayBufferLike[] = []): void =>
    self.postMessage(answer, { transfer });
  try {
    const { answers, handedOver } = await onConsole();
    const reply = await answers(question);
    send({ kind: "console", number, reply }, handedOver(reply));
  } catch (reason) {
    send({ kind: "console", number, reply: { kind: "failed", why: reasonWords(reason) } });
  }
}

async function answerTo(question: PanelQuestion): Promise<PanelAnswer> {
  const { number } = question;
  try {
    // Sections and lists are drawn when they are asked for: the first picture is shown without them.
    const { panelAnswer } = await import("./panel/panel-answers.ts");
    const scene = { library: await openedLibrary(), projects: compiled.last(), data: shapes };
    return panelAnswer(question, scene);
  } catch (reason) {
    return { kind: "failed", number, why: reasonWords(reason) };
  }
}

async function replyTo({
  number,
  texts,
  binaries,
}: CoreRequest): Promise<SentReading | CoreFailure> {
  try {
    const library = await openedLibrary();
    const projects = compiled.of({ texts, binaries }, library, (laid) =>
      sendPictures(number, laid),
    );
    return readingOf(number, texts, projects);
  } catch (reason) {
    return { kind: "failed", number, why: reasonWords(reason) };
  }
}

/** While they are judged here the page draws them: two processors, and half of an edit's time each. */
function sendPictures(number: number, laid: readonly LaidPanel[]): void {
  const drawn = lastSent.map((last) => {
    const now = laid.find(({ name, design }) => name === last.name && design.file === last.file);
    return now === undefined || now.layout === null ? last : panelReading(now);
  });
  const panels = panelUpdates(drawn, lastSent);
  if (panels.every(({ kind }) => kind === "same")) return;
  lastSent = drawn;
  const pictures: SentPictures = { kind: "drawn", number, panels };
  self.postMessage(pictures);
}

function readingOf(number: number, texts: DesignTexts, projects: readonly Project[]): SentReading {
  const panels = projects.flatMap((project) => project.panels);
  const findings = [
    ...projects.flatMap((project) => project.findings),
    ...panels.flatMap((panel) => panel.findings),
  ];
  const before = lastSent;
  const standing = projects.flatMap(({ console }) => console ?? [])[0];
  lastSent = panels.map(panelReading);
  return {
    kind: "read",
    number,
    panels: panelUpdates(lastSent, before),
    console: standing === undefined ? null : { design: standing.design },
    findings: distinct(findings.map((finding) => placed(finding, texts))),
  };
}

/** The same panel, which the memory of the last reading has kept, has the same reading. */
function panelReading({ name, design, layout }: LaidPanel): PanelReading {
  const base = { name, title: design.title, file: design.file, design };
  if (layout === null) return { ...base, layout: null, picture: null };
  const known = readings.get(layout);
  if (known !== undefined && known.name === name) return known;
  const picture = panelPicture(layout, shapes);
  const reading = { ...base, layout: withoutShapes(layout), picture };
  readings.set(layout, reading);
  return reading;
}

const readings = new WeakMap<PanelLayout, PanelReading>();

/** Letters are most of a layout, and copying them takes longer than laying it out: the picture has them as path data. */
const withoutShapes = (layout: PanelLayout): PanelLayout => ({
  ...layout,
  markings: layout.markings.map(withoutLetters),
});

const withoutLetters = madeOnce(
  (marking: PlacedMarking): PlacedMarking => ({ ...marking, fills: [], strokes: [] }),
);

const placed = (finding: Finding, texts: DesignTexts): PlacedFinding => ({
  finding,
  ...lineAndColumn(texts.get(finding.span.file) ?? "", finding.span.start),
});

/** A workshop that several panels name is read with each of them, and its findings come with each. */
function distinct(findings: readonly PlacedFinding[]): readonly PlacedFinding[] {
  const byKey = new Map(
    findings.map((placed) => {
      const { code, panel, span, message } = placed.finding;
      return [[code, panel, span.file, span.start, message].join("\n"), placed];
    }),
  );
  return [...byKey.values()];
}
