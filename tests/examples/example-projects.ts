// The examples as projects, compiled afresh at each call, and their packs.

import { dirname, join } from "node:path";
import { exampleFiles } from "../../scripts/example-files.ts";
import { compileExample } from "../../scripts/example-pictures.ts";
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
  project.panels.map((panel) => ({
    panel,
    pack: packOfProject(project, panel, { only, card: false }),
  }));

/** The whole packs of an example, made once a test file. */
export const wholePacks = (name: string): readonly ExamplePack[] => {
  const known = kept.get(name);
  if (known !== undefined) return known;
  const packs = packsOf(exampleProject(name), "everything");
  kept.set(name, packs);
  return packs;
};

const kept = new Map<string, readonly ExamplePack[]>();

export const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

export const inRoot = (path: string): string => join(ROOT, path);
