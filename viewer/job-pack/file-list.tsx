// The list of a pack's files by set-up and kind, with their sizes. Up and down go from file to file.

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { fileGroups, sizeWords } from "./file-groups.ts";
import { chooseFile, chosenFile } from "./pack-state.ts";

export function FileList({ files }: { readonly files: readonly PackFile[] }): JSX.Element {
  const list = useRef<HTMLElement>(null);
  return (
    <nav ref={list} class="file-list" aria-label="Files of the pack">
      {fileGroups(files).map(({ title, files: members }) => (
        <section key={title}>
          <h2>{title}</h2>
          <ul>
            {members.map(({ path, bytes }) => (
              <li key={path}>
                <button
                  type="button"
                  aria-pressed={chosenFile.value?.path === path}
                  onClick={() => chooseFile(path)}
                  onKeyDown={(event) => {
                    const step = STEPS.get(event.key);
                    if (step === undefined || list.current === null) return;
                    event.preventDefault();
                    neighbour(list.current, event.currentTarget, step)?.focus();
                  }}
                >
                  {path} <small>{sizeWords(bytes.length)}</small>
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}

const STEPS: ReadonlyMap<string, number> = new Map([
  ["ArrowDown", 1],
  ["ArrowUp", -1],
]);

const neighbour = (
  list: HTMLElement,
  from: HTMLButtonElement,
  step: number,
): HTMLButtonElement | undefined => {
  const buttons = [...list.querySelectorAll("button")];
  return buttons[buttons.indexOf(from) + step];
};
