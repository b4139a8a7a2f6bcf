// `fit CONSOLE`: every panel held against its rails, its neighbours, the frame and the operator, before anything is cut. With
// --fix the remedies of faults are applied to the texts.

import { renderJson } from "../../diagnostics/render-json.ts";
import { type Command, isWrongUse, wrongUse } from "../command.ts";
import { bayLines } from "../fit-lines.ts";
import { fittedConsole } from "../fitted-console.ts";
import { type Mending, mendDesign } from "../mend-design.ts";
import {
  findingsOf,
  type OpenProject,
  openProject,
  ROOT_OPTION,
  seenFrom,
} from "../open-project.ts";
import { EXIT, type Shell } from "../shell.ts";
import { countsInWords, hasFault, showFindings } from "../show-findings.ts";

export const fit: Command = {
  usage: "fit CONSOLE [--fix] [--notes] [--lines] [--root DIR]",
  details: [
    "Puts every panel of a console into its place and looks for what meets, what comes too near, what is too",
    "deep, what can't be reached or read from the seat, and what can't be taken out again. One line a bay,",
    "then the findings. Panels with a fault of their own are fitted all the same, and their faults are shown.",
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
    const read = await openProject(design, root, shell);
    if (isWrongUse(read)) return read;
    const opened = switches.has("fix") ? await mended(read, { design, root }, shell) : read;
    if (isWrongUse(opened)) return opened;
    const { project } = opened;
    if (project.console === null)
      return wrongUse(`${design} is no console that could be read; \`check\` judges it.`);
    const fitted = await fittedConsole(project, project.console, shell);
    const findings = [...opened.findings, ...fitted.findings];
    const seen = seenFrom(shell.cwd, opened.loaded, findings);
    if (switches.has("json")) shell.stdout(renderJson(seen.findings, seen.files));
    else {
      const style = { notes: switches.has("notes"), lines: switches.has("lines") };
      shell.stdout(bayLines(project.console.layout, fitted.facts));
      showFindings(seen.findings, seen.files, { shell, style });
      shell.stdout(`${project.name}: ${countsInWords(findings)}\n`);
    }
    return hasFault(findings) ? EXIT.faults : EXIT.fine;
  },
};

const mended = async (
  opened: OpenProject,
  asked: Pick<Mending, "design" | "root">,
  shell: Shell,
): ReturnType<typeof mendDesign> => {
  const [{ fitOfProject }, kernel] = await Promise.all([
    import("../../project.ts"),
    shell.kernel(),
  ]);
  const judge: Mending["judge"] = (loaded, project) => [
    ...findingsOf(loaded, project),
    ...(project.console === null ? [] : fitOfProject(project, project.console, kernel).findings),
  ];
  return mendDesign(opened, { ...asked, judge }, shell);
};
