// A design as a command needs it: found, read, compiled, with everything that was found out about it.

import { join, relative, sep } from "node:path";
import { distinctFindings } from "../diagnostics/distinct-findings.ts";
import type { Finding, Span } from "../diagnostics/finding.ts";
import type { Project } from "../project.ts";
import { isWrongUse, type WrongUse } from "./command.ts";
import { designPlace } from "./design-argument.ts";
import { type LoadedDesign, loadDesign } from "./load-design.ts";
import { withNearFiles } from "./near-files.ts";
import type { OptionRule } from "./read-arguments.ts";
import type { Shell } from "./shell.ts";

export interface OpenProject {
  readonly loaded: LoadedDesign;
  readonly project: Project;
  /** Of the disk, of the files and of every panel, in this order. */
  readonly findings: readonly Finding[];
}

export const ROOT_OPTION: OptionRule = {
  name: "root",
  value: "DIR",
  help: "the folder that the design's files stay below (found by itself otherwise)",
};

export const openProject = async (
  argument: string,
  root: string | undefined,
  shell: Shell,
): Promise<OpenProject | WrongUse> => {
  const place = designPlace(argument, { cwd: shell.cwd, root }, shell.disk);
  if (isWrongUse(place)) return place;
  const loaded = loadDesign(place, shell.disk);
  const [{ compile }, library] = await Promise.all([import("../project.ts"), shell.library()]);
  const { disk } = shell;
  const project = withNearFiles(compile(loaded, library), { root: loaded.root, disk });
  return { loaded, project, findings: findingsOf(loaded, project) };
};

export const findingsOf = (loaded: LoadedDesign, project: Project): readonly Finding[] =>
  distinctFindings([
    ...loaded.findings,
    ...project.findings,
    ...project.panels.flatMap(({ findings }) => findings),
  ]);

/** Paths as the user sees them from where the command was called, in findings and texts alike. */
export interface SeenFromHere {
  readonly findings: readonly Finding[];
  readonly files: ReadonlyMap<string, string>;
}

export const seenFrom = (
  cwd: string,
  loaded: Pick<LoadedDesign, "root" | "files">,
  findings: readonly Finding[],
): SeenFromHere => {
  const seen = (file: string): string =>
    file === "" ? file : relative(cwd, join(loaded.root, file)).split(sep).join("/");
  const seenSpan = (span: Span): Span => ({ ...span, file: seen(span.file) });
  return {
    files: new Map([...loaded.files].map(([file, text]) => [seen(file), text])),
    findings: findings.map((found) => ({
      ...found,
      span: seenSpan(found.span),
      related: found.related.map((place) => ({ ...place, span: seenSpan(place.span) })),
      remedies: found.remedies.map((remedy) => ({
        ...remedy,
        edits: remedy.edits.map((edit) => ({ ...edit, file: seen(edit.file) })),
      })),
    })),
  };
};
