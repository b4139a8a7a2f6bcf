// An item of a list written once more behind the last one, as its author wrote it: its lines where the list has a line each.
// Takes the file, the list's path and the item's number; whatever must differ in the copy is changed by a further edit.

import { contentEnd, type Edit, nodeAt, type Path } from "./edit.ts";
import { replacement, type Source, spanIn } from "./source.ts";
import type { TextNode } from "./text-node.ts";

export const copiedItem = (from: Source, path: Path, index: number): Edit => {
  const list = nodeAt(from, path);
  const item = list?.kind === "list" ? list.items[index] : undefined;
  const last = list?.kind === "list" ? list.items.at(-1) : undefined;
  if (list?.kind !== "list" || item === undefined || last === undefined)
    return { kind: "refused", why: `there is no item ${index + 1} at ${path.join(".")}` };
  const text = from.text.slice(item.span.start, contentEnd(from, item));
  const end = contentEnd(from, last);
  if (list.flow) return inserted(from, end, `, ${text}`);
  const lead = leadOf(from, item);
  if (lead === null) return { kind: "refused", why: "the list's dashes can't be found" };
  const lineBreak = from.text.includes("\r\n") ? "\r\n" : "\n";
  return inserted(from, lineEnd(from.text, end), `${lineBreak}${lead}${text}`);
};

const inserted = (from: Source, at: number, text: string): Edit => ({
  kind: "edit",
  edit: replacement(from, spanIn(from, at, at), text),
});

/** What stands before an item on the line of its dash: indentation, dash, and what is between; null where that is more. */
const leadOf = ({ text }: Source, { span }: TextNode): string | null => {
  const dash = text.lastIndexOf("-", span.start - 1);
  const first = text.lastIndexOf("\n", dash) + 1;
  const lead = text.slice(first, span.start);
  return dash >= 0 && /^[ ]*-\s+$/.test(lead) ? lead : null;
};

/** Before its line break: a comment behind the last value stays on its line. */
const lineEnd = (text: string, at: number): number => {
  const feed = text.indexOf("\n", at);
  const end = feed === -1 ? text.length : feed;
  return text[end - 1] === "\r" && end > at ? end - 1 : end;
};
