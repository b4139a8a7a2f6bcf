// The program in a worker: reads a design's texts and answers with its panels and findings. The same code as the
// command line runs, on the same library data, which is fetched once.

import type { Finding } from "../src/diagnostics/finding.ts";
import { lineAndColumn } from "../src/diagnostics/position.ts";
import type { PanelLayout } from "../src/layout/panel-layout.ts";
import { compile, type PanelProject, type Project } from "../src/project.ts";
import type {
  CoreFailure,
  CoreRequest,
  DesignTexts,
  PanelReading,
  PlacedFinding,
  SentReading,
} from "./core-messages.ts";
import { firstFiles } from "./first-files.ts";
import type { PanelAnswer, PanelQuestion } from "./panel/panel-messages.ts";
import { panelPicture } from "./panel/panel-picture.ts";
import { shapeData } from "./panel/shape-data.ts";
import { panelUpdates } from "./panel-updates.ts";
import { openedLibrary } from "./worker-library.ts";

// On its way before anybody asks; whoever does is told why it failed.
openedLibrary().catch(() => undefined);

/** Kept from reading to reading: what was written of a shape holds for its copies. */
const shapes = shapeData();
let lastRead: readonly Project[] = [];
/** As the page has them. */
let lastSent: readonly PanelReading[] = [];

self.addEventListener("message", async ({ data }: MessageEvent<CoreRequest | PanelQuestion>) => {
  self.postMessage(await ("kind" in data ? answerTo(data) : replyTo(data)));
});

async function answerTo(question: PanelQuestion): Promise<PanelAnswer> {
  const { number } = question;
  try {
    // Sections and lists are drawn when they are asked for: the first picture is shown without them.
    const { panelAnswer } = await import("./panel/panel-answers.ts");
    const scene = { library: await openedLibrary(), projects: lastRead, data: shapes };
    return panelAnswer(question, scene);
  } catch (reason) {
    return { kind: "failed", number, why: reason instanceof Error ? reason.message : `${reason}` };
  }
}

async function replyTo({
  number,
  texts,
  binaries,
}: CoreRequest): Promise<SentReading | CoreFailure> {
  try {
    const opened = await openedLibrary();
    // Whatever an edit leaves alone is not worked out again: a tenth of the time for one panel of a dozen.
    const before = new Map(lastRead.flatMap(({ memory }) => [...memory]));
    const projects = firstFiles(texts).map((entry) =>
      compile({ entry, files: texts, binaries }, opened, before),
    );
    lastRead = projects;
    return readingOf(number, texts, projects);
  } catch (reason) {
    return { kind: "failed", number, why: reason instanceof Error ? reason.message : `${reason}` };
  }
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
function panelReading({ name, design, layout }: PanelProject): PanelReading {
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
  markings: layout.markings.map((marking) => ({ ...marking, fills: [], strokes: [] })),
});

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
