// All files of a project read and joined: the panels with the workshop that makes them, the console that uses them,
// and the own catalogue files that they name. Pure: whoever calls hands in the texts.

import { type CodeEntry, type Finding, finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import type { ConsoleDesign } from "./console-design.ts";
import { fileMissing, type Include, includeCycles, includeSpans } from "./includes.ts";
import type { PanelDesign } from "./panel-design.ts";
import { type Design, fileKind, type ReadDesign, readDesign } from "./read-design.ts";
import { resolveInclude } from "./resolve-include.ts";
import type { WorkshopDesign } from "./workshop-design.ts";
import { spanOf } from "./written.ts";

export interface PanelRead {
  /** What the console calls it, else its own name. */
  readonly name: string;
  readonly design: PanelDesign;
  readonly workshop: WorkshopDesign | null;
  readonly findings: readonly Finding[];
}

export interface ReadFiles {
  readonly console: ConsoleDesign | null;
  /** The workshop that the console names. */
  readonly shared: WorkshopDesign | null;
  readonly panels: readonly PanelRead[];
  /** Paths of the project's own catalogue files, each once. */
  readonly catalogues: readonly string[];
  /** Of files that are no panel: console, workshop, what is missing, what is named in a circle. */
  readonly findings: readonly Finding[];
}

/** Reads the entry and every file that it leads to. */
export const projectFiles = (entry: string, files: ReadonlyMap<string, string>): ReadFiles => {
  const reached = reachedFiles(entry, files);
  const read = new Map(
    [...reached.includes.keys()].flatMap((path) => {
      const text = files.get(path);
      if (text === undefined || (path !== entry && fileKind(path, text) === "parts")) return [];
      return [[path, readDesign(path, text)] as const];
    }),
  );
  const first = read.get(entry);
  const findings = [
    ...(files.has(entry) ? [] : [fileMissing(entryInclude(entry), files.keys())]),
    ...includeCycles(reached.includes),
    ...reached.missing,
    ...[...read.values()]
      .filter(({ design }) => design?.kind !== "panel")
      .flatMap((one) => one.findings),
  ];
  const design = first?.design ?? null;
  const console = design?.kind === "console" ? design : null;
  const joined = joinedPanels(design, read);
  return {
    console,
    shared: console === null ? null : workshopOf(console, read),
    panels: joined.panels,
    catalogues: [...reached.includes.keys()].filter((path) => isParts(path, files)),
    findings: [...findings, ...joined.findings],
  };
};

const entryInclude = (entry: string): Include => ({
  path: entry,
  span: { file: entry, start: 0, end: 0 },
});

const isParts = (path: string, files: ReadonlyMap<string, string>): boolean => {
  const text = files.get(path);
  return text !== undefined && fileKind(path, text) === "parts";
};

interface Reached {
  readonly includes: ReadonlyMap<string, readonly Include[]>;
  readonly missing: readonly Finding[];
}

const reachedFiles = (entry: string, files: ReadonlyMap<string, string>): Reached => {
  const includes = new Map<string, readonly Include[]>();
  const missing: Finding[] = [];
  const queue = [entry];
  for (const path of queue) {
    const text = files.get(path);
    if (text === undefined || includes.has(path)) continue;
    const named = includeSpans(path, text);
    includes.set(path, named);
    missing.push(
      ...named.filter((one) => !files.has(one.path)).map((one) => fileMissing(one, files.keys())),
    );
    queue.push(...named.map((one) => one.path));
  }
  return { includes, missing };
};

type Read = ReadonlyMap<string, ReadDesign>;

interface Joined {
  readonly panels: readonly PanelRead[];
  readonly findings: readonly Finding[];
}

const joinedPanels = (first: Design | null, read: Read): Joined => {
  switch (first?.kind) {
    case undefined:
      return { panels: [], findings: [] };
    case "panel":
      return { panels: [panelRead(first, first.name, { read, console: null })], findings: [] };
    case "workshop":
      return {
        panels: [],
        findings: [
          wrongKind(
            first,
            "a workshop makes panels; call `check` or `make` on a panel or a console",
          ),
        ],
      };
    case "console":
      return consolePanels(first, read);
  }
};

const consolePanels = (console: ConsoleDesign, read: Read): Joined => {
  const findings: Finding[] = [];
  const panels = console.panels.flatMap((use) => {
    const path = resolveInclude(console.file, use.file);
    const found = path.kind === "resolved" ? read.get(path.path) : undefined;
    if (found === undefined) return [];
    if (found.design?.kind === "panel") return [panelRead(found.design, use.as, { read, console })];
    // What keeps the file from being a panel is among its own findings.
    if (found.design !== null)
      findings.push(
        finding(MEANING_CODES.otherKind, {
          message: `${use.file} is a ${found.design.kind}, not a panel`,
          span: spanOf(use.written, "file"),
        }),
      );
    return [];
  });
  return { panels, findings };
};

const wrongKind = (
  design: Design,
  message: string,
  code: CodeEntry = MEANING_CODES.otherKind,
): Finding => finding(code, { message, span: design.written.span });

const panelRead = (
  design: PanelDesign,
  name: string,
  within: { readonly read: Read; readonly console: ConsoleDesign | null },
): PanelRead => {
  const { read, console } = within;
  const own = workshopOf(design, read);
  const shared = console === null ? null : workshopOf(console, read);
  const findings = read.get(design.file)?.findings ?? [];
  const disagree = own !== null && shared !== null && own.file !== shared.file;
  return {
    name,
    design: { ...design, name },
    workshop: own ?? shared,
    findings: disagree ? [...findings, twoWorkshops(design, own, shared)] : findings,
  };
};

const workshopOf = (
  design: Pick<PanelDesign, "file" | "workshop">,
  read: Read,
): WorkshopDesign | null => {
  if (design.workshop === null) return null;
  const path = resolveInclude(design.file, design.workshop);
  const found = path.kind === "resolved" ? read.get(path.path)?.design : undefined;
  return found?.kind === "workshop" ? found : null;
};

const twoWorkshops = (panel: PanelDesign, own: WorkshopDesign, shared: WorkshopDesign): Finding =>
  finding(MEANING_CODES.contradiction, {
    message: `${panel.name} is made by ${own.file} and its console by ${shared.file}; name one workshop in both`,
    span: spanOf(panel.written, "workshop"),
  });
