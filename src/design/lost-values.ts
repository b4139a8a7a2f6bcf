// Words that a comma within braces has torn off their value: `{ left: 12,5 mm }`, `{ text: LEFT, RIGHT }`.
// YAML makes them keys without a value; here they become a finding, and the value they belong to counts as unreadable.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { numberText } from "./number-text.ts";
import { pairInText } from "./place-pair.ts";
import { quoted } from "./quoted.ts";
import { replacement, type Source, shortened, spanIn } from "./source.ts";
import { about, type MapEntry, type ScalarNode } from "./text-node.ts";

/** A key of a flow map without colon or value. */
export interface LoneKey {
  readonly kind: "lone-key";
  readonly key: string;
  readonly keySpan: MapEntry["keySpan"];
  readonly path: string;
}

export interface KeptEntries {
  readonly entries: readonly MapEntry[];
  readonly findings: readonly Finding[];
}

export const lostValues = (
  source: Source,
  found: readonly (MapEntry | LoneKey)[],
  flow: boolean,
): KeptEntries => {
  const entries: MapEntry[] = [];
  const findings: Finding[] = [];
  for (let index = 0; index < found.length; index += 1) {
    const entry = found[index];
    if (entry === undefined) {
      continue;
    }
    if (!("kind" in entry)) {
      entries.push(entry);
      continue;
    }
    const torn = [entry];
    for (let next = found[index + 1]; next !== undefined && "kind" in next; ) {
      torn.push(next);
      index += 1;
      next = found[index + 1];
    }
    const owner = entries.at(-1);
    if (flow && owner?.value.kind === "scalar" && owner.value.style === "plain") {
      const { span, path } = owner.value;
      findings.push(tornOff(source, owner.value, torn));
      entries[entries.length - 1] = { ...owner, value: { kind: "unreadable", span, path } };
    } else {
      findings.push(...torn.map(loneKey));
    }
  }
  return { entries, findings };
};

const loneKey = (entry: LoneKey): Finding =>
  finding(TEXT_CODES.keyWithoutValue, {
    message: `${about(entry)}has no value; write \`${entry.key}: ...\``,
    span: entry.keySpan,
  });

/** What a number in commas was meant to be, with whatever stands behind its figures; null where it is no number. */
const withPoint = (whole: string): string | null => {
  const [, figures = "", behind = ""] = /^([+-]?\d[\d.,]*\d)(.*)$/.exec(whole) ?? [];
  const read = numberText(figures);
  const meant = read.kind === "refused" && "meant" in read.why ? read.why.meant : null;
  return meant === null ? null : `${meant}${behind}`;
};

const tornOff = (source: Source, owner: ScalarNode, torn: readonly LoneKey[]): Finding => {
  const span = spanIn(source, owner.span.start, torn.at(-1)?.keySpan.end ?? owner.span.end);
  const whole = source.text.slice(span.start, span.end).replaceAll(/\s+/g, " ");
  const point = withPoint(whole);
  const meant = point ?? pairInText(whole) ?? quoted(whole);
  return finding(point === null ? TEXT_CODES.keyWithoutValue : TEXT_CODES.commaInNumber, {
    message: `${about(owner)}the comma cuts ${shortened(whole)} off behind ${shortened(owner.text)}; write ${meant}`,
    span,
    remedies: [{ title: `write ${meant}`, edits: [replacement(source, span, meant)] }],
  });
};
