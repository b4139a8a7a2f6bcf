// The legend of the component that is selected, to be written in the ticket: one step of the history when it is left.

import type { JSX } from "preact";
import { source } from "../../src/design/source.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { isCurrent, panel, texts } from "../desk.ts";
import { say } from "./board.ts";
import { legendTyped } from "./legend-edits.ts";
import { takeEdit } from "./told-edit.ts";

/** Members of a pattern have theirs in one list: they are written in the text. */
export function LegendField(props: {
  readonly entry: string;
  readonly layout: PanelLayout;
}): JSX.Element | null {
  const { entry, layout } = props;
  const component = layout.design.components.find(({ id }) => id === entry);
  if (component?.kind !== "component") return null;
  const said = component.legend?.text ?? "";
  return (
    <label class="number legend-field" title="Shift+Enter begins another line">
      legend{" "}
      <textarea
        rows={said.split("\n").length}
        cols={18}
        spellcheck={false}
        key={`${entry} ${said}`}
        defaultValue={said}
        onKeyDown={(event) => {
          if (event.key !== "Enter" || event.shiftKey) return;
          event.preventDefault();
          event.currentTarget.blur();
        }}
        onBlur={(event) => stateLegend(entry, said, event.currentTarget.value)}
      />
    </label>
  );
}

function stateLegend(entry: string, said: string, typed: string): void {
  const reading = panel.value;
  const text = reading === null ? undefined : texts.value.get(reading.file);
  if (typed === said || reading === null || text === undefined) return;
  if (!isCurrent.value) {
    say("Still reading the last change: a moment.");
    return;
  }
  const now = typed.trim() === "" ? "no legend" : `“${typed.replaceAll("\n", " / ")}”`;
  takeEdit(legendTyped(source(reading.file, text), entry, typed), `${entry}: legend ${now}`);
}
