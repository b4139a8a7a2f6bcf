// The door of this floor: everything that is known about the fit of a console. It goes in steps, so that whoever waits can be
// told what is being done, and can stop. The kernel is asked for clashes and gaps; the rest is arithmetic on recipes.

import type { Mm } from "../geometry/quantity.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import { toleranceFacts } from "./along-rail/tolerance-facts.ts";
import { type BodySources, consoleBodies } from "./bodies/console-bodies.ts";
import type { FitFacts } from "./fit-facts.ts";
import { operatorFacts } from "./operator/operator-facts.ts";
import { serviceFacts } from "./service/service-facts.ts";
import type { ServiceFigures } from "./service/service-figures.ts";
import { prepareBodies, verdict } from "./verdict.ts";

/** What is done next, in words for whoever waits. */
export type FitSteps = Generator<string, FitFacts, void>;

/** What whoever judges wants to know by. */
export interface FitQuestions {
  /** How far apart two bodies may lie and still be told of. */
  readonly within: Mm;
  readonly service: ServiceFigures;
}

export function* consoleFactSteps(
  sources: BodySources,
  questions: FitQuestions,
  kernel: Kernel,
): FitSteps {
  const { layout, frame } = sources;
  yield "bodies";
  const bodies = consoleBodies(sources);
  yield `clashes and gaps among ${bodies.length} bodies`;
  const found = verdictOf(bodies, { kernel, layout, frame, within: questions.within });
  yield "reach and sight";
  const operator = operatorFacts(layout, bodies);
  yield "service";
  const service = serviceFacts(layout, bodies, questions.service);
  return { bodies, ...found, ...operator, ...service, tolerances: toleranceFacts(layout) };
}

const verdictOf = (
  bodies: FitFacts["bodies"],
  of: { readonly kernel: Kernel; readonly within: Mm } & Pick<BodySources, "layout" | "frame">,
): ReturnType<typeof verdict> => {
  const prepared = prepareBodies(bodies, of.kernel);
  try {
    return verdict(prepared, of.layout, of);
  } finally {
    prepared.delete();
  }
};
