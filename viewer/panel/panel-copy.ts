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
  const own = withName(copy, edited.text, panel);
  if (own.kind === "refused") return own;
  const written = consoleText.slice(span.start, span.end);
  const named = withLastPart(written, lastPart(file), lastPart(copy));
  if (named === null) return { kind: "refused", why: `${written} is not written as a path` };
  const text = `${consoleText.slice(0, span.start)}${named}${consoleText.slice(span.end)}`;
  return {
    kind: "moves",
    file: copy,
    moves: [textMove(copy, null, own.text), textMove(span.file, consoleText, text)],
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

/** A path as it is written, in quotes or bare, with another file at its end; null where it ends in something else. */
function withLastPart(written: string, before: string, after: string): string | null {
  const at = written.lastIndexOf(before);
  const behind = written.slice(at + before.length);
  return at < 0 || !/^["']?$/.test(behind) ? null : `${written.slice(0, at)}${after}${behind}`;
}

/** Its own name too, so that no two files of the folder have one name. */
function withName(
  file: string,
  text: string,
  name: string,
): { readonly kind: "named"; readonly text: string } | Extract<PanelCopy, { kind: "refused" }> {
  const from = source(file, text);
  if (nodeAt(from, ["name"]) === null) return { kind: "named", text };
  const made = setKey(from, [], { key: "name", value: name });
  const applied = made.kind === "edit" ? applyEdits(text, [made.edit]) : made;
  if (applied.kind === "refused")
    return { kind: "refused", why: `the copy can't be named ${name}: ${applied.why}` };
  return { kind: "named", text: applied.text };
}
