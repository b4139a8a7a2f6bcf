// The legend of the component that is selected, to be written in the ticket, and those of a pattern's members, a field each:
// one step of the history when a field is left.

import type { JSX } from "preact";
import type { Edit } from "../../src/design/edit.ts";
import type { LegendDesign, MarkingDesign } from "../../src/design/panel-design.ts";
import { pathAt } from "../../src/design/path-at.ts";
import type { Source } from "../../src/design/source.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { panel } from "../desk.ts";
import { whenCurrent } from "../when-current.ts";
import { legendTyped, memberLegendTyped, titleTyped, wordsTyped } from "./legend-edits.ts";
import { open } from "./open-panel.ts";
import { entryPath } from "./set-out-entry.ts";
import { takeEdit } from "./told-edit.ts";

/** Of a single component or a marking; a pattern's members have theirs in one list. */
export function LegendField(props: {
  readonly entry: string;
  readonly layout: PanelLayout;
}): JSX.Element | null {
  const { entry, layout } = props;
  const component = layout.design.components.find(({ id }) => id === entry);
  const marking = layout.design.markings.find(({ id }) => id === entry);
  if (marking !== undefined) return <MarkingLegend marking={marking} />;
  if (component?.kind !== "component") return null;
  return (
    <Words
      label="legend"
      name="legend"
      id={entry}
      said={component.legend?.text ?? ""}
      made={(from, typed) => legendTyped(from, entry, typed)}
    />
  );
}

/** The words of a legend by itself, the title of a border or a bracket; of a pattern's members they stand beside its numbers. */
function MarkingLegend({ marking }: { readonly marking: MarkingDesign }): JSX.Element | null {
  const { id } = marking;
  const isByItself = marking.kind === "legend";
  if (!isByItself && !("legend" in marking)) return null;
  if (isByItself && marking.pattern !== null) return null;
  const legend = isByItself ? marking.legends[0] : marking.legend;
  return (
    <Words
      label={isByItself ? "words" : "legend"}
      name={isByItself ? "words" : "legend"}
      id={id}
      said={legend?.text ?? ""}
      made={(from, typed) => {
        // Where it is written now.
        const now = panel.value?.design.markings.find((one) => one.id === id);
        const path = now === undefined ? null : pathAt(from, now.written.span);
        if (path === null)
          return { kind: "refused", why: `the text does not say where ${id} is written` };
        return isByItself ? wordsTyped(from, path, typed) : titleTyped(from, path, typed);
      }}
    />
  );
}

/** More fields than these hide the ticket: then only the picked member has one. */
const MOST = 12;

export function MemberLegends(props: {
  readonly entry: string;
  /** Of each member, in reading order. */
  readonly legends: readonly (LegendDesign | null)[];
  /** Of the member that is picked. */
  readonly picked: string;
}): JSX.Element {
  const { entry, legends, picked } = props;
  const members = legends.length;
  return (
    <fieldset class="member-legends">
      <legend>legends of its members</legend>
      {legends.map((legend, index) => {
        const member = `${entry}.${index + 1}`;
        return members > MOST && member !== picked ? null : (
          <Words
            key={member}
            label={`${index + 1}`}
            name={`legend of ${member}`}
            id={member}
            said={legend?.text ?? ""}
            made={(from, typed) => {
              const now = panel.value?.layout ?? null;
              const path = now === null ? null : entryPath(from, entry, now);
              return path === null
                ? { kind: "refused", why: `the text does not say where ${entry} is written` }
                : memberLegendTyped(from, path, { index, members, typed });
            }}
          />
        );
      })}
      {members > MOST && <small>Pick another member to write its legend.</small>}
    </fieldset>
  );
}

interface WordsProps {
  readonly label: string;
  /** For those who can't see what it stands beside. */
  readonly name: string;
  /** Whose legend it is. */
  readonly id: string;
  readonly said: string;
  readonly made: (from: Source, typed: string) => Edit;
}

function Words({ label, name, id, said, made }: WordsProps): JSX.Element {
  return (
    <label class="number legend-field" title="Shift+Enter begins another line">
      {label}{" "}
      <textarea
        rows={said.split("\n").length}
        cols={/^\d/.test(label) ? 10 : 18}
        spellcheck={false}
        aria-label={name}
        key={`${id} ${said}`}
        defaultValue={said}
        onKeyDown={(event) => {
          if (event.key !== "Enter" || event.shiftKey) return;
          event.preventDefault();
          event.currentTarget.blur();
        }}
        onBlur={(event) => stateLegend({ id, said, typed: event.currentTarget.value, made })}
      />
    </label>
  );
}

function stateLegend({
  id,
  said,
  typed,
  made,
}: Pick<WordsProps, "id" | "said" | "made"> & { readonly typed: string }): void {
  if (typed === said) return;
  const now = typed.trim() === "" ? "no legend" : `“${typed.replaceAll("\n", " / ")}”`;
  // Words typed one behind the other are all taken, each upon the text before it.
  whenCurrent(() => {
    const on = open();
    if (on !== null) takeEdit(made(on.from, typed), `${id}: legend ${now}`);
  });
}
