// The examples as projects, compiled afresh at each call, and their packs.

import { dirname, join } from "node:path";
import { exampleFiles } from "../../scripts/example-files.ts";
import { compileExample } from "../../scripts/example-pictures.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import type { PanelPack } from "../../src/pack/panel-pack.ts";
import { type PanelProject, type Project, packOfProject } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

export const ROOT = dirname(dirname(import.meta.dirname));

const EXAMPLES = exampleFiles(ROOT);

export const EXAMPLE_NAMES: readonly string[] = Object.keys(EXAMPLES);

export const exampleTexts = (name: string): Readonly<Record<string, string>> => {
  const texts = EXAMPLES[name];
  if (texts === undefined) throw new Error(`there is no example ${name}`);
  return texts;
};

export const exampleProject = (name: string): Project =>
  compileExample(exampleTexts(name), testLibrary());

export interface ExamplePack {
  readonly panel: PanelProject;
  readonly pack: PanelPack;
}

export const packsOf = (project: Project, only: "everything" | "fascia"): readonly ExamplePack[] =>
  project.panels.map((panel) => packOf(project, panel, { only }));

export interface ExamplePackOptions {
  readonly only: "everything" | "fascia";
  readonly kernel?: Kernel;
}

/** Without a kernel there are no print files in it. */
export const packOf = (
  project: Project,
  panel: PanelProject,
  { only, kernel }: ExamplePackOptions,
): ExamplePack => ({
  panel,
  pack: packOfProject(project, panel, { only, card: false, kernel: kernel ?? null }),
});

export const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

export const inRoot = (path: string): string => join(ROOT, path);

/** Panels whose drawings and papers are made too: they hold every kind of printed part that the examples have. */
export const WHOLE = [
  ["first-panel", "first-panel"],
  ["rack-panel", "studio-rack"],
  ["tug-trainer", "alarms"],
  ["tug-trainer", "radio"],
  ["tug-trainer", "tow-release"],
] as const;
