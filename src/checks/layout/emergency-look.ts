// What may hurt someone: a dummy that could be taken for an emergency stop is refused, by its look or by what is written on it.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import { onePerEntry } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { capitalised, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/emergency-look",
  severity: "fault",
  title: "a dummy that looks like an emergency stop, or says that it is one",
  why: "A red mushroom on yellow is an emergency stop to everybody who sees it (ISO 13850), and so is any control that says EMERGENCY STOP. On a trainer, an exhibit or a desk where it stops nothing, somebody will reach for it when it matters. Take a button of another shape and colour, and other words. A real emergency stop is the work of licensed practice, outside this program.",
  example:
    "components:\n  stop: { part: push-button-22-mushroom-red, at: { left: 60 mm, top: 30 mm } }",
};

export const emergencyLook: Rule = {
  entry,
  move: null,
  judge: (facts) => [
    ...onePerEntry(facts.layout.components, (component) =>
      component.part.emergencyLook
        ? finding(entry, {
            message: `${component.id} looks like an emergency stop and stops nothing. It is refused: take a part of another shape and colour, such as push-button-22, or have a real one planned by licensed practice.`,
            span: spanOf(component.written, "part"),
            subjects: [component.id],
            source: { kind: "standard", name: "ISO 13850" },
          })
        : null,
    ),
    ...facts.layout.markings.filter((marking) => saysSo(marking, facts)).map(worded),
  ],
};

/** However it is spaced or broken into lines. ISO 13850 speaks of emergency stop, IEC 60204-1 of emergency switching off too. */
const WORDS = [
  /\bEMERGENCY\W*STOP\b/,
  /\bEMERGENCY\W*(?:SWITCHING\W*)?OFF\b/,
  /\bE\W*STOP\b/,
  /\bEMERG?\W*STOP\b/,
];

/** A lamp or a display may tell of an emergency stop that stands elsewhere; a control, or a bare word on the face, is one. */
const saysSo = ({ text, owner }: PlacedMarking, { layout }: PanelFacts): boolean => {
  const line = text?.toUpperCase() ?? "";
  if (!WORDS.some((words) => words.test(line))) return false;
  const component = layout.components.find(({ id }) => id === owner);
  return component === undefined || component.part.hand !== "none";
};

const worded = (marking: PlacedMarking): Finding =>
  finding(entry, {
    message: `${capitalised(markingName(marking))} says that a control is an emergency stop, and it stops nothing. It is refused: write STOP, or what it stops, or have a real one planned by licensed practice.`,
    span: marking.span,
    subjects: [marking.owner],
    source: { kind: "standard", name: "ISO 13850" },
  });
