// What lies on the desk: the design that is open, its reading, and what the person looking at it has chosen.
// All state of the page is here, as signals; the views read them and call the functions below.

import { computed, signal } from "@preact/signals";
import { readDesign } from "./core-client.ts";
import type { DesignReading, PanelReading, PlacedFinding } from "./core-messages.ts";

type Examples = Readonly<Record<string, Readonly<Record<string, string>>>>;

export type Progress =
  | { readonly kind: "empty" }
  | { readonly kind: "reading"; readonly what: string }
  | { readonly kind: "shown"; readonly what: string }
  | { readonly kind: "refused"; readonly why: string }
  | { readonly kind: "failed"; readonly why: string };

const reading = signal<DesignReading | null>(null);
const panelName = signal<string | null>(null);

export const progress = signal<Progress>({ kind: "empty" });
export const exampleNames = signal<readonly string[]>([]);
export const hidden = signal<ReadonlySet<string>>(new Set());
export const pointedAt = signal<PlacedFinding | null>(null);

export const panels = computed<readonly PanelReading[]>(() => reading.value?.panels ?? []);
export const findings = computed<readonly PlacedFinding[]>(() => reading.value?.findings ?? []);
export const panel = computed<PanelReading | null>(
  () => panels.value.find(({ name }) => name === panelName.value) ?? panels.value[0] ?? null,
);

let examples: Examples = {};

export async function openFirstExample(): Promise<void> {
  const answer = await fetch("examples.json");
  if (!answer.ok) return;
  examples = await answer.json();
  exampleNames.value = Object.keys(examples).sort();
  const first = exampleNames.value[0];
  if (first !== undefined && progress.value.kind === "empty") await openExample(first);
}

export async function openExample(name: string): Promise<void> {
  await openTexts(name, new Map(Object.entries(examples[name] ?? {})));
}

export interface PathedFile {
  /** From the folder that was chosen or dropped; a loose file's name. */
  readonly path: string;
  readonly file: File;
}

/** Files that the user chose or dropped. What is no design file is left aside. */
export async function openPathed(files: readonly PathedFile[]): Promise<void> {
  const designs = files.filter(({ path }) => /\.ya?ml$/i.test(path));
  if (designs.length === 0) {
    progress.value = {
      kind: "refused",
      why: "None of these is a design file (.yaml).",
    };
    return;
  }
  const texts = await Promise.all(
    designs.map(async ({ path, file }): Promise<[string, string]> => [path, await file.text()]),
  );
  await openTexts(
    designs.length === 1 ? designs[0]!.path : `${designs.length} files`,
    new Map(texts),
  );
}

export function choosePanel(name: string): void {
  panelName.value = name;
  pointedAt.value = null;
}

export function pointAt(finding: PlacedFinding | null): void {
  pointedAt.value = finding;
  if (finding !== null && finding.finding.panel !== "") panelName.value = finding.finding.panel;
}

export function showSheet(name: string, isShown: boolean): void {
  const next = new Set(hidden.value);
  if (isShown) next.delete(name);
  else next.add(name);
  hidden.value = next;
}

async function openTexts(what: string, texts: ReadonlyMap<string, string>): Promise<void> {
  progress.value = { kind: "reading", what };
  const reply = await readDesign(texts);
  if (reply === null) return;
  if (reply.kind === "failed") {
    progress.value = { kind: "failed", why: reply.why };
    return;
  }
  reading.value = reply;
  panelName.value = null;
  pointedAt.value = null;
  hidden.value = new Set();
  progress.value = { kind: "shown", what };
}
