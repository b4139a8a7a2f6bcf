// The other door: a component list, pasted or dropped as CSV, becomes a panel text that is opened in the page.

import { signal } from "@preact/signals";
import type { JSX, RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { askPanel, giveUpQuestions } from "../core-client.ts";
import { openMade } from "../files/opening.ts";
import { useTakesLong } from "../takes-long.ts";
import { FoundLines } from "./list-found.tsx";
import { RestOfList } from "./list-rest.tsx";
import { found, isListOpen, list, madeOfList, restOfList, takeList } from "./list-state.ts";
import { splitList } from "./long-list.ts";
import type { MountChoice } from "./panel-messages.ts";

const panelName = signal("new-panel");
const isLit = signal(false);
const mounts = signal<readonly MountChoice[]>([]);
const mount = signal("console-rail");
/** As it is written; empty: the usual one. */
const width = signal("");
const trouble = signal("");
const isArranging = signal(false);
/** By the person, here: the answer itself says no more than that nobody waits for it. */
let isGivenUp = false;

/** A few lines that show the columns. */
const SAMPLE =
  "part,quantity,legend,group,note\ntoggle-6,2,MAIN; AUX,Power,\nled-5-bezel,1,ON,Power,";
const NAME = /^[a-z][a-z0-9-]*$/;

export function ListDoor(): JSX.Element {
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    field.current?.focus();
    if (mounts.value.length === 0) void askMounts();
  }, []);
  return (
    <section
      class="list-door"
      aria-label="New panel from a list"
      onDragOver={(event) => event.preventDefault()}
      onDrop={dropped}
    >
      <h2>New panel from a list</h2>
      <p>
        Paste a table, or drop a CSV file here. Its first line names the columns: part, quantity,
        legend, group, note.
      </p>
      <ListField field={field} />
      <RestOfList />
      <p class="fields">
        <PanelFields />
        <button type="button" disabled={isArranging.value} onClick={() => void arrange()}>
          Arrange it
        </button>
        <button
          type="button"
          onClick={() => {
            isListOpen.value = false;
          }}
        >
          Close
        </button>
      </p>
      <Outcome />
    </section>
  );
}

function dropped(event: DragEvent): void {
  const [file] = event.dataTransfer?.files ?? [];
  if (file === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  void takeFile(file);
}

function ListField({
  field,
}: {
  readonly field: RefObject<HTMLTextAreaElement | null>;
}): JSX.Element {
  return (
    <label>
      The list
      <textarea
        ref={field}
        rows={8}
        spellcheck={false}
        placeholder={SAMPLE}
        value={list.value}
        onPaste={pasted}
        onInput={(event) => {
          list.value = event.currentTarget.value;
        }}
      />
    </label>
  );
}

/** What is too long for the field never comes into it: setting its lines would stop the page. */
function pasted(event: ClipboardEvent): void {
  const field = event.target;
  if (!(field instanceof HTMLTextAreaElement)) return;
  const text = event.clipboardData?.getData("text/plain") ?? "";
  const { value, selectionStart, selectionEnd } = field;
  const [before, after] = [value.slice(0, selectionStart), value.slice(selectionEnd)];
  const whole = `${before}${text}${after}`;
  if (splitList(whole).rest === "") return;
  event.preventDefault();
  // What replaces all of the field is another list; the rest of the one before goes with it.
  takeList(before === "" && after === "" ? whole : `${whole}${restOfList.value}`);
}

/** What the list does not say of the panel. */
function PanelFields(): JSX.Element {
  return (
    <>
      <label>
        Name of the panel{" "}
        <input
          value={panelName.value}
          onInput={(event) => {
            panelName.value = event.currentTarget.value;
          }}
        />
      </label>
      <MountFields />
      <label>
        <input
          type="checkbox"
          checked={isLit.value}
          onChange={(event) => {
            isLit.value = event.currentTarget.checked;
          }}
        />{" "}
        lit from behind
      </label>
    </>
  );
}

function Outcome(): JSX.Element {
  return (
    <div role="status">
      <Arranging />
      {trouble.value}
      <FoundLines />
    </div>
  );
}

const GIVEN_UP = "Arranging the list was given up: no panel was made, and the list is as it was.";

function Arranging(): JSX.Element | null {
  if (!useTakesLong(isArranging)) return null;
  return (
    <p>
      <progress aria-label="Arranging the list" />{" "}
      <button type="button" onClick={giveUp}>
        Give it up
      </button>
    </p>
  );
}

function giveUp(): void {
  isGivenUp = true;
  giveUpQuestions();
}

/** How the panel is held, and how wide it is where that leaves it open. */
function MountFields(): JSX.Element | null {
  if (mounts.value.length === 0) return null;
  return (
    <>
      <label>
        Mount{" "}
        <select
          value={mount.value}
          onChange={(event) => {
            mount.value = event.currentTarget.value;
          }}
        >
          {mounts.value.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      {leavesWidth() && (
        <label>
          Width in mm{" "}
          <input
            inputMode="decimal"
            size={7}
            placeholder="usual"
            value={width.value}
            onInput={(event) => {
              width.value = event.currentTarget.value;
            }}
          />
        </label>
      )}
    </>
  );
}

const leavesWidth = (): boolean =>
  mounts.value.some(({ id, leavesWidth: isOpen }) => id === mount.value && isOpen);

async function askMounts(): Promise<void> {
  const answer = await askPanel({ kind: "mounts" });
  if (answer.kind === "mounts") mounts.value = answer.mounts;
}

async function takeFile(file: File): Promise<void> {
  takeList(await file.text());
  const name = file.name.replace(/\.[^.]*$/, "").toLowerCase();
  if (NAME.test(name)) panelName.value = name;
}

async function arrange(): Promise<void> {
  const name = panelName.value.trim();
  found.value = [];
  madeOfList.value = null;
  trouble.value = "";
  if (!NAME.test(name)) {
    trouble.value = `"${name}" is no name for a panel: small letters, digits and hyphens.`;
    return;
  }
  const wanted = leavesWidth() ? width.value.trim() : "";
  if (wanted !== "" && !/^\d{1,4}(\.\d{1,3})?$/.test(wanted)) {
    trouble.value = `"${wanted}" is no width in millimetres, such as 160 or 152.4.`;
    return;
  }
  if (isArranging.value) return;
  isArranging.value = true;
  isGivenUp = false;
  const answer = await askPanel({
    kind: "arrange",
    list: list.value,
    name,
    mount: mount.value,
    width: wanted === "" ? null : Number(wanted),
    isLit: isLit.value,
  });
  isArranging.value = false;
  if (answer.kind === "failed") trouble.value = isGivenUp ? GIVEN_UP : answer.why;
  if (answer.kind !== "arranged") return;
  if (answer.text === null) {
    found.value = answer.findings;
    trouble.value = "No panel was made of it.";
    return;
  }
  const { text } = answer;
  const file = `${name}.yaml`;
  if (!(await openMade(file, text))) return;
  found.value = answer.findings;
  madeOfList.value = file;
  isListOpen.value = false;
}
