// How findings of a console name what stands in it, and how findings of one cause become one.

import type { Finding } from "../../diagnostics/finding.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";

/** `winch/brake`: a component where more than one panel is spoken of. */
export const inPanel = ({
  panel,
  component,
}: {
  readonly panel: string;
  readonly component: string;
}): string => `${panel}/${component}`;

/** `the lever of brake on winch`, `the rib 2`. */
export const bodyName = ({ panel, thing, what }: ConsoleBody): string => {
  const named = what === "" || what === thing ? thing : `${what} of ${thing}`;
  return panel === null ? named : `${named} on ${panel}`;
};

/** ` and 2 more`: at the end of a list's first. */
export const andMore = (count: number): string => (count === 0 ? "" : ` and ${count} more`);

/** Facts of one cause together, in the order in which the causes come, each with its worst first. */
export const byCause = <Fact>(
  facts: readonly Fact[],
  causeOf: (fact: Fact) => string,
  badness: (fact: Fact) => number,
): readonly (readonly [Fact, ...Fact[]])[] => {
  const groups = new Map<string, [Fact, ...Fact[]]>();
  for (const fact of facts) {
    const cause = causeOf(fact);
    const before = groups.get(cause);
    if (before === undefined) groups.set(cause, [fact]);
    else if (badness(fact) > badness(before[0])) before.unshift(fact);
    else before.push(fact);
  }
  return [...groups.values()];
};

/** The same finding, made a fault or a query by what it is about. */
export const asSeverity = (found: Finding, severity: Finding["severity"]): Finding => ({
  ...found,
  severity,
});
