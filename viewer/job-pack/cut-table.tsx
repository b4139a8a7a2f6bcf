// The sizes of a set-up's cuts in numbers, where they are asked for.

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { ReadFile } from "../../src/inspection/read-file.ts";
import { cutRows } from "./cut-rows.ts";
import type { CutFeature } from "./pack-messages.ts";

export function CutTable(props: {
  readonly features: readonly CutFeature[];
  readonly read: ReadFile;
}): JSX.Element | null {
  const { features, read } = props;
  const rows = useMemo(() => cutRows(features, read), [features, read]);
  if (rows.length === 0) return null;
  const hasFinished = rows.some(({ finished }) => finished !== null);
  return (
    <details class="cut-table">
      <summary>
        {rows.length === 1 ? "Size of the cut" : `Sizes of ${rows.length} cuts`}, in mm
      </summary>
      <div class="table-preview">
        <table>
          <thead>
            <tr>
              <th scope="col">cut</th>
              <th scope="col">in the file</th>
              <th scope="col">as it leaves the machine</th>
              {hasFinished && <th scope="col">finished</th>}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ feature, file, cut, finished }) => (
              <tr key={feature}>
                <td>{feature}</td>
                <td>{file ?? "not found"}</td>
                <td>{cut}</td>
                {hasFinished && <td>{finished ?? ""}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
