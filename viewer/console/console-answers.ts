// The page's worker on the console: packs the bodies of the design that was compiled last for the eye, answers each step of a drag,
// says what a drop would write, and asks the solid kernel only when the true shapes are wanted.

import { searchedWithin } from "../../src/checks/fit/near-limits.ts";
import { source } from "../../src/design/source.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import type { Mesh } from "../../src/geometry/solid/mesh.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import type { ComposedSolid } from "../../src/geometry/solid/solid.ts";
import type { ConsoleProject, Project } from "../../src/project.ts";
import { bodyName } from "./body-name.ts";
import type { ConsoleQuestion, ConsoleReply, PanelMove } from "./console-messages.ts";
import { consoleScene, transfersOf } from "./console-scene.ts";
import { readyDrags } from "./drag-ahead.ts";
import { dragReading, type StandingConsole, standingConsole } from "./drag-reading.ts";
import { firstConsole } from "./first-console.ts";
import { settlement } from "./settlement.ts";

interface Opened {
  readonly project: Project;
  readonly console: ConsoleProject;
  readonly bodies: readonly ConsoleBody[];
  readonly standing: StandingConsole;
}

export type ConsoleAnswers = (question: ConsoleQuestion) => Promise<ConsoleReply>;

/** What the answers need from the worker that gives them. */
export interface ConsoleGround {
  readonly compiled: (
    sources: Extract<ConsoleQuestion, { readonly kind: "open" }>,
  ) => Promise<readonly Project[]>;
  readonly kernel: () => Promise<Kernel>;
}

export function consoleAnswers({ compiled, kernel }: ConsoleGround): ConsoleAnswers {
  let opened: Opened | null = null;
  /** By panel: what its shapes were when they were last sent. */
  let sent: ReadonlyMap<string, string> = new Map();
  const sceneReply = (shapes: TrueShapes | null): ConsoleReply => {
    if (opened === null) return { kind: "no-console" };
    const made = consoleScene(opened.console.layout, opened.bodies, {
      sent: shapes === null ? sent : new Map(),
      trueShape: ({ id }) => shapes?.made.get(id) ?? null,
    });
    sent = made.sent;
    return { kind: "scene", scene: made.scene };
  };
  let shapes: TrueShapes | null = null;
  /** Told as a step of its own: it is fetched first. */
  let opening: Promise<Kernel> | null = null;
  const trueShapesReply = async (): Promise<ConsoleReply> => {
    if (opened === null) return { kind: "no-console" };
    // Of another reading they are of no use, and a step that was given up goes on where it was.
    const mine = shapes?.of === opened.bodies ? shapes : noShapes(opened.bodies);
    shapes = mine;
    if (mine.left.length === 0) return sceneReply(mine);
    if (opening === null) {
      opening = kernel();
      // Whoever asks next is told.
      opening.catch(() => undefined);
      return shapingReply(mine, "opening the solid kernel");
    }
    try {
      shapeFor(SHAPING, mine, await opening);
    } catch (reason) {
      opening = null;
      throw reason;
    }
    const next = mine.left[0];
    return shapingReply(mine, next === undefined ? "drawing them" : `making ${next.words}`);
  };
  return async (question) => {
    switch (question.kind) {
      case "open": {
        const now = openedFrom(await compiled(question));
        opened = now;
        // After the scene has been sent.
        if (now !== null) readyDrags(now.standing, () => opened === now);
        return sceneReply(null);
      }
      case "true-shapes":
        return trueShapesReply();
      case "drag":
        return dragged(opened, question.move);
      case "settle":
        return settled(opened, question.move);
    }
  };
}

interface TrueShapes {
  readonly of: readonly ConsoleBody[];
  readonly left: Composed[];
  /** By the body's id. */
  readonly made: Map<string, Mesh>;
}

interface Composed {
  readonly id: string;
  readonly words: string;
  readonly solid: ComposedSolid;
}

const noShapes = (bodies: readonly ConsoleBody[]): TrueShapes => ({
  of: bodies,
  made: new Map(),
  left: bodies.flatMap((body) => {
    const { shape } = body;
    if (shape.kind !== "recipe" || shape.solid.kind !== "composed") return [];
    const { id, words } = bodyName(body);
    return [{ id, words, solid: shape.solid }];
  }),
});

const shapingReply = ({ made, left }: TrueShapes, words: string): ConsoleReply => ({
  kind: "shaping",
  words,
  done: made.size,
  of: made.size + left.length,
});

/** Milliseconds of one answer: whatever else is asked meanwhile, a step of a drag, waits no longer. */
const SHAPING = 60;

/** One shape at least. */
const shapeFor = (time: number, { left, made }: TrueShapes, kernel: Kernel): void => {
  const started = performance.now();
  do {
    const next = left.shift();
    if (next === undefined) return;
    made.set(next.id, meshSolid(next.solid, kernel));
  } while (performance.now() - started < time);
};

/** What goes to the page without being copied. */
export const handedOver = (reply: ConsoleReply): ArrayBufferLike[] =>
  reply.kind === "scene" ? transfersOf(reply.scene) : [];

function openedFrom(projects: readonly Project[]): Opened | null {
  const found = firstConsole(projects);
  if (found === null) return null;
  const { project, console, printedParts } = found;
  const bodies = consoleBodies({ layout: console.layout, frame: console.frame, printedParts });
  const standing = standingConsole(console.layout, bodies, searchedWithin(console));
  return { project, console, bodies, standing };
}

function dragged(opened: Opened | null, move: PanelMove): ConsoleReply {
  const started = performance.now();
  const step = opened === null ? null : dragReading(opened.standing, move);
  return step === null
    ? { kind: "failed", why: `${move.panel} stands in no bay.` }
    : { kind: "dragged", step: { ...step, milliseconds: performance.now() - started } };
}

function settled(opened: Opened | null, move: PanelMove): ConsoleReply {
  if (opened === null) return { kind: "no-console" };
  const { console, project } = opened;
  const { file } = console.design;
  const from = source(file, project.files.get(file) ?? "");
  return { kind: "settled", settlement: settlement(console.layout, from, move) };
}
