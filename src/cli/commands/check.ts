// `check DESIGN`: every finding before anything is cut. With --fix the remedies of faults are applied to the texts.

import { renderJson } from "../../diagnostics/render-json.ts";
import { type Command, isWrongUse } from "../command.ts";
import { mendDesign } from "../mend-design.ts";
import {
  findingsOf,
  type OpenProject,
  openProject,
  ROOT_OPTION,
  seenFrom,
} from "../open-project.ts";
import { EXIT, type ExitCode } from "../shell.ts";
import { countsInWords, hasFault, showFindings } from "../show-findings.ts";

export const check: Command = {
  usage: "check DESIGN [--fix] [--notes] [--lines] [--root DIR]",
  details: [
    "Judges a panel file, a console file, or a folder that holds one. A fault means that a part made from",
    "it would be wrong; a query that a person must decide; a note that something is worth knowing. Of a",
    "console it judges the places of its panels; whether their bodies fit one another is judged by `fit`.",
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
    const mended = switches.has("fix")
      ? await mendDesign(opened, { design, root, judge: findingsOf }, shell)
      : opened;
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
