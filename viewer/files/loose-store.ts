// A design that lies in the page alone: files that were chosen or dropped, or an example. Saving downloads what has
// changed: one file as it is, several in one archive with their folders.

import type { DesignTexts } from "../core-messages.ts";
import { giveFile } from "./give-file.ts";
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
        unread: [],
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
  const encoder = new TextEncoder();
  if (others.length === 0) giveFile(lastName(first.file), encoder.encode(first.after));
  else {
    // Loaded when it is needed: no page shows its first picture with it.
    const { zipSync } = await import("fflate");
    const files = Object.fromEntries(
      changes.map(({ file, after }) => [file, encoder.encode(after)]),
    );
    giveFile("changed-files.zip", zipSync(files));
  }
  return { kind: "saved", how: "Handed to the browser as a download" };
}

const lastName = (path: string): string => path.split("/").at(-1) ?? path;
