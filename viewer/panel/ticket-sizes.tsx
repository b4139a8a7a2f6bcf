// What the design says of what is selected beside its place: the sizes of a window or a marking, the numbers of a row or a ring and its
// members' legends, each to be written over.

import type { JSX } from "preact";
import type { ComponentPattern } from "../../src/design/panel-design.ts";
import { source } from "../../src/design/source.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { panel, texts } from "../desk.ts";
import { whenCurrent } from "../when-current.ts";
import { stateNumber } from "./edit-acts.ts";
import { MemberLegends } from "./legend-field.tsx";
import { NumberField } from "./number-field.tsx";
import { open } from "./open-panel.ts";
import { type PatternNumber, patternNumbers, patternTyped } from "./pattern-field-edits.ts";
import type { SheetThing } from "./sheet-things.ts";
import { textIn } from "./ticket-place.tsx";
import { takeEdit } from "./told-edit.ts";

interface SizesProps {
  readonly thing: SheetThing;
  readonly layout: PanelLayout;
}

export function Sizes({ thing, layout }: SizesProps): JSX.Element | null {
  const component = layout.design.components.find(({ id }) => id === thing.entry);
  return component?.kind === "pattern" ? (
    <PatternNumbers pattern={component} picked={thing.id} />
  ) : (
    <MarkingSizes thing={thing} layout={layout} />
  );
}

function PatternNumbers(props: {
  readonly pattern: ComponentPattern;
  readonly picked: string;
}): JSX.Element {
  const { pattern, picked } = props;
  const file = panel.value?.file ?? "";
  const numbers = patternNumbers(source(file, texts.value.get(file) ?? ""), pattern.id);
  return (
    <>
      <p>
        {`${pattern.pattern.kind}: `}
        {numbers.map((number) => (
          <NumberField
            key={number.key}
            label={number.key}
            value={number.value}
            change={(value) => statePattern(pattern.id, { ...number, value })}
          />
        ))}
      </p>
      <MemberLegends pattern={pattern} picked={picked} />
    </>
  );
}

function statePattern(entry: string, number: PatternNumber): void {
  const words = `${entry}: ${number.key} ${number.value.trim()}`;
  whenCurrent(() => {
    const on = open();
    if (on !== null) takeEdit(patternTyped(on.from, entry, number), words);
  });
}

/** Of a window or a marking, those that the design says. */
function MarkingSizes({ thing, layout }: SizesProps): JSX.Element | null {
  const marking = layout.design.markings.find(({ id }) => id === thing.id);
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
