// The texts as they were last compiled in a worker, for everybody who asks it: the page's reading and the console's picture of the
// same texts come of one compilation.

import { compileSteps, type LaidPanel, type Library, type Project } from "../src/project.ts";
import type { DesignSources, DesignTexts } from "./core-messages.ts";
import { firstFiles } from "./first-files.ts";
import { isSameBinaries } from "./same-binaries.ts";

export interface CompiledTexts {
  /** `laid` is told of panels as soon as they can be drawn, where the texts are compiled anew. */
  readonly of: (
    sources: DesignSources,
    library: Library,
    laid?: (panels: readonly LaidPanel[]) => void,
  ) => readonly Project[];
  /** Of the last texts that were asked for; none before the first. */
  readonly last: () => readonly Project[];
}

export function compiledTexts(): CompiledTexts {
  let known: { readonly sources: DesignSources; readonly projects: readonly Project[] } | null =
    null;
  const last = (): readonly Project[] => known?.projects ?? [];
  return {
    of: (sources, library, laid = () => undefined) => {
      if (known === null || !isSameSources(known.sources, sources)) {
        const { texts: files, binaries } = sources;
        // Whatever an edit leaves alone is not worked out again: a tenth of the time for one panel of a dozen.
        const before = new Map(last().flatMap(({ memory }) => [...memory]));
        const projects = firstFiles(files).map((entry) => {
          const steps = compileSteps({ entry, files, binaries }, library, before);
          for (;;) {
            const step = steps.next();
            if (step.done === true) return step.value;
            laid(step.value);
          }
        });
        known = { sources, projects };
      }
      return known.projects;
    },
    last,
  };
}

const isSameSources = (before: DesignSources, now: DesignSources): boolean =>
  isSameTexts(before.texts, now.texts) && isSameBinaries(before.binaries, now.binaries);

const isSameTexts = (before: DesignTexts, now: DesignTexts): boolean =>
  before.size === now.size && [...now].every(([path, text]) => before.get(path) === text);
