// Components put on, doubled and turned as changes of the panel's text. Pure: the text in, an edit out.

import {
  contentEnd,
  type Edit,
  nodeAt,
  type Path,
  removeKey,
  replaceValue,
  setKey,
} from "../../src/design/edit.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import { type Source, spanIn } from "../../src/design/source.ts";
import { decimal } from "../../src/geometry/number.ts";

export interface NewComponent {
  readonly name: string;
  readonly part: string;
  readonly x: number;
  readonly y: number;
}

/** One line behind the last component, in the unit that the file is written in. */
export function componentAdded(from: Source, { name, part, x, y }: NewComponent): Edit {
  const unit = usualUnit(from.text);
  const value = `{ part: ${part}, at: { x: ${lengthIn(unit, x)}, y: ${lengthIn(unit, y)} } }`;
  const components = nodeAt(from, ["components"]);
  const isEmpty = components === null || components.kind === "empty" || isEmptyMap(components);
  return isEmpty
    ? setKey(from, [], { key: "components", value: `{ ${name}: ${value} }` })
    : setKey(from, ["components"], { key: name, value });
}

const isEmptyMap = (node: NonNullable<ReturnType<typeof nodeAt>>): boolean =>
  node.kind === "map" && node.entries.length === 0;

/** Quarter turns for the key, any angle for the ticket; 0 is not written. `path`: a component, or a legend by itself. */
export function turned(from: Source, path: Path, degrees: number): Edit {
  const whole = ((degrees % FULL_TURN) + FULL_TURN) % FULL_TURN;
  const isWritten = nodeAt(from, [...path, "turn"]) !== null;
  if (whole === 0 && isWritten) return removeKey(from, path, "turn");
  return setKey(from, path, { key: "turn", value: `${decimal(whole, 2)} deg` });
}

const FULL_TURN = 360;

/** The entry's own lines under a new name, right below them. They lie at the same place: what must differ is changed by a further edit. */
export function componentDoubled(from: Source, entry: string, name: string): Edit {
  const components = nodeAt(from, ["components"]);
  const found =
    components?.kind === "map" ? components.entries.find(({ key }) => key === entry) : undefined;
  if (components?.kind !== "map" || found === undefined)
    return { kind: "refused", why: `${entry} is not written under components` };
  const end = contentEnd(from, found.value);
  const body = from.text.slice(found.keySpan.end, end);
  const at = components.flow ? end : lineEnd(from.text, end);
  const line = from.text.lastIndexOf("\n", found.keySpan.start - 1) + 1;
  const lineBreak = from.text.includes("\r\n") ? "\r\n" : "\n";
  const lead = components.flow ? ", " : `${lineBreak}${from.text.slice(line, found.keySpan.start)}`;
  return {
    kind: "edit",
    edit: replaceValue(from, spanIn(from, at, at), `${lead}${name}${body}`),
  };
}

function lineEnd(text: string, at: number): number {
  const feed = text.indexOf("\n", at);
  const end = feed === -1 ? text.length : feed;
  return text[end - 1] === "\r" && end > at ? end - 1 : end;
}
