// The worker of one fit: compiles the sources that it is sent and asks the solid kernel whether everything fits. Nobody waits for
// it with anything else, so that it can be ended at once.

import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { reasonWords } from "../../src/diagnostics/reason-words.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { joinedBox } from "../../src/geometry/space/space-box.ts";
import { plus, scaled, spaceDistance, vector } from "../../src/geometry/space/vector.ts";
import { fitSteps } from "../../src/project.ts";
import { compiledTexts } from "../compiled-texts.ts";
import type { DesignSources } from "../core-messages.ts";
import { openedKernel, openedLibrary } from "../worker-library.ts";
import type { FitFinding, FitOutcome, FitReply } from "./console-messages.ts";
import { firstConsole } from "./first-console.ts";
import { heldBack } from "./held-back.ts";

self.addEventListener("message", async ({ data }: MessageEvent<DesignSources>) => {
  try {
    tell(await outcomeOf(data));
  } catch (reason) {
    tell({ kind: "failed", why: reasonWords(reason) });
  }
});

const tell = (reply: FitReply): void => self.postMessage(reply);

async function outcomeOf(sources: DesignSources): Promise<FitOutcome> {
  tell({ kind: "progress", words: "reading the design" });
  const found = firstConsole(compiledTexts().of(sources, await openedLibrary()));
  if (found === null) return { kind: "no-console" };
  const { project, console, printedParts } = found;
  const bodies = consoleBodies({ layout: console.layout, frame: console.frame, printedParts });
  tell({ kind: "progress", words: "opening the solid kernel" });
  const steps = fitSteps(project, console, await openedKernel());
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      const findings = step.value.findings.map((finding): FitFinding => {
        const text = sources.texts.get(finding.span.file) ?? "";
        const place = lineAndColumn(text, finding.span.start);
        const named = bodiesNamed(bodies, finding.subjects);
        return { finding, ...place, bodies: named.map(bodyKey), ball: ballRound(named) };
      });
      return { kind: "fitted", findings, held: heldBack(console.layout, step.value.facts.pairs) };
    }
    tell({ kind: "progress", words: `looking at ${step.value}` });
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
