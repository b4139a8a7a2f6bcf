// `make DESIGN`: the job pack of every panel that has no fault, each written whole or not at all.
// What has a fault keeps its old pack, marked stale, and the exit code is 1.

import { type Command, isWrongUse, type WrongUse, wrongUse } from "../command.ts";
import type { PackForm } from "../made.ts";
import { madeRecord, tellMade } from "../made-report.ts";
import { makePacks } from "../make-packs.ts";
import { type OpenProject, openProject, ROOT_OPTION } from "../open-project.ts";
import { outFolder, zipOutFolder } from "../out-folder.ts";
import { EXIT, type Shell } from "../shell.ts";
import { hasFault } from "../show-findings.ts";

export const make: Command = {
  usage:
    "make DESIGN [--zip | --one-zip] [--out DIR] [--only fascia] [--card] [--strict] [--root DIR]",
  details: [
    "Writes the job pack of a panel, or of every panel of a console, into out/NAME: cut files for every",
    "layer, templates, drawings, lists and the inspection of what was written. A panel with a fault is not",
    "written and keeps its old pack, marked stale. Files that are not from this program are left alone.",
    "--zip writes each pack as one file: out/NAME.zip of a panel, out/NAME/PANEL.zip of each panel of a",
    "console and out/NAME/console.zip of the console itself. --one-zip writes them all into out/NAME.zip, and",
    "only where none has a fault. Unpacked, a zip is the folder that make writes without it; the same design",
    "gives the same bytes. An old zip that can't be made anew stays, with a note NAME.zip.STALE.txt beside it.",
    "Packs that were made before in another form, and those of panels that a console no longer has, are left as",
    "they are, and told of. A console without a frame has nothing to cut, and no pack of its own with --only fascia.",
    "Exit code 1 where anything could not be made.",
  ].join("\n"),
  options: [
    { name: "zip", value: null, help: "a zip for each pack in place of a folder" },
    { name: "one-zip", value: null, help: "all packs of the design in one zip" },
    {
      name: "out",
      value: "DIR",
      help: "where to write (out/NAME unless told; out where there will be one zip)",
    },
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
    const as = packForm(switches);
    if (isWrongUse(as)) return as;
    const out = outOf(values.get("out"), { opened, as: as.form }, shell);
    if (isWrongUse(out)) return out;
    const made = await makePacks(
      opened,
      {
        out: out.path,
        only,
        card: switches.has("card"),
        strict: switches.has("strict"),
        as: as.form,
      },
      shell,
    );
    if (switches.has("json")) shell.stdout(`${JSON.stringify(madeRecord(made, shell.cwd))}\n`);
    else tellMade(made, { shell, notes: switches.has("notes") });
    return hasFault(made.findings) || opened.project.kind === "stopped" ? EXIT.faults : EXIT.fine;
  },
};

const packForm = (switches: ReadonlySet<string>): { readonly form: PackForm } | WrongUse => {
  const [zip, oneZip] = [switches.has("zip"), switches.has("one-zip")];
  if (zip && oneZip)
    return wrongUse("--zip gives a zip for each pack, --one-zip one for all: take one of them.");
  return { form: zip ? "zips" : oneZip ? "one-zip" : "folders" };
};

const outOf = (
  asked: string | undefined,
  { opened, as }: { readonly opened: OpenProject; readonly as: PackForm },
  shell: Shell,
): { readonly path: string } | WrongUse => {
  if (as === "folders") return outFolder(asked, opened, shell);
  const { name, console } = opened.project;
  return zipOutFolder(asked, { name, isOneFile: as === "one-zip" || console === null }, shell);
};
