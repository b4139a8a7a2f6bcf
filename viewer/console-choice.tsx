// Which console of the opened files is looked at, where there is more than one: a folder with variants.

import type { JSX } from "preact";
import { chooseConsole, consoleFile, consoleFiles, texts } from "./desk.ts";

export function ConsoleChoice(): JSX.Element | null {
  const files = consoleFiles.value;
  if (files.length < 2) return null;
  return (
    <label class="console-choice">
      Console
      <select
        value={consoleFile.value ?? ""}
        onChange={(event) => chooseConsole(event.currentTarget.value)}
      >
        {files.map((file) => (
          <option key={file} value={file}>
            {nameOf(file)}
          </option>
        ))}
      </select>
    </label>
  );
}

/** As the design calls it, with its path where that is not at the root. */
function nameOf(file: string): string {
  const text = texts.value.get(file) ?? "";
  const name = /^(?:title|name):[ \t]*["']?([^"'\n#]+)/m.exec(text)?.[1]?.trim() ?? file;
  return file.includes("/") ? `${name} (${file})` : name;
}
