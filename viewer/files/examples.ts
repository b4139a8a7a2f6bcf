// The examples that are built into the page, by name: fetched once, each a design's texts by their paths.

import { signal } from "@preact/signals";
import type { DesignTexts } from "../core-messages.ts";
import type { Store } from "./store.ts";

type Examples = Readonly<Record<string, Readonly<Record<string, string>>>>;

export const exampleNames = signal<readonly string[]>([]);

let examples: Examples = {};

export async function loadExamples(): Promise<void> {
  const answer = await fetch("examples.json").catch(() => null);
  if (answer?.ok !== true) return;
  examples = await answer.json();
  exampleNames.value = Object.keys(examples).sort();
}

export const exampleTexts = (name: string): DesignTexts =>
  new Map(Object.entries(examples[name] ?? {}));

/** Opened from the page itself; a folder of somebody's may be called as an example is. */
export const isExample = ({ id, name }: Pick<Store, "id" | "name">): boolean =>
  id.startsWith("loose ") && exampleNames.value.includes(name);
