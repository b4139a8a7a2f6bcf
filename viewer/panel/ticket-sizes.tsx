// What the design says of what is selected beside its place: the sizes of a window or a marking, the numbers of a row or a ring and its
// members' legends, each to be written over.

import type { JSX } from "preact";
import type { LegendDesign, PatternDesign } from "../../src/design/panel-design.ts";
import { source } from "../../src/design/source.ts";
import { entryPattern } from "../../src/layout/entry-pattern.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { panel, texts } from "../desk.ts";
import { whenCurrent } from "../when-current.ts";
import { stateNumber } from "./edit-acts.ts";
import { MemberLegends } from "./legend-field.tsx";
import { NumberField } from "./number-field.tsx";
import { open } from "./open-panel.ts";
import { type PatternNumber, patternNumbers, patternTyped } from "./pattern-field-edits.ts";
import { entryPath } from "./set-out-entry.ts";
import type { SheetThing } from "./sheet-things.ts";
import { textIn } from "./ticket-place.tsx";
import { takeEdit } from "./told-edit.ts";

interface SizesProps {
  readonly thing: SheetThing;
  readonly layout: PanelLayout;
}

export function Sizes({ thing, layout }: SizesProps): JSX.Element | null {
  const pattern = entryPattern(thing.entry, layout);
  return (
    <>
      {pattern !== null && <PatternNumbers thing={thing} layout={layout} kind={pattern.kind} />}
      <MarkingSizes thing={thing} layout={layout} />
    </>
  );
}

function PatternNumbers({
  thing: { id, entry },
  layout,
  kind,
}: SizesProps & { readonly kind: PatternDesign["kind"] }): JSX.Element {
  const file = panel.value?.file ?? "";
  const from = source(file, texts.value.get(file) ?? "");
  const path = entryPath(from, entry, layout);
  const legends = legendsOf(entry, layout);
  return (
    <>
      <p>
        {`${kind}: `}
        {(path === null ? [] : patternNumbers(from, path)).map((number) => (
          <NumberField
            key={number.key}
            label={number.key}
            value={number.value}
            change={(value) => statePattern(entry, { ...number, value })}
          />
        ))}
      </p>
      {legends !== null && <MemberLegends entry={entry} legends={legends} picked={id} />}
    </>
  );
}

/** null where members have no words. */
function legendsOf(
  entry: string,
  { design }: PanelLayout,
): readonly (LegendDesign | null)[] | null {
  const component = design.components.find(({ id }) => id === entry);
  if (component?.kind === "pattern") return component.legends;
  const marking = design.markings.find(({ id }) => id === entry);
  return marking?.kind === "legend" ? marking.legends : null;
}

function statePattern(entry: string, number: PatternNumber): void {
  const words = `${entry}: ${number.key} ${number.value.trim()}`;
  whenCurrent(() => {
    const on = open();
    const path = on === null ? null : entryPath(on.from, entry, on.layout);
    if (on !== null && path !== null) takeEdit(patternTyped(on.from, path, number), words);
  });
}

/** Of a window or a marking, those that the design says. */
function MarkingSizes({ thing, layout }: SizesProps): JSX.Element | null {
  const marking = layout.design.markings.find(({ id }) => id === thing.entry);
  if (marking === undefined) return null;
  const { written } = marking;
  return (
    <p>
      {["width", "height", "corner", "gap"].flatMap((key) =>
        written.keys[key] === undefined
          ? []
          : [
              <NumberField
                key={key}
                label={key}
                value={textIn(written.keys[key])}
                change={(typed) => stateNumber({ entry: thing.entry, written }, key, typed)}
              />,
            ],
      )}
    </p>
  );
}
