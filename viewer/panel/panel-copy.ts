// A panel that shares its file with another one gets a file of its own: the new file beside the old one, and the console's
// line that names it. Pure: the texts and the console's own words in, the two changes out.

import type { ConsoleDesign } from "../../src/design/console-design.ts";
import { nodeAt, setKey } from "../../src/design/edit.ts";
import { source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import type { DesignTexts } from "../core-messages.ts";
import { textMove } from "../files/text-move.ts";
import type { Move } from "../history.ts";

export type PanelCopy =
  | { readonly kind: "moves"; readonly file: string; readonly moves: readonly Move[] }
  | { readonly kind: "refused"; readonly why: string };

/** `edits` are those of the old file that shall hold for the copy alone. */
export function panelCopy(
  texts: DesignTexts,
  {
    file,
    edits,
    panel,
    design,
  }: {
    readonly file: string;
    readonly edits: readonly TextEdit[];
    /** As the console calls it. */
    readonly panel: string;
    readonly design: ConsoleDesign;
  },
): PanelCopy {
  const span = design.panels.find(({ as }) => as === panel)?.written.keys["file"];
  const before = texts.get(file);
  const consoleText = span === undefined ? undefined : texts.get(span.file);
  if (span === undefined || before === undefined || consoleText === undefined)
    return { kind: "refused", why: `${panel} is not named in ${design.file}` };
  const edited = applyEdits(
    before,
    edits.filter((edit) => edit.file === file),
  );
  if (edited.kind === "refused") return edited;
  const copy = freeFile(file, panel, texts);
  const written = consoleText.slice(span.start, span.end);
  const named = written.replace(lastPart(file), lastPart(copy));
  if (named === written) return { kind: "refused", why: `${written} is not written as a path` };
  const text = `${consoleText.slice(0, span.start)}${named}${consoleText.slice(span.end)}`;
  return {
    kind: "moves",
    file: copy,
    moves: [
      textMove(copy, null, withName(copy, edited.text, panel)),
      textMove(span.file, consoleText, text),
    ],
  };
}

/** The panel's own name in the console, and a number where that is taken. */
function freeFile(file: string, panel: string, texts: DesignTexts): string {
  const folder = file.slice(0, file.length - lastPart(file).length);
  const ending = /\.[^./]+$/.exec(file)?.[0] ?? "";
  for (let number = 1; ; number += 1) {
    const path = `${folder}${panel}${number === 1 ? "" : `-${number}`}${ending}`;
    if (!texts.has(path)) return path;
  }
}

const lastPart = (path: string): string => path.split("/").at(-1) ?? path;

/** Its own name too, so that no two files of the folder have one name. */
function withName(file: string, text: string, name: string): string {
  const from = source(file, text);
  if (nodeAt(from, ["name"]) === null) return text;
  const made = setKey(from, [], { key: "name", value: name });
  const applied = made.kind === "edit" ? applyEdits(text, [made.edit]) : made;
  return applied.kind === "edited" ? applied.text : text;
}
