// The console of a design, with what its bodies are made of.

import type { ConsoleProject, Project } from "../../src/project.ts";

export interface FoundConsole {
  readonly project: Project;
  readonly console: ConsoleProject;
  readonly printedParts: ReadonlyMap<string, Project["panels"][number]["printedParts"]>;
}

/** null where the design holds none. */
export function firstConsole(projects: readonly Project[]): FoundConsole | null {
  for (const project of projects) {
    const { console, panels } = project;
    if (console === null) continue;
    const printedParts = new Map(panels.map(({ name, printedParts: parts }) => [name, parts]));
    return { project, console, printedParts };
  }
  return null;
}
