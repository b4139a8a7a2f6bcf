// The section drawing beside the picture, on demand: the same as in the job pack, drawn again after each change.

import { useSignal, useSignalEffect } from "@preact/signals";
import type { JSX } from "preact";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { askPanel } from "../core-client.ts";
import { panel } from "../desk.ts";
import { isSectionShown, say } from "./board.ts";
import type { ShownDrawing } from "./panel-messages.ts";
import { Shapes } from "./picture-pieces.tsx";

export function SectionPane(): JSX.Element | null {
  const drawing = useSignal<ShownDrawing | null>(null);
  useSignalEffect(() => {
    const name = panel.value?.name;
    if (!isSectionShown.value || name === undefined) return;
    void askPanel({ kind: "section", panel: name }).then((answer) => {
      if (answer.kind === "section") drawing.value = answer.drawing;
      if (answer.kind === "failed") say(`No section: ${answer.why}.`);
    });
  });
  const shown = drawing.value;
  if (!isSectionShown.value || shown === null) return null;
  const { box } = shown;
  return (
    <figure class="section-pane">
      <svg
        viewBox={`${box.minX} ${-box.maxY} ${extentWidth(box)} ${extentHeight(box)}`}
        role="img"
        aria-label={shown.title}
      >
        <Shapes shapes={shown.shapes} />
      </svg>
    </figure>
  );
}
