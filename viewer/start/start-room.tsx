// Where to begin: the examples with their pictures, a folder of one's own, a list of bought parts. Shown on request, and where
// there is nothing that could be opened.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { exampleNames } from "../files/examples.ts";
import { openExample, openFolder } from "../files/opening.ts";
import { dismiss, waitingFolder } from "../files/recovery.ts";
import { store } from "../files/stored-state.ts";
import { isListOpen, openWithList } from "../panel/list-state.ts";
import { beginGuideOnce, closeStart } from "./start-state.ts";
import "./start.css";

interface Example {
  readonly title: string;
  readonly about: string;
}

/** In the order in which they are shown; an example that is not here comes last, under its name. */
const EXAMPLES: Readonly<Record<string, Example>> = {
  "tug-trainer": {
    title: "Harbour tug trainer",
    about:
      "The demo: a wheelhouse console of a dozen lit panels on two bays, with its frame and its operator.",
  },
  "first-panel": {
    title: "A first panel",
    about: "A pump and its valves on one sheet of aluminium, made from a list of ten lines.",
  },
  "rack-panel": {
    title: "A rack panel",
    about: "19 inches wide, 3 units high, for a small studio.",
  },
};

export function StartRoom(): JSX.Element {
  const room = useRef<HTMLElement>(null);
  useEffect(() => takeLists(), []);
  const names = [
    ...Object.keys(EXAMPLES).filter((name) => exampleNames.value.includes(name)),
    ...exampleNames.value.filter((name) => !Object.hasOwn(EXAMPLES, name)),
  ];
  return (
    <section class="start" ref={room} aria-label="Where to begin">
      <h2>Panels and consoles from a plain text: look at one, or begin your own.</h2>
      <WaitingFolder />
      <ul class="tiles">
        {names.map((name) => (
          <Tile key={name} name={name} />
        ))}
      </ul>
      <div class="own">
        <p>
          <button
            type="button"
            class="act"
            onClick={() => {
              isListOpen.value = true;
            }}
          >
            New panel from a list
          </button>{" "}
          Paste or drop the table of what you bought, here too: part, quantity, legend.
        </p>
        <FolderWords />
        {store.value !== null && (
          <p>
            <button type="button" class="act" onClick={closeStart}>
              Back to {store.value.name}
            </button>
          </p>
        )}
      </div>
    </section>
  );
}

/** Edits that only the person can bring back: no page may open a folder by itself. */
function WaitingFolder(): JSX.Element | null {
  const copy = waitingFolder.value;
  if (copy === null) return null;
  return (
    <p class="decision" role="status">
      Edits in the folder {copy.name} were not saved: open it again, and they are offered.{" "}
      <button type="button" class="act" onClick={() => void dismiss(copy)}>
        Throw them away
      </button>
    </p>
  );
}

function Tile({ name }: { readonly name: string }): JSX.Element {
  const { title, about } = EXAMPLES[name] ?? { title: name, about: "" };
  return (
    <li>
      <button
        type="button"
        class="tile"
        onClick={async () => {
          if (await openExample(name)) beginGuideOnce();
        }}
      >
        <img src={`pictures/${name}.svg`} alt="" width={320} height={180} />
        <b>{title}</b>
        <span>{about}</span>
      </button>
    </li>
  );
}

/** A folder that is saved into, where the browser can do that; else files are opened and handed back as downloads. */
function FolderWords(): JSX.Element {
  const choose = openFolder();
  return choose === null ? (
    <p>
      “Open” above takes the files or the folder of a design; changed files are handed back as
      downloads. So does dropping them on this page.
    </p>
  ) : (
    <p>
      <button type="button" class="act" onClick={() => void choose()}>
        Open a folder and save into it
      </button>{" "}
      Or drop a design's files on this page.
    </p>
  );
}

/** A list that is pasted while nothing else could be meant by it. */
function takeLists(): () => void {
  const pasted = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (isList(text)) openWithList(text);
  };
  document.addEventListener("paste", pasted);
  return () => document.removeEventListener("paste", pasted);
}

/** Its first line names the columns. */
const isList = (text: string): boolean =>
  /^part\s*[,;\t]/i.test(text.trimStart()) && text.includes("\n");
