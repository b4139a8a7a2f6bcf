// `make DESIGN`: the job pack of every panel that has no fault, each written whole or not at all.
// What has a fault keeps its old pack, marked stale, and the exit code is 1.

import { type Command, isWrongUse, wrongUse } from "../command.ts";
import { madeRecord, tellMade } from "../made-report.ts";
import { makePacks } from "../make-packs.ts";
import { openProject, ROOT_OPTION } from "../open-project.ts";
import { outFolder } from "../out-folder.ts";
import { EXIT } from "../shell.ts";
import { hasFault } from "../show-findings.ts";

export const make: Command = {
  usage: "make DESIGN [--out DIR] [--only fascia] [--card] [--strict] [--root DIR]",
  details: [
    "Writes the job pack of a panel, or of every panel of a console, into out/NAME: cut files for every",
    "layer, templates, drawings, lists and the inspection of what was written. A panel with a fault is not",
    "written and keeps its old pack, marked stale. Files that are not from this program are left alone.",
    "Exit code 1 where anything could not be made.",
  ].join("\n"),
  options: [
    { name: "out", value: "DIR", help: "where to write (out/NAME unless told)" },
    {
      name: "only",
      value: "fascia",
      help: "cut files and their inspection, no drawings, no papers",
    },
    { name: "card", value: null, help: "add a set for a first fitting in cardboard" },
    { name: "strict", value: null, help: "write nothing at all where any panel has a fault" },
    { name: "notes", value: null, help: "show notes in full" },
    ROOT_OPTION,
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [design = ""], switches, values }, shell) => {
    const wanted = values.get("only") ?? "fascia";
    if (wanted !== "fascia") return wrongUse(`--only knows "fascia", not "${wanted}".`);
    const only = values.has("only") ? "fascia" : "everything";
    const opened = await openProject(design, values.get("root"), shell);
    if (isWrongUse(opened)) return opened;
    const out = outFolder(values.get("out"), opened, shell);
    if (isWrongUse(out)) return out;
    const made = await makePacks(
      opened,
      { out: out.path, only, card: switches.has("card"), strict: switches.has("strict") },
      shell,
    );
    if (switches.has("json")) shell.stdout(`${JSON.stringify(madeRecord(made, shell.cwd))}\n`);
    else tellMade(made, { shell, notes: switches.has("notes") });
    return hasFault(made.findings) || opened.project.kind === "stopped" ? EXIT.faults : EXIT.fine;
  },
};
