// The console's own worker: compiles the design, packs its bodies for the eye, answers each step of a drag, says what a drop
// would write, and asks the solid kernel only when the fit or the true shapes are wanted.

import { searchedWithin } from "../../src/checks/fit/near-limits.ts";
import { source } from "../../src/design/source.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { joinedBox } from "../../src/geometry/space/space-box.ts";
import { plus, scaled, spaceDistance, vector } from "../../src/geometry/space/vector.ts";
import { type ConsoleProject, compile, fitSteps, type Project } from "../../src/project.ts";
import type { DesignSources } from "../core-messages.ts";
import { firstFiles } from "../first-files.ts";
import { openedKernel, openedLibrary } from "../worker-library.ts";
import type { ConsoleReply, ConsoleRequest, FitFinding } from "./console-messages.ts";
import { consoleScene, transfersOf } from "./console-scene.ts";
import { readyDrags } from "./drag-ahead.ts";
import { dragReading, type StandingConsole, standingConsole } from "./drag-reading.ts";
import { settlement } from "./settlement.ts";

interface Opened {
  readonly entry: string;
  readonly project: Project;
  readonly console: ConsoleProject;
  readonly bodies: readonly ConsoleBody[];
  readonly standing: StandingConsole;
}

let opened: Opened | null = null;
/** By panel: what its shapes were when they were last sent. */
let sent: ReadonlyMap<string, string> = new Map();

let queue: Promise<void> = Promise.resolve();

self.addEventListener("message", ({ data }: MessageEvent<ConsoleRequest>) => {
  queue = queue.then(() => answer(data));
});

async function answer(request: ConsoleRequest): Promise<void> {
  try {
    const reply = await replyTo(request);
    self.postMessage(reply, { transfer: reply.kind === "scene" ? transfersOf(reply.scene) : [] });
  } catch (reason) {
    const why = reason instanceof Error ? reason.message : `${reason}`;
    reply({ kind: "failed", number: request.number, why });
  }
}

const reply = (message: ConsoleReply): void => self.postMessage(message);

async function replyTo(request: ConsoleRequest): Promise<ConsoleReply> {
  const { number } = request;
  switch (request.kind) {
    case "open":
      opened = await openedFrom(request);
      readyNext(opened);
      return sceneReply(number, null);
    case "true-shapes":
      return sceneReply(number, await openedKernel());
    case "drag":
      return dragged(number, request.move);
    case "settle":
      return settled(number, request.move);
    case "fit":
      return fitted(number, request);
  }
}

async function openedFrom({ texts, binaries }: DesignSources): Promise<Opened | null> {
  const ready = await openedLibrary();
  for (const entry of firstFiles(texts)) {
    // Whatever an edit leaves alone is not worked out again.
    const project = compile({ entry, files: texts, binaries }, ready, opened?.project.memory);
    const { console } = project;
    if (console === null) continue;
    const printedParts = new Map(
      project.panels.map(({ name, printedParts: parts }) => [name, parts]),
    );
    const bodies = consoleBodies({ layout: console.layout, frame: console.frame, printedParts });
    const standing = standingConsole(console.layout, bodies, searchedWithin(console));
    return { entry, project, console, bodies, standing };
  }
  return null;
}

/** After the scene has been sent. */
function readyNext(of: Opened | null): void {
  if (of !== null) readyDrags(of.standing, () => opened === of);
}

function sceneReply(number: number, solids: Kernel | null): ConsoleReply {
  if (opened === null) return { kind: "no-console", number };
  const { console, bodies } = opened;
  const made = consoleScene(console.layout, bodies, {
    sent: solids === null ? sent : new Map(),
    trueShape: ({ shape }) =>
      solids !== null && shape.kind === "recipe" && shape.solid.kind === "composed"
        ? meshSolid(shape.solid, solids)
        : null,
  });
  sent = made.sent;
  return { kind: "scene", number, scene: made.scene };
}

function dragged(number: number, move: { panel: string; module: number }): ConsoleReply {
  const started = performance.now();
  const step = opened === null ? null : dragReading(opened.standing, move);
  return step === null
    ? { kind: "failed", number, why: `${move.panel} stands in no bay.` }
    : {
        kind: "dragged",
        number,
        step: { ...step, milliseconds: performance.now() - started },
      };
}

function settled(number: number, move: { panel: string; module: number }): ConsoleReply {
  if (opened === null) return { kind: "no-console", number };
  const { console, project, entry } = opened;
  const from = source(entry, project.files.get(entry) ?? "");
  return { kind: "settled", number, settlement: settlement(console.layout, from, move) };
}

async function fitted(number: number, sources: DesignSources): Promise<ConsoleReply> {
  reply({ kind: "progress", number, words: "the design" });
  const read = await openedFrom(sources);
  if (read === null) return { kind: "no-console", number };
  const solids = await openedKernel();
  const steps = fitSteps(read.project, read.console, solids);
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      const texts = sources.texts;
      const found = step.value.findings.map((finding): FitFinding => {
        const place = lineAndColumn(texts.get(finding.span.file) ?? "", finding.span.start);
        const bodies = bodiesNamed(read.bodies, finding.subjects);
        return { finding, ...place, bodies: bodies.map(bodyKey), ball: ballRound(bodies) };
      });
      return { kind: "fitted", number, findings: found };
    }
    reply({ kind: "progress", number, words: step.value });
  }
}

/** A subject is a body, a component of a panel with all its bodies, or a whole panel. */
const bodiesNamed = (
  bodies: readonly ConsoleBody[],
  subjects: readonly string[],
): readonly ConsoleBody[] =>
  bodies.filter(({ id, panel, thing }) =>
    subjects.some(
      (subject) =>
        subject === id ||
        id.startsWith(`${subject}/`) ||
        subject === (panel ?? thing) ||
        subject === thing,
    ),
  );

const bodyKey = ({ id, panel }: ConsoleBody): FitFinding["bodies"][number] => ({
  group: panel ?? "",
  id,
});

const ballRound = (bodies: readonly ConsoleBody[]): FitFinding["ball"] => {
  if (bodies.length === 0) return null;
  const box = bodies.map((body) => body.box).reduce(joinedBox);
  const low = vector(box.minX, box.minY, box.minZ);
  const high = vector(box.maxX, box.maxY, box.maxZ);
  return { middle: scaled(plus(low, high), 1 / 2), radius: spaceDistance(low, high) / 2 };
};
