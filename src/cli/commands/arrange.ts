// `arrange LIST.csv`: a component list becomes a panel file, laid out and judged, to be edited further by hand.

import { dirname, join, relative, resolve, sep } from "node:path";
import type { Arranged, ArrangeOptions } from "../../arrange/arrange-list.ts";
import type { Catalogue } from "../../catalogue/record.ts";
import type { WorkshopDesign } from "../../design/workshop-design.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { findingRecord } from "../../diagnostics/render-json.ts";
import { safeName } from "../../pack/file-name.ts";
import { utf8Bytes } from "../../pack/utf8.ts";
import { type Command, isWrongUse, type WrongUse, wrongUse } from "../command.ts";
import { attempt } from "../disk-trouble.ts";
import { readArgumentFile } from "../read-argument-file.ts";
import type { Arguments } from "../read-arguments.ts";
import { EXIT, type ExitCode, type Shell } from "../shell.ts";
import { countsInWords, hasFault, showFindings } from "../show-findings.ts";
import { widthArgument } from "../width-argument.ts";

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
    {
      name: "width",
      value: "LENGTH",
      help: "for mounts that leave the width open: 120mm, or 42HP",
    },
    { name: "lit", value: null, help: "a painted opal face on a backing, to be lit from behind" },
    { name: "workshop", value: "FILE", help: "the workshop that will cut it" },
    { name: "catalogue", value: "FILE", help: "parts of your own, and measured sizes" },
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
    const arranged = arrangeList(
      readComponentList(list, text.text, [...options.catalogue.parts.keys()]),
      options,
    );
    const findings = [...options.findings, ...arranged.findings];
    const files = new Map([...options.files, [list, text.text]]);
    return hand(
      { ...arranged, findings },
      { list, files, out: values.get("out"), switches },
      shell,
    );
  },
};

const optionsFrom = async (
  list: string,
  asked: { readonly values: Arguments["values"]; readonly isLit: boolean },
  shell: Shell,
): Promise<(ArrangeOptions & NamedFiles) | WrongUse> => {
  const { values, isLit } = asked;
  const workshop = await workshopFrom(values, shell);
  if (isWrongUse(workshop)) return workshop;
  const library = await shell.library();
  const own = await catalogueFrom(values, library.catalogue, shell);
  if (isWrongUse(own)) return own;
  const { lettering } = library;
  const { catalogue } = own;
  const mount = values.get("mount") ?? "console-rail";
  const size = widthArgument(values.get("width"), catalogue.mounts.get(mount));
  if (isWrongUse(size)) return size;
  const listName = list.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, "");
  const name = safeName(values.get("name") ?? listName);
  return {
    name,
    title: values.get("title") ?? values.get("name") ?? listName,
    mount,
    width: size.width,
    stack: isLit ? "lit" : "plain",
    workshopPath: workshop.workshopPath,
    workshop: workshop.workshop,
    cataloguePath: own.path,
    catalogue,
    lettering,
    findings: [...workshop.findings, ...own.findings],
    files: new Map([...workshop.files, ...own.files]),
  };
};

/** The files that the options name, and what was found when they were read. */
interface NamedFiles {
  readonly files: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
}

interface OwnCatalogue extends NamedFiles {
  readonly path: string | null;
  readonly catalogue: Catalogue;
}

const catalogueFrom = async (
  values: Arguments["values"],
  catalogue: Catalogue,
  shell: Shell,
): Promise<OwnCatalogue | WrongUse> => {
  const file = values.get("catalogue");
  if (file === undefined) return { path: null, catalogue, files: new Map(), findings: [] };
  const read = readArgumentFile(file, shell);
  if (isWrongUse(read)) return read;
  const [{ readOwnRecords }, { catalogueWith }] = await Promise.all([
    import("../../catalogue/own-records.ts"),
    import("../../catalogue/library.ts"),
  ]);
  const { records, findings } = readOwnRecords(file, read.text, catalogue);
  return {
    path: pathFromPanel(file, values, shell),
    catalogue: catalogueWith(catalogue, records),
    files: new Map([[file, read.text]]),
    findings,
  };
};

/** The path is the one from the panel file's own folder, since that is where it will stand. */
const pathFromPanel = (file: string, values: Arguments["values"], shell: Shell): string => {
  const folder = dirname(join(shell.cwd, values.get("out") ?? "panel.yaml"));
  return relative(folder, resolve(shell.cwd, file)).split(sep).join("/");
};

interface Workshop extends NamedFiles {
  readonly workshopPath: string | null;
  readonly workshop: WorkshopDesign | null;
}

const workshopFrom = async (
  values: Arguments["values"],
  shell: Shell,
): Promise<Workshop | WrongUse> => {
  const file = values.get("workshop");
  if (file === undefined)
    return { workshopPath: null, workshop: null, files: new Map(), findings: [] };
  const read = readArgumentFile(file, shell);
  if (isWrongUse(read)) return read;
  const { readDesign } = await import("../../design/read-design.ts");
  const { design, findings } = readDesign(file, read.text);
  if (design?.kind !== "workshop")
    return wrongUse(
      `${file} is not a workshop file that can be read: consolewright check tells why.`,
    );
  return {
    workshopPath: pathFromPanel(file, values, shell),
    workshop: design,
    files: new Map([[file, read.text]]),
    findings,
  };
};

interface Handed {
  readonly list: string;
  readonly files: ReadonlyMap<string, string>;
  readonly out: string | undefined;
  readonly switches: ReadonlySet<string>;
}

const PANEL_FILE = "panel.yaml";

const hand = (arranged: Arranged, handed: Handed, shell: Shell): ExitCode | WrongUse => {
  const { text, findings } = arranged;
  const { list, out, switches } = handed;
  const files = new Map([...handed.files, ...(text === null ? [] : [[PANEL_FILE, text] as const])]);
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
