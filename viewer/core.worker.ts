// The program in a worker: reads a design's texts and answers with its panels and findings. The same code as the
// command line runs, on the same library data, which is fetched once.

import type { Finding } from "../src/diagnostics/finding.ts";
import { lineAndColumn } from "../src/diagnostics/position.ts";
import { compile, type Library, openLibrary, type Project } from "../src/project.ts";
import type { CoreReply, CoreRequest, DesignTexts, PlacedFinding } from "./core-messages.ts";
import { firstFiles } from "./first-files.ts";

const library = fetchLibrary();
// Whoever asks is told why; until then nobody listens.
library.catch(() => undefined);

self.addEventListener("message", async ({ data }: MessageEvent<CoreRequest>) => {
  self.postMessage(await replyTo(data));
});

async function replyTo({ number, texts, binaries }: CoreRequest): Promise<CoreReply> {
  try {
    const opened = await library;
    const projects = firstFiles(texts).map((entry) =>
      compile({ entry, files: texts, binaries }, opened),
    );
    return readingOf(number, texts, projects);
  } catch (reason) {
    return { kind: "failed", number, why: reason instanceof Error ? reason.message : `${reason}` };
  }
}

function readingOf(number: number, texts: DesignTexts, projects: readonly Project[]): CoreReply {
  const panels = projects.flatMap((project) => project.panels);
  const findings = [
    ...projects.flatMap((project) => project.findings),
    ...panels.flatMap((panel) => panel.findings),
  ];
  return {
    kind: "read",
    number,
    panels: panels.map(({ name, design, layout }) => ({
      name,
      title: design.title,
      file: design.file,
      design,
      layout,
    })),
    console: projects.find(({ console }) => console !== null)?.console ?? null,
    findings: distinct(findings.map((finding) => placed(finding, texts))),
  };
}

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

async function fetchLibrary(): Promise<Library> {
  // The worker lies in a folder beside the data when it is built.
  const answer = await fetch(new URL("../library.json", self.location.href));
  if (!answer.ok) throw new Error(`the library could not be loaded (${answer.status})`);
  return openLibrary(await answer.json());
}
