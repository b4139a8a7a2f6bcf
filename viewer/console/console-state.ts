// What the view of a console knows: its scene, how it is looked at, which hand works, what is chosen and measured. Signals;
// the picture and the page beside it follow them. Lives while the view is open.

import { effect, signal } from "@preact/signals";
import type { DesignSources } from "../core-messages.ts";
import { choosePanel, consoleFile, isCurrent, sourcesOf, texts } from "../desk.ts";
import { store } from "../files/stored-state.ts";
import { emptiedWithLock } from "../locks.ts";
import { calledByKey } from "../panel-called.ts";
import type { CameraGoal } from "./camera-goal.ts";
import { consoleClient } from "./console-client.ts";
import type { ConsoleReply, ConsoleScene, SceneGroup, ShapingStep } from "./console-messages.ts";
import { FIRST_LOOK, type Look } from "./look.ts";
import type { MeasuredPair, MeasuredPlace } from "./measured-pair.ts";

export type Hand = "look" | "move" | "measure";

export type Opening =
  | { readonly kind: "reading" }
  | { readonly kind: "open" }
  | { readonly kind: "none" }
  | { readonly kind: "given-up" }
  | { readonly kind: "failed"; readonly why: string };

export interface Measuring {
  readonly first: MeasuredPlace | null;
  readonly second: MeasuredPlace | null;
  readonly pair: MeasuredPair | null;
}

export const NOTHING_MEASURED: Measuring = { first: null, second: null, pair: null };

export const opening = signal<Opening>({ kind: "reading" });
export const scene = signal<ConsoleScene | null>(null);
export const look = signal<Look>(FIRST_LOOK);
export const hand = signal<Hand>("look");
export const measuring = signal<Measuring>(NOTHING_MEASURED);
/** Of the prints, how far their true shapes are made; `step` is null until they are counted. */
export type Shaping =
  | { readonly kind: "no" }
  | { readonly kind: "asked"; readonly step: ShapingStep | null }
  | { readonly kind: "shown" };

export const trueShapes = signal<Shaping>({ kind: "no" });
/** Said to those who hear the page, and shown under the picture. */
export const said = signal("");
emptiedWithLock(said);
/** Where the camera is asked to go; a new object each time. */
export const wanted = signal<CameraGoal | null>(null);
/** Whether the open console has been seen whole, as each is at first. */
export const isFramed = signal(false);

export const client = consoleClient();

let groups: ReadonlyMap<string, SceneGroup> = new Map();

/** By key: where each group of the scene stands now, with its shapes as they were last sent. */
export const standingGroups = (): ReadonlyMap<string, SceneGroup> => groups;

/** No panel moved, and nothing marked. */
const UNMARKED: Pick<Look, "moved" | "marks" | "notes" | "stretch"> = {
  moved: new Map(),
  marks: [],
  notes: [],
  stretch: null,
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
    case "shaping":
    case "dragged":
    case "settled":
      return;
  }
};

const takeScene = (next: ConsoleScene): void => {
  groups = new Map(
    next.groups.map((group) => {
      const before = groups.get(group.key);
      const isKept = group.lots === null && before !== undefined;
      return [group.key, isKept ? { ...before, frame: group.frame } : group];
    }),
  );
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
  changeLook({ chosen: name, turned: null, apart: 0, marks: [], notes: [], stretch: null });
  const panel = scene.value?.panels.find((each) => each.name === name);
  if (panel === undefined) return;
  said.value = `Chosen: ${calledByKey(panel)}`;
  // The other rooms go on with it.
  choosePanel(panel.name);
};

/** Counts who asked for them: what was given up is answered to nobody. */
let shaping = 0;
let shapingAnswer: Promise<ConsoleReply> | null = null;

export const askTrueShapes = async (): Promise<void> => {
  shaping += 1;
  const mine = shaping;
  trueShapes.value = { kind: "asked", step: null };
  for (;;) {
    const reply = await answered(client.trueShapes());
    if (mine !== shaping) return;
    if (reply.kind !== "shaping") {
      take(reply);
      trueShapes.value = { kind: reply.kind === "scene" ? "shown" : "no" };
      return;
    }
    trueShapes.value = { kind: "asked", step: reply };
  }
};

const answered = async (answer: Promise<ConsoleReply>): Promise<ConsoleReply> => {
  shapingAnswer = answer;
  const reply = await answer;
  if (shapingAnswer === answer) shapingAnswer = null;
  return reply;
};

/** For the step that the worker is at, ms: most take a tenth of it. */
const LAST_STEP = 500;

/** The next step is not asked for, and a worker that stays at this one is ended: a drag would have to wait for it. */
export const giveUpTrueShapes = (): void => {
  shaping += 1;
  const [mine, left] = [shaping, shapingAnswer];
  trueShapes.value = { kind: "no" };
  said.value = "The true shapes were given up: prints are shown as before.";
  setTimeout(() => {
    if (left === null || left !== shapingAnswer || mine !== shaping) return;
    client.giveUp();
    // What is being read is drawn as it comes.
    if (isCurrent.peek()) build(sourcesOf(texts.peek()));
  }, LAST_STEP);
};
