// Opening a design: loose files, a whole folder, a folder that is saved into where the browser can do that, or one of the
// examples that were built in. In one menu, so that the drawing has the room.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { ConsoleChoice } from "./console-choice.tsx";
import { exampleNames } from "./files/examples.ts";
import { LeaveQuestion } from "./files/leave-question.tsx";
import { openExample, openFolder, openPathed, type PathedFile } from "./files/opening.ts";
import { store } from "./files/stored-state.ts";
import { isListOpen } from "./panel/list-state.ts";
import { isMenuOpen } from "./start/menu-state.ts";
import { closeStart, openStart } from "./start/start-state.ts";

export function OpenBar(): JSX.Element {
  return (
    <div class="open-bar">
      <OpenMenu />
      {exampleNames.value.length > 0 && <ExampleChoice />}
      <ConsoleChoice />
      <LeaveQuestion />
    </div>
  );
}

function OpenMenu(): JSX.Element {
  const menu = useRef<HTMLDetailsElement>(null);
  const shut = (): void => {
    if (menu.current !== null) menu.current.open = false;
  };
  useEffect(() => {
    // What is done elsewhere closes it, and so does what is chosen in it.
    const outside = ({ target }: Event): void => {
      if (!(target instanceof Node && menu.current?.contains(target))) shut();
    };
    // Wherever the focus is.
    const escaped = ({ key }: KeyboardEvent): void => {
      if (key !== "Escape" || menu.current?.open !== true) return;
      shut();
      menu.current.querySelector("summary")?.focus();
    };
    document.addEventListener("pointerdown", outside);
    document.addEventListener("keydown", escaped);
    return () => {
      document.removeEventListener("pointerdown", outside);
      document.removeEventListener("keydown", escaped);
    };
  }, []);
  return (
    <details
      ref={menu}
      class="open-menu"
      name="page-menu"
      onToggle={(event) => {
        isMenuOpen.value = event.currentTarget.open;
      }}
    >
      <summary class="act">Open</summary>
      <div class="menu">
        <FileChoice words="Open files" folder={false} done={shut} />
        <FileChoice words="Open a folder, download what changes" folder={true} done={shut} />
        <FolderWork done={shut} />
        <MenuAct
          words="New panel from a list"
          act={() => {
            shut();
            closeStart();
            isListOpen.value = true;
          }}
        />
        {exampleNames.value.length > 0 && (
          <MenuAct
            words="Where to begin"
            act={() => {
              shut();
              openStart();
            }}
          />
        )}
      </div>
    </details>
  );
}

interface MenuActProps {
  readonly words: string;
  readonly act: () => void;
}

const MenuAct = ({ words, act }: MenuActProps): JSX.Element => (
  <button type="button" class="act" onClick={act}>
    {words}
  </button>
);

interface FileChoiceProps {
  readonly words: string;
  readonly folder: boolean;
  readonly done: () => void;
}

function FileChoice({ words, folder, done }: FileChoiceProps): JSX.Element {
  return (
    <label class="file-choice">
      {words}
      <input
        type="file"
        multiple
        accept={folder ? undefined : ".yaml,.yml,.stl,.jpg,.jpeg,.png,.webp"}
        {...(folder ? { webkitdirectory: true } : {})}
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])].map(pathed);
          done();
          if (files.length > 0) void openPathed(files);
        }}
      />
    </label>
  );
}

function FolderWork({ done }: { readonly done: () => void }): JSX.Element | null {
  const choose = openFolder();
  if (choose === null) return null;
  return (
    <MenuAct
      words="Open a folder and save into it"
      act={() => {
        done();
        void choose();
      }}
    />
  );
}

function ExampleChoice(): JSX.Element {
  const names = exampleNames.value;
  const name = store.value?.name ?? "";
  const open = names.includes(name) ? name : "";
  return (
    <label class="example-choice">
      Example
      <select
        value={open}
        onChange={(event) => {
          const next = event.currentTarget.value;
          void openExample(next);
          // It names what is open until that has changed.
          event.currentTarget.value = open;
        }}
      >
        {open === "" && <option value="">choose one</option>}
        {names.map((each) => (
          <option key={each} value={each}>
            {each}
          </option>
        ))}
      </select>
    </label>
  );
}

/** A folder chosen whole gives paths that begin with its name; loose files give names. */
const pathed = (file: File): PathedFile => {
  const inFolder = file.webkitRelativePath.split("/").slice(1).join("/");
  return { path: inFolder === "" ? file.name : inFolder, file };
};
