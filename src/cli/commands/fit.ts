// `fit CONSOLE`: every panel held against its rails, its neighbours, the frame and the operator, before anything is cut.

import { renderJson } from "../../diagnostics/render-json.ts";
import { type Command, isWrongUse, wrongUse } from "../command.ts";
import { bayLines } from "../fit-lines.ts";
import { fittedConsole } from "../fitted-console.ts";
import { openProject, ROOT_OPTION, seenFrom } from "../open-project.ts";
import { EXIT } from "../shell.ts";
import { countsInWords, hasFault, showFindings } from "../show-findings.ts";

export const fit: Command = {
  usage: "fit CONSOLE [--notes] [--lines] [--root DIR]",
  details: [
    "Puts every panel of a console into its place and looks for what meets, what comes too near, what is too",
    "deep, what can't be reached or read from the seat, and what can't be taken out again. One line a bay,",
    "then the findings. Panels with a fault of their own are fitted all the same, and their faults are shown.",
    "Exit code 1 where there is a fault. With --json one finding a line is printed.",
  ].join("\n"),
  options: [
    { name: "notes", value: null, help: "show notes in full" },
    { name: "lines", value: null, help: "one line a finding, for editors" },
    ROOT_OPTION,
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [design = ""], switches, values }, shell) => {
    const opened = await openProject(design, values.get("root"), shell);
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
