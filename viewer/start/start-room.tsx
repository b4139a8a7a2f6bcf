// Where to begin: the examples with their pictures, a folder of one's own, a list of bought parts. Shown while nothing is open,
// and on request.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { exampleNames, openExample, openFolder } from "../files/opening.ts";
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

function Tile({ name }: { readonly name: string }): JSX.Element {
  const { title, about } = EXAMPLES[name] ?? { title: name, about: "" };
  return (
    <li>
      <button
        type="button"
        class="tile"
        onClick={async () => {
          await openExample(name);
          beginGuideOnce();
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

/** A list that is pasted or dropped while nothing else could be meant by it. */
function takeLists(): () => void {
  const pasted = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (isList(text)) openWithList(text);
  };
  const dropped = (event: DragEvent): void => {
    const [file] = event.dataTransfer?.files ?? [];
    if (file === undefined || !/\.(csv|tsv|txt)$/i.test(file.name)) return;
    event.preventDefault();
    event.stopPropagation();
    void file.text().then(openWithList);
  };
  document.addEventListener("paste", pasted);
  // Before the page itself, which takes designs alone.
  document.addEventListener("drop", dropped, true);
  return () => {
    document.removeEventListener("paste", pasted);
    document.removeEventListener("drop", dropped, true);
  };
}

/** Its first line names the columns. */
const isList = (text: string): boolean =>
  /^part\s*[,;\t]/i.test(text.trimStart()) && text.includes("\n");
