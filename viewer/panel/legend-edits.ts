// The legend of a component as it is typed, each line a line of it: a change of the panel's text. What is typed stays text,
// whatever it looks like. Pure: the text in, an edit out.

import { type Edit, nodeAt, removeKey, setKey } from "../../src/design/edit.ts";
import { quoted } from "../../src/design/quoted.ts";
import type { Source } from "../../src/design/source.ts";

/** Nothing typed takes the legend off, with all that is said of it. */
export function legendTyped(from: Source, entry: string, typed: string): Edit {
  const path = ["components", entry];
  const legend = nodeAt(from, [...path, "legend"]);
  if (typed.trim() === "")
    return legend === null
      ? { kind: "refused", why: `${entry} has no legend` }
      : removeKey(from, path, "legend");
  const lines = typed.split(/\r?\n/);
  if (lines.some((line) => line.trim() === ""))
    return { kind: "refused", why: "a line of the legend has no words" };
  const value = lines.length === 1 ? quoted(typed) : `[${lines.map(quoted).join(", ")}]`;
  return legend?.kind === "map"
    ? setKey(from, [...path, "legend"], { key: "text", value })
    : setKey(from, path, { key: "legend", value });
}
