// The program in a worker: reads a design's texts and answers with its panels and findings. The same code as the
// command line runs, on the same library data, which is fetched once.

import { lineAndColumn } from "../src/diagnostics/position.ts";
import { compile, type Library, openLibrary, type Project } from "../src/project.ts";
import type { CoreReply, CoreRequest, DesignTexts } from "./core-messages.ts";

const library = fetchLibrary();

self.addEventListener("message", async ({ data }: MessageEvent<CoreRequest>) => {
  self.postMessage(await replyTo(data));
});

async function replyTo({ number, texts }: CoreRequest): Promise<CoreReply> {
  try {
    return readingOf(number, texts, compile({ files: texts }, await library));
  } catch (reason) {
    return { kind: "failed", number, why: reason instanceof Error ? reason.message : `${reason}` };
  }
}

function readingOf(number: number, texts: DesignTexts, project: Project): CoreReply {
  return {
    kind: "read",
    number,
    panels: project.panels.map(({ name, title, file, layout }) => ({ name, title, file, layout })),
    findings: project.findings.map((finding) => ({
      finding,
      ...lineAndColumn(texts.get(finding.span.file) ?? "", finding.span.start),
    })),
  };
}

async function fetchLibrary(): Promise<Library> {
  // The worker lies in a folder beside the data, built or not.
  const answer = await fetch(new URL("../library.json", self.location.href));
  if (!answer.ok) throw new Error(`the library could not be loaded (${answer.status})`);
  return openLibrary(await answer.json());
}
