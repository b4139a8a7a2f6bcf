// Places at which sections of a bay are to be drawn, and that lie beyond its end.

import { nodeAt } from "../../design/edit.ts";
import { source } from "../../design/source.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Span } from "../../diagnostics/finding.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";

const entry: CodeEntry = {
  code: "fit/section-beyond-bay",
  severity: "query",
  title: "a section beyond the end of its bay",
  why: "Sections are drawn across a bay, so far from its beginning as is written. Beyond its end there is no panel to cut: that section is left out of the drawings. Nothing that is made depends on it.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 6 modules, depth: 180 mm, sections: [90 mm] }",
};

export const sectionBeyondBay: BayRule = {
  entry,
  judge: (facts) =>
    facts.layout.bays.flatMap((bay) => {
      const beyond = placesOf(bay, facts).filter(({ at }) => at > bay.length + arithmeticNoise);
      return beyond.length === 0 ? [] : [beyondEnd(bay, beyond, facts)];
    }),
};

interface Place {
  readonly at: number;
  readonly span: Span;
}

/** As far as its text is at hand, each where it is written. */
const placesOf = ({ design }: BayLayout, { texts }: BayFacts): readonly Place[] => {
  const span = spanOf(design.written, "sections");
  const text = texts.get(span.file);
  const list =
    text === undefined ? null : nodeAt(source(span.file, text), ["bays", design.id, "sections"]);
  const items = list?.kind === "list" ? list.items : [];
  return design.sections.map((at, index) => ({ at, span: items[index]?.span ?? span }));
};

/** The farthest is measured; all are named, each as its text is written. */
const beyondEnd = (
  { id, length }: BayLayout,
  beyond: readonly Place[],
  facts: BayFacts,
): Finding => {
  const farthest = beyond.reduce((one, other) => (other.at > one.at ? other : one));
  const words = lengthWords(facts, farthest.span);
  const places = beyond.map(({ at, span }) => lengthWords(facts, span)(at, length));
  const sections = beyond.length > 1 ? "Sections" : "A section";
  return finding(entry, {
    message: `${sections} of bay ${id} ${beyond.length > 1 ? "are" : "is"} to be drawn ${places.join(" and ")} from its beginning, and the bay is ${words(length, farthest.at)} long, ${words(farthest.at - length, 0)} less. ${words(length)} is the last place there is.`,
    span: farthest.span,
    related: beyond
      .filter((place) => place !== farthest)
      .map(({ span }) => ({ what: "beyond the end as well", span })),
    subjects: [id],
    measured: measureMm(farthest.at),
    limit: measureMm(length),
    source: { kind: "geometry", name: `the length of bay ${id}` },
  });
};
