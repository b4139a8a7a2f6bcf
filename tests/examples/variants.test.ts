// Variants of the tug trainer that must not fit: each gives exactly the faults and queries written on its lines, and a remedy
// that edits a text clears its finding without a new fault. What belongs to a panel's own file is written where the panel stands.

import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { compile, fitOfProject } from "../../src/project.ts";
import { expectedLines, linesOf, notesIn, type Texts } from "../findings/example.ts";
import { faultsOf, isSame, remedied } from "../findings/remedied.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { exampleTexts } from "./example-projects.ts";

const FOLDER = "variants/";

const all: Texts = new Map(Object.entries(exampleTexts("tug-trainer")));
const variants = [...all.keys()].filter(
  (file) => file.startsWith(FOLDER) && /^kind: console$/m.test(all.get(file) ?? ""),
);

const kernel = await openKernel();

test("there are a dozen of them", () => {
  expect(variants.length).toBeGreaterThanOrEqual(12);
});

describe.each(variants)("%s", (variant) => {
  const asked = notesIn(new Map([[variant, all.get(variant) ?? ""]]));
  const judged = findingsOf(variant, all);

  test("gives what its lines say, and nothing else", () => {
    const own = ownFiles(variant);
    const expected = expectedLines(own);
    expect(expected.length).toBeGreaterThan(0);
    const atUse = judged.map((found) => atPlace(found, variant));
    expect(linesOf(atUse, all, asked).toSorted()).toEqual(expected.toSorted());
  });

  const remedies = judged
    .filter(({ severity, code }) => severity !== "note" || asked.has(code))
    .flatMap((found) => found.remedies.map((remedy) => ({ title: remedy.title, found, remedy })))
    .filter(({ remedy }) => remedy.edits.length > 0);

  test.each(remedies)("fits after $title, and brings no fault", ({ found, remedy }) => {
    const mended = findingsOf(variant, remedied(all, remedy));
    expect(mended.filter((other) => isSame(found, other))).toEqual([]);
    expect(faultsOf(mended).filter((fault) => !faultsOf(judged).includes(fault))).toEqual([]);
  });
});

function findingsOf(entry: string, files: Texts): readonly Finding[] {
  const project = compile({ entry, files }, testLibrary());
  const { console } = project;
  if (console === null) throw new Error(`${entry} is no console`);
  return [
    ...project.findings,
    ...project.panels.flatMap(({ findings }) => findings),
    ...(faultsOf(project.findings).length > 0
      ? []
      : fitOfProject(project, console, kernel).findings),
  ];
}

/** The variant and what it names beside it. */
function ownFiles(variant: string): Texts {
  const text = all.get(variant) ?? "";
  const named = [...text.matchAll(/file: ([a-z-]+\.yaml)/g)].map(([, file]) => `${FOLDER}${file}`);
  return new Map([variant, ...named].map((file) => [file, all.get(file) ?? ""]));
}

/** At the line of the console that stands the panel, where the panel's file is the trainer's own. */
function atPlace(found: Finding, variant: string): Finding {
  const { file } = found.span;
  if (file.startsWith(FOLDER)) return found;
  const start = (all.get(variant) ?? "").indexOf(`file: ../${file},`);
  if (start < 0) throw new Error(`${variant} stands no ${file}, where ${found.code} is found`);
  return { ...found, span: { file: variant, start, end: start } };
}
