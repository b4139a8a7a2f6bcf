// Where two texts differ, line by line: what goes and what comes, told by words and signs as well as by colour.

import type { JSX } from "preact";
import { differences } from "./line-merge.ts";

interface TextDifferencesProps {
  readonly title: string;
  /** null: there is no such file. */
  readonly before: string | null;
  readonly after: string | null;
}

export function TextDifferences({ title, before, after }: TextDifferencesProps): JSX.Element {
  const found = differences(before ?? "", after ?? "");
  return (
    <figure class="differences">
      <figcaption>{title}</figcaption>
      {after === null && <p>The file is not there.</p>}
      {after !== null && found.length === 0 && <p>Nothing differs.</p>}
      {after !== null &&
        found.map((each) => (
          <pre key={each.line}>
            <b>line {each.line}</b>
            {"\n"}
            {each.before.length > 0 && <del>{signed("−", each.before)}</del>}
            {each.after.length > 0 && <ins>{signed("+", each.after)}</ins>}
          </pre>
        ))}
    </figure>
  );
}

const signed = (sign: string, lines: readonly string[]): string =>
  lines.map((line) => `${sign} ${line}\n`).join("");
