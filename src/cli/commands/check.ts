// `check DESIGN`: every finding before anything is cut. With --fix the remedies of faults are applied to the texts.

import { join } from "node:path";
import { renderJson } from "../../diagnostics/render-json.ts";
import { applyRemedies } from "../apply-remedies.ts";
import { type Command, isWrongUse } from "../command.ts";
import {
  findingsOf,
  type OpenProject,
  openProject,
  ROOT_OPTION,
  seenFrom,
} from "../open-project.ts";
import { replaceTexts } from "../replace-texts.ts";
import { EXIT, type ExitCode, type Shell } from "../shell.ts";
import { countsInWords, hasFault, showFindings } from "../show-findings.ts";

export const check: Command = {
  usage: "check DESIGN [--fix] [--notes] [--lines] [--root DIR]",
  details: [
    "Judges a panel file, a console file, or a folder that holds one. A fault means that a part made from",
    "it would be wrong; a query that a person must decide; a note that something is worth knowing.",
    "--fix applies the remedies of faults to the files, all or none, and leaves queries to you.",
    "Exit code 1 where there is a fault. With --json one finding a line is printed.",
  ].join("\n"),
  options: [
    {
      name: "fix",
      value: null,
      help: "apply the remedies of faults, where they mend more than they break",
    },
    { name: "notes", value: null, help: "show notes in full" },
    { name: "lines", value: null, help: "one line a finding, for editors" },
    ROOT_OPTION,
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [design = ""], switches, values }, shell) => {
    const root = values.get("root");
    const opened = await openProject(design, root, shell);
    if (isWrongUse(opened)) return opened;
    const mended = switches.has("fix") ? await mend(opened, { design, root }, shell) : opened;
    if (isWrongUse(mended)) return mended;
    const seen = seenFrom(shell.cwd, mended.loaded, mended.findings);
    const style = { notes: switches.has("notes"), lines: switches.has("lines") };
    if (switches.has("json")) shell.stdout(renderJson(seen.findings, seen.files));
    else {
      showFindings(seen.findings, seen.files, { shell, style });
      shell.stdout(`${mended.project.name || design}: ${countsInWords(mended.findings)}\n`);
    }
    return exitCodeOf(mended);
  },
};

const exitCodeOf = ({ findings, project }: OpenProject): ExitCode =>
  hasFault(findings) || project.kind === "stopped" ? EXIT.faults : EXIT.fine;

/** The design as it is after its remedies; as it was, where they could not be written. */
const mend = async (
  opened: OpenProject,
  asked: { readonly design: string; readonly root: string | undefined },
  shell: Shell,
): ReturnType<typeof openProject> => {
  const [{ compile }, library] = await Promise.all([import("../../project.ts"), shell.library()]);
  const { loaded } = opened;
  const remedied = applyRemedies(loaded.files, (files) => {
    const changed = { ...loaded, files };
    return findingsOf(changed, compile(changed, library));
  });
  const changes = [...remedied.files].flatMap(([file, after]) => {
    const before = loaded.files.get(file) ?? "";
    return before === after ? [] : [{ place: join(loaded.root, file), before, after }];
  });
  if (changes.length === 0) return opened;
  const trouble = replaceTexts(changes, shell.disk);
  if (trouble !== null) {
    shell.stderr(`Nothing was fixed: ${trouble}.\n`);
    return opened;
  }
  for (const { code, title } of remedied.applied) shell.stderr(`fixed: ${title} [${code}]\n`);
  return openProject(asked.design, asked.root, shell);
};
