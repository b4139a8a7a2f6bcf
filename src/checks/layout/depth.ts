// Depth at the worst end of every thickness range: thread for the nut, grip, what stands proud, and the room behind.

import { spanOf } from "../../design/written.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { PanelLayout, PlacedComponent, Range } from "../../layout/panel-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver, isUnder } from "../limits.ts";
import { onePerEntry } from "../per-entry.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const thread: CodeEntry = {
  code: "checks/thread-too-short",
  severity: "fault",
  title: "too little thread for the nut",
  why: "A bush has so much thread: washers, layers and paint use it up from one end, and the nut needs its own thickness of what is left. Sheet is not nominal: cast acrylic of 3 mm may be 3.7. The thickest sheet that the range allows is what counts until yours is measured.",
  example:
    "components:\n  a: { part: toggle-12, clamps: [face, backing], at: { left: 40 mm, top: 30 mm } }",
};

const grip: CodeEntry = {
  code: "checks/grip",
  severity: "fault",
  title: "a thickness that the part can't hold",
  why: "Snap-in parts and bushes take a range of thickness. Below it they rattle or bottom out, above it they don't latch.",
  example:
    "components:\n  a: { part: led-5-bezel, clamps: [face, backing], at: { left: 40 mm, top: 30 mm } }",
};

const proud: CodeEntry = {
  code: "checks/below-face",
  severity: "fault",
  title: "a control that ends below the face",
  why: "Lever, shaft, button or lens must come through all layers in front of it and still stand proud enough to be worked or seen.",
  example: "components:\n  a: { part: tactile-12, at: { left: 40 mm, top: 30 mm } }",
};

const deep: CodeEntry = {
  code: "checks/too-deep",
  severity: "fault",
  title: "a component deeper than the room behind the panel",
  why: "Body, tails, plug and the bend of its cable need room behind the face. What stands against a rib or a wall can't be plugged in.",
  example: "depth: 30 mm",
};

const PROUD: HouseRule = {
  key: "proud",
  usual: 0,
  name: "a control reaches the face at least (geometry)",
};

export const threadTooShort: Rule = {
  entry: thread,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      const { threadLeft, nutThickness } = component.depth;
      if (threadLeft === null || nutThickness === null || !isUnder(threadLeft.low, nutThickness))
        return null;
      return finding(thread, {
        message: `${component.id}: ${worst(threadLeft, "thickest")} leaves ${millimetres(Math.max(0, threadLeft.low))} of thread, and its nut is ${millimetres(nutThickness)} thick; ${millimetres(nutThickness - threadLeft.low)} is missing. ${advice(component, threadLeft, nutThickness)}`,
        span: component.span,
        subjects: [component.id],
        measured: measureMm(threadLeft.low),
        limit: measureMm(nutThickness),
        source: datasheet(component),
      });
    }),
};

const worst = (range: Range, end: "thickest" | "thinnest"): string =>
  range.known ? "the stack as measured" : `the ${end} sheet that its range allows`;

const datasheet = (component: PlacedComponent): LimitSource => ({
  kind: "datasheet",
  name: component.part.figures.source,
});

const advice = (component: PlacedComponent, left: Range, nut: number): string => {
  if (!isUnder(left.high, nut)) return "Measure the sheet and write it down: it may well do.";
  const most = component.depth.gripped.nominal - (nut - left.nominal);
  return `It can hold ${millimetres(Math.max(0, most))} in all: clamp fewer layers, or take a longer bush.`;
};

export const gripRange: Rule = {
  entry: grip,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      const { hold } = component.part;
      if (hold.kind === "behind") return null;
      const { gripped } = component.depth;
      // A bush that is too short for its nut has been said; what is left is a stack too thin for the part.
      const isThick = hold.kind !== "bush" && isOver(gripped.high, hold.grip.most);
      const isThin = isUnder(gripped.low, hold.grip.least);
      if (!isThick && !isThin) return null;
      const [value, limit] = isThick
        ? [gripped.high, hold.grip.most]
        : [gripped.low, hold.grip.least];
      return finding(grip, {
        message: `${component.id} holds ${millimetres(hold.grip.least)} to ${millimetres(hold.grip.most)}; ${worst(gripped, isThick ? "thickest" : "thinnest")} makes it ${millimetres(value)}.`,
        span: component.span,
        subjects: [component.id],
        measured: measureMm(value),
        limit: measureMm(limit),
        source: datasheet(component),
      });
    }),
};

export const belowFace: Rule = {
  entry: proud,
  judge: (facts) => {
    const { limit, source } = houseLimit(facts, PROUD);
    return onePerEntry(facts.layout.components, (component) => {
      const { protrusion } = component.depth;
      if (protrusion === null || !isUnder(protrusion.low, limit)) return null;
      return finding(proud, {
        message: `${component.id} ends ${millimetres(-protrusion.low)} below the face with ${worst(protrusion, "thickest")}; at nominal thickness it stands ${millimetres(protrusion.nominal)} proud.`,
        span: component.span,
        subjects: [component.id],
        measured: measureMm(protrusion.low),
        limit: measureMm(limit),
        source,
      });
    });
  },
};

export const tooDeep: Rule = {
  entry: deep,
  judge: ({ layout }) => {
    const room = layout.design.depth;
    if (room === null) return [];
    return onePerEntry(layout.components, (component) => tooDeepFinding(component, room, layout));
  },
};

const tooDeepFinding = (
  component: PlacedComponent,
  room: number,
  layout: PanelLayout,
): Finding | null => {
  const { total } = component.depth;
  if (!isOver(total.high, room)) return null;
  return finding(deep, {
    message: `${component.id} reaches ${millimetres(total.high)} behind the face; there are ${millimetres(room)}, ${millimetres(total.high - room)} too few.`,
    span: component.span,
    related: [{ what: "depth", span: spanOf(layout.design.written, "depth") }],
    subjects: [component.id],
    measured: measureMm(total.high),
    limit: measureMm(room),
    source: { kind: "workshop", name: "the design's own depth" },
  });
};
