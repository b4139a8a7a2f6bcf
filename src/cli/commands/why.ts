// `why CODE`: what a finding means at the bench, and a few lines of design text that give it.

import type { CodeEntry } from "../../diagnostics/finding.ts";
import { nearestNames } from "../../diagnostics/nearest.ts";
import { codeTable } from "../code-table.ts";
import { type Command, isWrongUse, type WrongUse, wrongUse } from "../command.ts";
import { EXIT } from "../shell.ts";
import { wrapped } from "../wrapped.ts";

export const why: Command = {
  usage: "why [CODE]",
  details:
    "Explains a finding by its code (checks/edge-distance). Without a code it lists them all.",
  options: [],
  words: { least: 0, most: 1 },
  run: async ({ words, switches }, shell) => {
    const table = codeTable();
    const [wanted] = words;
    const found = wanted === undefined ? null : entryOf(wanted, table);
    if (found !== null && isWrongUse(found)) return found;
    const entries = found === null ? table : [found];
    if (switches.has("json"))
      shell.stdout(entries.map((entry) => `${JSON.stringify(entry)}\n`).join(""));
    else shell.stdout(found === null ? listing(entries) : explained(found));
    return EXIT.fine;
  },
};

const entryOf = (wanted: string, table: readonly CodeEntry[]): CodeEntry | WrongUse => {
  const named = table.filter(({ code }) => code === wanted || code.split("/")[1] === wanted);
  const [found] = named;
  if (found !== undefined && named.length === 1) return found;
  const near =
    named.length > 1
      ? named.map(({ code }) => code)
      : nearestNames(
          wanted,
          table.map(({ code }) => code),
        );
  return wrongUse(`There is no one code "${wanted}". Nearest: ${near.join(", ")}.`);
};

const explained = ({ code, severity, title, why: reason, example }: CodeEntry): string => {
  const lines = example.split("\n").map((line) => `    ${line}`.trimEnd());
  return [`${code} (${severity}): ${title}`, "", ...wrapped(reason), "", ...lines, ""].join("\n");
};

const listing = (entries: readonly CodeEntry[]): string => {
  const widest = Math.max(...entries.map(({ code }) => code.length));
  return entries
    .map(({ code, severity, title }) => `${code.padEnd(widest)}  ${severity.padEnd(5)}  ${title}\n`)
    .join("");
};
