// `arrange LIST.csv`: a component list becomes a panel file, laid out and judged, to be edited further by hand.

import { dirname, join, relative, resolve, sep } from "node:path";
import type { Arranged, ArrangeOptions } from "../../arrange/arrange-list.ts";
import type { WorkshopDesign } from "../../design/workshop-design.ts";
import { findingRecord } from "../../diagnostics/render-json.ts";
import { safeName } from "../../pack/file-name.ts";
import { utf8Bytes } from "../../pack/utf8.ts";
import { type Command, isWrongUse, type WrongUse, wrongUse } from "../command.ts";
import { attempt } from "../disk-trouble.ts";
import { lengthArgument, noLength } from "../length-argument.ts";
import { readArgumentFile } from "../read-argument-file.ts";
import type { Arguments } from "../read-arguments.ts";
import { EXIT, type ExitCode, type Shell } from "../shell.ts";
import { countsInWords, hasFault, showFindings } from "../show-findings.ts";

export const arrange: Command = {
  usage: "arrange LIST.csv [--mount MOUNT] [--name NAME] [--out FILE] ...",
  details: [
    "Places the components of a list (columns part, quantity, legend, group, note) on a panel: rows by",
    "group, hands and bodies at their distances, rails and fixings kept free. Prints the panel file, or",
    "writes it where --out says; a file that is there is not overwritten.",
  ].join("\n"),
  options: [
    { name: "mount", value: "MOUNT", help: "how the panel is held (console-rail unless told)" },
    { name: "name", value: "NAME", help: "the panel's name (the list's unless told)" },
    { name: "title", value: "TITLE", help: "what it is called on paper" },
    { name: "width", value: "LENGTH", help: "for mounts that leave the width open" },
    { name: "lit", value: null, help: "a painted opal face on a backing, to be lit from behind" },
    { name: "workshop", value: "FILE", help: "the workshop that will cut it" },
    { name: "out", value: "FILE", help: "the panel file to write" },
    { name: "notes", value: null, help: "show notes in full" },
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [list = ""], values, switches }, shell) => {
    const text = readArgumentFile(list, shell);
    if (isWrongUse(text)) return text;
    const options = await optionsFrom(list, { values, isLit: switches.has("lit") }, shell);
    if (isWrongUse(options)) return options;
    const [{ arrangeList }, { readComponentList }] = await Promise.all([
      import("../../arrange/arrange-list.ts"),
      import("../../design/component-list.ts"),
    ]);
    const arranged = arrangeList(readComponentList(list, text.text), options);
    return hand(arranged, { list, text: text.text, out: values.get("out"), switches }, shell);
  },
};

const optionsFrom = async (
  list: string,
  asked: { readonly values: Arguments["values"]; readonly isLit: boolean },
  shell: Shell,
): Promise<ArrangeOptions | WrongUse> => {
  const { values, isLit } = asked;
  const written = values.get("width");
  const width = written === undefined ? null : lengthArgument(written);
  if (written !== undefined && width === null) return wrongUse(noLength(written));
  const workshop = await workshopFrom(values, shell);
  if (isWrongUse(workshop)) return workshop;
  const { catalogue, lettering } = await shell.library();
  const own = list.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, "");
  const name = safeName(values.get("name") ?? own);
  return {
    name,
    title: values.get("title") ?? values.get("name") ?? own,
    mount: values.get("mount") ?? "console-rail",
    width,
    stack: isLit ? "lit" : "plain",
    ...workshop,
    catalogue,
    lettering,
  };
};

interface Workshop {
  readonly workshopPath: string | null;
  readonly workshop: WorkshopDesign | null;
}

/** The path is the one from the panel file's own folder, since that is where it will stand. */
const workshopFrom = async (
  values: Arguments["values"],
  shell: Shell,
): Promise<Workshop | WrongUse> => {
  const file = values.get("workshop");
  if (file === undefined) return { workshopPath: null, workshop: null };
  const read = readArgumentFile(file, shell);
  if (isWrongUse(read)) return read;
  const { readDesign } = await import("../../design/read-design.ts");
  const { design } = readDesign(file, read.text);
  if (design?.kind !== "workshop")
    return wrongUse(
      `${file} is not a workshop file that can be read: consolewright check tells why.`,
    );
  const folder = dirname(join(shell.cwd, values.get("out") ?? "panel.yaml"));
  const workshopPath = relative(folder, resolve(shell.cwd, file)).split(sep).join("/");
  return { workshopPath, workshop: design };
};

interface Handed {
  readonly list: string;
  readonly text: string;
  readonly out: string | undefined;
  readonly switches: ReadonlySet<string>;
}

const PANEL_FILE = "panel.yaml";

const hand = (arranged: Arranged, handed: Handed, shell: Shell): ExitCode | WrongUse => {
  const { text, findings } = arranged;
  const { list, out, switches } = handed;
  const files = new Map([
    [list, handed.text],
    ...(text === null ? [] : [[PANEL_FILE, text] as const]),
  ]);
  const trouble = text === null || out === undefined ? null : writeNew(out, text, shell);
  if (trouble !== null) return wrongUse(trouble);
  if (switches.has("json")) {
    const records = findings.map((found) => findingRecord(found, files));
    shell.stdout(`${JSON.stringify({ text, out: out ?? null, findings: records })}\n`);
  } else {
    showFindings(findings, files, { shell, style: { notes: switches.has("notes"), lines: false } });
    shell.stderr(`${list}: ${countsInWords(findings)}\n`);
    if (text !== null) shell.stdout(out === undefined ? text : `${out}\n`);
  }
  return text === null || hasFault(findings) ? EXIT.faults : EXIT.fine;
};

/** null when written, else what stood in the way. */
const writeNew = (out: string, text: string, { cwd, disk }: Shell): string | null => {
  const place = resolve(cwd, out);
  const written = attempt(() => {
    disk.makeFolder(dirname(place));
    disk.write(place, utf8Bytes(text));
  });
  return written.kind === "trouble" ? `${out} was not written: ${written.why}.` : null;
};
