// A design that lies in the page alone: files that were chosen or dropped, or an example. Saving downloads what has
// changed: one file as it is, several in one archive with their folders.

import type { DesignTexts } from "../core-messages.ts";
import type { NamedBytes } from "./named-bytes.ts";
import type { SaveOutcome, Store, TextChange } from "./store.ts";

export function looseStore(
  name: string,
  texts: DesignTexts,
  { binaries, troubles }: NamedBytes = { binaries: new Map(), troubles: [] },
): Store {
  return {
    id: `loose ${name} ${[...texts.keys()].toSorted().join(" ")}`,
    name,
    saving: "Download",
    load: async () => ({
      kind: "loaded",
      design: {
        texts,
        binaries,
        locked: new Map(),
        isReadOnly: false,
        troubles,
      },
    }),
    save: download,
    // The person has the file already, and puts it beside the text that is downloaded.
    keepPicture: async () => ({ kind: "kept" }),
    follow: () => () => undefined,
  };
}

async function download(changes: readonly TextChange[]): Promise<SaveOutcome> {
  const [first, ...others] = changes;
  if (first === undefined) return { kind: "saved", how: "Nothing has changed" };
  if (others.length === 0) give(lastName(first.file), new Blob([first.after]));
  else {
    // Loaded when it is needed: no page shows its first picture with it.
    const { zipSync } = await import("fflate");
    const encoder = new TextEncoder();
    const files = Object.fromEntries(
      changes.map(({ file, after }) => [file, encoder.encode(after)]),
    );
    give("changed-files.zip", new Blob([new Uint8Array(zipSync(files))]));
  }
  return { kind: "saved", how: "Handed to the browser as a download" };
}

function give(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}

const KEPT_MS = 60_000;

const lastName = (path: string): string => path.split("/").at(-1) ?? path;
