// What the view of a console knows: its scene, how it is looked at, which hand works, what is chosen and measured. Signals;
// the picture and the page beside it follow them. Lives while the view is open.

import { effect, signal } from "@preact/signals";
import type { DesignSources } from "../core-messages.ts";
import { choosePanel, consoleFile, isCurrent, pointedAt, sourcesOf, texts } from "../desk.ts";
import { store } from "../files/stored-state.ts";
import { calledByKey } from "../panel-called.ts";
import type { CameraGoal } from "./camera-goal.ts";
import { consoleClient } from "./console-client.ts";
import type { ConsoleReply, ConsoleScene, SceneBody } from "./console-messages.ts";
import { FIRST_LOOK, type Look } from "./look.ts";
import type { MeasuredPair, Snapped } from "./measured-pair.ts";
import { meetingMarks, meetingNotes } from "./meeting-marks.ts";

export type Hand = "look" | "move" | "measure";

export type Opening =
  | { readonly kind: "reading" }
  | { readonly kind: "open" }
  | { readonly kind: "none" }
  | { readonly kind: "given-up" }
  | { readonly kind: "failed"; readonly why: string };

export interface Measuring {
  readonly first: Snapped | null;
  readonly second: Snapped | null;
  readonly pair: MeasuredPair | null;
}

export const NOTHING_MEASURED: Measuring = { first: null, second: null, pair: null };

export const opening = signal<Opening>({ kind: "reading" });
export const scene = signal<ConsoleScene | null>(null);
export const look = signal<Look>(FIRST_LOOK);
export const hand = signal<Hand>("look");
export const measuring = signal<Measuring>(NOTHING_MEASURED);
export const trueShapes = signal<"no" | "asked" | "shown">("no");
/** Said to those who hear the page, and shown under the picture. */
export const said = signal("");
/** Where the camera is asked to go; a new object each time. */
export const wanted = signal<CameraGoal | null>(null);
/** Whether the open console has been seen whole, as each is at first. */
export const isFramed = signal(false);

export const client = consoleClient();

const bodies = new Map<string, readonly SceneBody[]>();

/** What a group is made of, as it was last sent. */
const bodiesOf = (group: string): readonly SceneBody[] => bodies.get(group) ?? [];

/** No panel moved, and nothing marked. */
const UNMARKED: Pick<Look, "moved" | "marks" | "notes"> = {
  moved: new Map(),
  marks: [],
  notes: [],
};

export const changeLook = (change: Partial<Look>): void => {
  look.value = { ...look.value, ...change };
};

/** Another design, or another console of it, is seen as it is first seen; what is faded and shown is the person's choice and stays. */
effect(() => {
  void [store.value, consoleFile.value];
  isFramed.value = false;
  measuring.value = NOTHING_MEASURED;
  look.value = { ...look.peek(), chosen: null, turned: null, apart: 0, cut: null, ...UNMARKED };
});

/** Follows the texts until it is told to stop. The page's own reading comes first, and the picture is of what it has compiled. */
export const followDesign = (): (() => void) =>
  effect(() => {
    if (isCurrent.value) build(sourcesOf(texts.value));
  });

const build = (sources: DesignSources): void => {
  void client.open(sources).then((reply) => {
    if (reply !== null) take(reply);
  });
};

/** The building of the first picture is ended with its worker. A change of the design, or the person, begins it again. */
export const giveUpBuilding = (): void => {
  client.giveUp();
  opening.value = { kind: "given-up" };
};

export const buildAgain = (): void => {
  opening.value = { kind: "reading" };
  build(sourcesOf(texts.value));
};

const take = (reply: ConsoleReply): void => {
  switch (reply.kind) {
    case "scene":
      takeScene(reply.scene);
      return;
    case "no-console":
      opening.value = { kind: "none" };
      scene.value = null;
      return;
    case "failed":
      opening.value = { kind: "failed", why: reply.why };
      return;
    case "dragged":
    case "settled":
      return;
  }
};

const takeScene = (next: ConsoleScene): void => {
  for (const { key, lots, bodies: sent } of next.groups) if (lots !== null) bodies.set(key, sent);
  opening.value = { kind: "open" };
  const names = new Set(next.panels.map(({ name }) => name));
  const kept = (name: string | null): string | null =>
    name !== null && names.has(name) ? name : null;
  scene.value = next;
  changeLook({
    ...UNMARKED,
    chosen: kept(look.value.chosen),
    turned: kept(look.value.turned),
  });
};

export const choosePanelHere = (name: string | null): void => {
  if (name === look.value.chosen) return;
  changeLook({ chosen: name, turned: null, apart: 0, marks: [], notes: [] });
  const panel = scene.value?.panels.find((each) => each.name === name);
  if (panel === undefined) return;
  said.value = `Chosen: ${calledByKey(panel)}`;
  // The other rooms go on with it.
  choosePanel(panel.name);
};

export const askTrueShapes = async (): Promise<void> => {
  trueShapes.value = "asked";
  const reply = await client.trueShapes();
  take(reply);
  trueShapes.value = reply.kind === "scene" ? "shown" : "no";
};

/** A finding of the page's own list marks what it speaks of here too. */
export const followPointer = (): (() => void) => {
  let isMarked = false;
  return effect(() => {
    const finding = pointedAt.value?.finding;
    // Pointed at no longer, it is marked no longer.
    if (finding === undefined && isMarked) look.value = { ...look.peek(), marks: [], notes: [] };
    isMarked = finding !== undefined;
    const panel = scene.peek()?.panels.find(({ name }) => name === finding?.panel);
    if (finding === undefined || panel === undefined) {
      if (finding !== undefined) void markOverlap(finding.subjects);
      return;
    }
    const marked = bodiesOf(panel.name).filter(({ thing }) => finding.subjects.includes(thing));
    look.value = {
      ...look.peek(),
      chosen: panel.name,
      marks: marked.map(({ id }) => ({ kind: "finding", group: panel.name, body: id })),
    };
  });
};

/**
 * Panels written where others stand, as a drag to there marks them: what they meet where they are is asked for as a step of
 * a drag that goes nowhere. Nothing where the subjects are no panels on rails.
 */
const markOverlap = async (subjects: readonly string[]): Promise<void> => {
  const of = scene.peek();
  const asked = pointedAt.peek();
  const panel = of?.panels.find(({ name }) => name === subjects[0]);
  if (panel === undefined || panel.place === null) return;
  const reply = await client.drag({ panel: panel.name, module: panel.place.module });
  if (reply?.kind !== "dragged" || scene.peek() !== of || pointedAt.peek() !== asked) return;
  const clashes = reply.step.meetings.filter(
    ({ kind, a, b }) => kind === "clash" && [a, b].every(({ group }) => subjects.includes(group)),
  );
  changeLook({
    chosen: panel.name,
    marks: clashes.flatMap(meetingMarks),
    notes: meetingNotes(clashes),
  });
};
