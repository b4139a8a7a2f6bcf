// Lists and papers as they are written: a table of a CSV file, else the text itself. What a design says is set as text, never as
// markup.

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { tableRows } from "./table-rows.ts";

export function TextPreview({ file }: { readonly file: PackFile }): JSX.Element {
  const text = useMemo(() => utf8Text(file.bytes), [file]);
  if (!file.path.endsWith(".csv")) return <pre class="text-preview">{text}</pre>;
  const [head = [], ...rows] = tableRows(text);
  return (
    <div class="table-preview">
      <table>
        <thead>
          <tr>
            {head.map((cell, index) => (
              <th key={index} scope="col">
                {cell}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) => (
                <td key={column}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
