// Lists and papers as they are written: a table of a CSV file, else the text itself. What a design says is set as text, never as
// markup.

import type { JSX } from "preact";
import { useMemo, useState } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { tableRows } from "./table-rows.ts";

export function TextPreview({ file }: { readonly file: PackFile }): JSX.Element {
  const text = useMemo(() => utf8Text(file.bytes), [file]);
  return file.path.endsWith(".csv") ? (
    <TablePreview key={file.path} text={text} />
  ) : (
    <pre class="text-preview">{text}</pre>
  );
}

/** Rows that a page lays out at once: all 7,719 of a console's inspection stopped it for 2 s. */
const ROWS = 500;

function TablePreview({ text }: { readonly text: string }): JSX.Element {
  const [head = [], ...rows] = useMemo(() => tableRows(text), [text]);
  const [first, setFirst] = useState(0);
  const last = Math.min(first + ROWS, rows.length);
  return (
    <div class="table-preview">
      {rows.length > ROWS && (
        <p class="preview-bar">
          <button
            type="button"
            class="act"
            disabled={first === 0}
            onClick={() => setFirst(first - ROWS)}
          >
            Earlier rows
          </button>
          <button
            type="button"
            class="act"
            disabled={last === rows.length}
            onClick={() => setFirst(last)}
          >
            Later rows
          </button>
          <span role="status">
            Rows {first + 1} to {last} of {rows.length}
          </span>
        </p>
      )}
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
          {rows.slice(first, last).map((row, index) => (
            <tr key={first + index}>
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
