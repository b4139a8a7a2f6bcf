// Opening a design: loose files, a whole folder, a folder that is saved into where the browser can do that, or one of the
// examples that were built in.

import type { JSX } from "preact";
import { ConsoleChoice } from "./console-choice.tsx";
import {
  exampleNames,
  openExample,
  openFolder,
  openPathed,
  type PathedFile,
} from "./files/opening.ts";

export function OpenBar(): JSX.Element {
  return (
    <div class="open-bar">
      <FileChoice words="Open files" folder={false} />
      <FileChoice words="Open a folder" folder={true} />
      <FolderWork />
      {exampleNames.value.length > 0 && <ExampleChoice />}
      <ConsoleChoice />
    </div>
  );
}

interface FileChoiceProps {
  readonly words: string;
  readonly folder: boolean;
}

function FileChoice({ words, folder }: FileChoiceProps): JSX.Element {
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
          if (files.length > 0) void openPathed(files);
        }}
      />
    </label>
  );
}

function FolderWork(): JSX.Element | null {
  const choose = openFolder();
  if (choose === null) return null;
  return (
    <button type="button" class="act" onClick={() => void choose()}>
      Work in a folder
    </button>
  );
}

function ExampleChoice(): JSX.Element {
  return (
    <label>
      Example
      <select onChange={(event) => void openExample(event.currentTarget.value)}>
        {exampleNames.value.map((name) => (
          <option key={name} value={name}>
            {name}
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
