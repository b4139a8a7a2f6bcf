// A cut file, drawn from what the program's own reader finds in it: the beam's path by process, over the piece as it leaves the
// machine and as it is when it is painted. Kerf and paint are tenths of a millimetre: kerf is shown wider where that is asked.

import type { JSX } from "preact";
import { useMemo, useState } from "preact/hooks";
import { point } from "../../src/geometry/contour.ts";
import { decimal } from "../../src/geometry/number.ts";
import { readDxf } from "../../src/inspection/dxf-reader.ts";
import { readSvg } from "../../src/inspection/svg-reader.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { CutTable } from "./cut-table.tsx";
import { NearView } from "./near-view.tsx";
import type { CutSizes } from "./pack-messages.ts";
import { type DrawnProcess, drawnProcesses } from "./read-lines.ts";

export function CutPreview(props: {
  readonly file: PackFile;
  readonly sizes: CutSizes | null;
}): JSX.Element {
  const { file, sizes } = props;
  const read = useMemo(() => {
    const text = utf8Text(file.bytes);
    return file.kind === "cut-svg" ? readSvg(text, ORIGIN) : readDxf(text, ORIGIN);
  }, [file]);
  const sheet = read.units.sheet ?? null;
  const width = sizes?.width ?? sheet?.maxX ?? 0;
  const height = sizes?.height ?? sheet?.maxY ?? 0;
  const processes = useMemo(() => drawnProcesses(read, height), [read, height]);
  const [hidden, setHidden] = useState<ReadonlySet<Cover>>(new Set(["wide"]));
  const turn = (cover: Cover): void => {
    const next = new Set(hidden);
    if (!next.delete(cover)) next.add(cover);
    setHidden(next);
  };
  return (
    <div class="cut-preview">
      <CoverChoice sizes={sizes} hidden={hidden} turn={turn} />
      <NearView name={file.path} key={`${file.part} ${sizes?.setUp ?? file.path}`}>
        <svg
          class="cut-sheet"
          role="img"
          aria-label={`${file.path}, as it was read back: ${pathWords(processes)}`}
          viewBox={`-4 -4 ${decimal(width + 8, 4)} ${decimal(height + 8, 4)}`}
        >
          <rect class="cut-stock" width={decimal(width, 4)} height={decimal(height, 4)} />
          <Covers sizes={sizes} hidden={hidden} processes={processes} />
        </svg>
      </NearView>
      {sizes !== null && <CutTable features={sizes.features} read={read} />}
      <ul class="cut-words">
        {processes.map(({ process, count, isFilled }) => (
          <li key={`${process} ${isFilled}`}>
            {process}: {count} {isFilled ? "filled" : ""} {count === 1 ? "shape" : "shapes"}
          </li>
        ))}
        {(sizes?.instructions ?? []).map((words) => (
          <li key={words}>{words}</li>
        ))}
        {read.strangers.map((words, index) => (
          <li key={index}>not understood: {words}</li>
        ))}
      </ul>
    </div>
  );
}

function CoverChoice(props: {
  readonly sizes: CutSizes | null;
  readonly hidden: ReadonlySet<Cover>;
  readonly turn: (cover: Cover) => void;
}): JSX.Element {
  const { sizes, hidden, turn } = props;
  return (
    <fieldset class="preview-bar">
      <legend>{kerfWords(sizes)}</legend>
      {coversOf(sizes).map(({ cover, words }) => (
        <label key={cover}>
          <input type="checkbox" checked={!hidden.has(cover)} onChange={() => turn(cover)} />{" "}
          <svg class="cut-key" viewBox="0 0 24 6" aria-hidden="true">
            <path class={`cut-${cover}`} d="M0 3H24" />
          </svg>{" "}
          {words}
        </label>
      ))}
    </fieldset>
  );
}

function Covers(props: {
  readonly sizes: CutSizes | null;
  readonly hidden: ReadonlySet<Cover>;
  readonly processes: readonly DrawnProcess[];
}): JSX.Element {
  const { sizes, hidden, processes } = props;
  const isShown = (cover: Cover): boolean => !hidden.has(cover);
  return (
    <>
      {sizes !== null && isShown("cut") && <path class="cut-cut" d={sizes.cut} />}
      {sizes?.finished != null && isShown("finished") && (
        <path class="cut-finished" d={sizes.finished} />
      )}
      {sizes?.wide != null && isShown("wide") && <path class="cut-wide" d={sizes.wide.line} />}
      {isShown("file") &&
        processes.map(({ process, data, isFilled }) => (
          <path
            key={`${process} ${isFilled}`}
            class={isFilled ? "cut-filled" : "cut-file"}
            d={data}
          />
        ))}
    </>
  );
}

const ORIGIN = point(0, 0);

type Cover = "file" | "cut" | "finished" | "wide";

const coversOf = (
  sizes: CutSizes | null,
): readonly { readonly cover: Cover; readonly words: string }[] => [
  {
    cover: "file",
    words: sizes?.kerf == null ? "in the file" : "in the file: the middle of the beam",
  },
  ...(sizes === null || sizes.cut === ""
    ? []
    : [{ cover: "cut" as const, words: "as it leaves the machine" }]),
  ...(sizes?.finished == null
    ? []
    : [{ cover: "finished" as const, words: "finished, with its paint" }]),
  ...(sizes?.wide == null || sizes.wide.line === ""
    ? []
    : [
        {
          cover: "wide" as const,
          words: `with a kerf ${sizes.wide.times} times as wide`,
        },
      ]),
];

const kerfWords = (sizes: CutSizes | null): string => {
  if (sizes === null) return "Lines";
  const side = sizes.isRearUp ? "rear up, mirrored once" : "front up";
  const kerf =
    sizes.kerf === null
      ? "kerf left to the cutter: the file has the cut sizes"
      : `kerf ${decimal(sizes.kerf, 3)} mm in the file: do not compensate again`;
  return `Set-up ${sizes.setUp}, ${side}; ${kerf}`;
};

const pathWords = (processes: readonly DrawnProcess[]): string =>
  processes.map(({ process, count }) => `${process} ${count}`).join(", ");
