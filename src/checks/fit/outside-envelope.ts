// What stands out of the inside of a console, behind the seat of its panel: of the envelope that is written, else of its frame.

import { spanOf } from "../../design/written.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type RelatedPlace,
  type Remedy,
} from "../../diagnostics/finding.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { consoleInside } from "../../fit/console-inside.ts";
import type { OutsideFact } from "../../fit/fit-facts.ts";
import { keepsInside } from "../../fit/outside-facts.ts";
import { decimal } from "../../geometry/number.ts";
import { measureMm, millimetres } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";
import { asSeverity, bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";
import { raisedBayRemedies } from "./raised-bay.ts";

const entry: CodeEntry = {
  code: "fit/outside-envelope",
  severity: "fault",
  title: "a body that stands out of the console",
  why: "The envelope is the space that the walls of the console leave. What stands out of it stands in a wall. Touching the wall is inside; only what lies behind the panel's seat is asked. Where no envelope is written, the frame's cheeks say what is inside: what hangs out past them, through an open back or into the knee space, meets no board, but hands, knees and the next wall. That is a query; an envelope counts in the frame's place and says where there is room.",
  example:
    "envelope:\n  profile: [[0, 580], [600, 580], [600, 640], [0, 640]]\n  across: [-100, 100]",
};

export const outsideEnvelope: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.outside.filter((fact) => !isFollower(fact, facts)),
      ({ body }) => body.panel ?? body.id,
      ({ depth }) => depth,
    ).map(([worst, ...others]) =>
      worst.of === "frame"
        ? asSeverity(outside(worst, others.length, facts), "query")
        : outside(worst, others.length, facts),
    ),
};

/** What stands in a board of the frame and on through it: `fit/clash` or `fit/plug-room` says so, of the same part of the same panel. */
const isFollower = ({ body, of }: OutsideFact, { fit }: ConsoleFacts): boolean =>
  of === "frame" &&
  fit.pairs.some(
    ({ a, b, relation }) =>
      relation.kind === "clash" &&
      ((isSameThing(a, body) && isOfFrame(b)) || (isSameThing(b, body) && isOfFrame(a))),
  );

const isSameThing = (one: ConsoleBody, other: ConsoleBody): boolean =>
  one.panel === other.panel && one.thing === other.thing;

const isOfFrame = ({ panel, role }: ConsoleBody): boolean =>
  panel === null && (role === "frame" || role === "rib" || role === "rail");

const outside = (fact: OutsideFact, others: number, facts: ConsoleFacts): Finding => {
  const { body, of, volume, depth, at } = fact;
  const where = placeWords(at, [body.panel], facts.layout);
  const advice =
    of === "envelope"
      ? "Move the panel, or what it is made of, inward by that."
      : "Move the panel, or what it is made of, inward by that; where there is room for it, write an envelope, which counts in the frame's place.";
  return finding(entry, {
    message: `The ${bodyName(body)} stands out of the ${of}: ${decimal(volume, 2)} mm³ of it, ${millimetres(depth, 0)} deep, ${where}. ${advice}`,
    span: body.span,
    related: boundary(of, facts),
    subjects: [body.id],
    measured: measureMm(depth),
    limit: measureMm(0),
    source: { kind: "geometry", name: SOURCES[of] },
    remedies: [...modulesInside(body, facts), ...bayInside(fact, facts)],
    suppressed: others,
  });
};

const SOURCES: Readonly<Record<OutsideFact["of"], string>> = {
  envelope: "the envelope of the console",
  frame: "what the cheeks of the frame enclose",
};

const boundary = (of: OutsideFact["of"], { layout }: ConsoleFacts): readonly RelatedPlace[] => {
  const { envelope, frame } = layout.design;
  const written = of === "envelope" ? envelope?.written : frame?.written;
  if (written === undefined) return [];
  const span = of === "envelope" ? spanOf(written, "profile") : written.span;
  return [{ what: `the ${of}`, span }];
};

/** Of what hangs out below; a bay so much higher is tried, and where the body leaves by another side it does not help. */
const bayInside = ({ body, depth }: OutsideFact, facts: ConsoleFacts): readonly Remedy[] => {
  const place = facts.layout.panels.find(({ name }) => name === body.panel)?.place;
  return place?.kind === "bay" ? raisedBayRemedies(place.bay, depth, facts) : [];
};

/** The nearest module at which the panel is free of everything and all of it behind its seat is inside. */
const modulesInside = (body: ConsoleBody, facts: ConsoleFacts): readonly Remedy[] => {
  const panel = facts.layout.panels.find(({ name }) => name === body.panel);
  const inside = panel === undefined ? null : consoleInside(facts.layout, facts.frame, panel);
  if (panel === undefined || inside === null) return [];
  const own = facts.fit.bodies.filter((other) => other.panel === panel.name);
  return freeModuleRemedies(panel, facts, (to) => keepsInside(panel, own, { inside, to }));
};
