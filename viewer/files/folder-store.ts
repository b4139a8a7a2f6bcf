// A design in a folder of this machine that the person has let the page work in (WICG File System Access). Read whole,
// saved back file by file, each only where the text stands that the page knows; changes outside are found by looking.

import { MOST_TEXT_BYTES } from "../../src/design/file-caps.ts";
import { binariesOf } from "../../src/design/includes.ts";
import { reasonWords } from "../../src/diagnostics/reason-words.ts";
import { isSameBytes } from "../../src/pack/same-bytes.ts";
import { namedBytes } from "./named-bytes.ts";
import type {
  Following,
  KeptPicture,
  LoadOutcome,
  SaveOutcome,
  Store,
  TextChange,
} from "./store.ts";

export function folderStore(folder: FileSystemDirectoryHandle): Store {
  return {
    id: `folder ${folder.name}`,
    name: folder.name,
    saving: "Save",
    load: () => load(folder),
    save: (changes) => save(folder, changes),
    keepPicture: (path, bytes) => keepPicture(folder, path, bytes),
    follow: (following) => follow(folder, following),
  };
}

/** The same bounds as the command line has: a stray choice of a whole disk ends soon. */
const MOST_FILES = 500;
const MOST_LEVELS = 12;

interface Found {
  readonly path: string;
  readonly file: File;
}

async function load(folder: FileSystemDirectoryHandle): Promise<LoadOutcome> {
  try {
    const found: Found[] = [];
    await gather(folder, "", found);
    const texts = await Promise.all(found.filter(isText).map(textOf));
    const pictures = await picturesOf(folder, texts);
    const shapes = await namedBytes([...found.filter((each) => !isText(each)), ...pictures]);
    return {
      kind: "loaded",
      design: {
        texts: new Map(texts.flatMap(({ path, text }) => (text === null ? [] : [[path, text]]))),
        unread: texts.filter(({ text }) => text === null).map(({ path }) => path),
        binaries: shapes.binaries,
        locked: new Map(),
        isReadOnly: false,
        troubles: [
          ...shapes.troubles,
          ...texts
            .filter(({ text }) => text === null)
            .map(
              ({ path }) => `${path} is not UTF-8 text, or has more than ${MOST_TEXT_BYTES} bytes`,
            ),
          ...(found.length < MOST_FILES
            ? []
            : [`${folder.name} holds more than ${MOST_FILES} files; what follows was not read`]),
        ],
      },
    };
  } catch (reason) {
    return { kind: "trouble", why: `the folder ${folder.name} can't be read: ${wordsOf(reason)}` };
  }
}

/** Photographs that the texts name: of all the pictures in a folder only these are read. */
async function picturesOf(
  folder: FileSystemDirectoryHandle,
  texts: readonly { readonly path: string; readonly text: string | null }[],
): Promise<readonly Found[]> {
  const named = texts.flatMap(({ path, text }) => (text === null ? [] : binariesOf(path, text)));
  const pictures = [...new Set(named)].filter((path) => !/\.stl$/i.test(path));
  const found = await Promise.all(pictures.map((path) => fileAt(folder, path)));
  return found.flatMap((file, index) =>
    file === null ? [] : [{ path: pictures[index] ?? "", file }],
  );
}

const isText = ({ path }: Found): boolean => /\.ya?ml$/i.test(path);

async function gather(
  folder: FileSystemDirectoryHandle,
  above: string,
  found: Found[],
): Promise<void> {
  for await (const entry of folder.values()) {
    if (found.length >= MOST_FILES) return;
    if (entry.name.startsWith(".") || entry.name === "node_modules") continue;
    const path = `${above}${entry.name}`;
    if (entry.kind === "file" && /\.(ya?ml|stl)$/i.test(path)) {
      const handle = await folder.getFileHandle(entry.name);
      found.push({ path, file: await handle.getFile() });
    }
    if (entry.kind === "directory" && path.split("/").length < MOST_LEVELS)
      await gather(await folder.getDirectoryHandle(entry.name), `${path}/`, found);
  }
}

const textOf = async ({
  path,
  file,
}: Found): Promise<{ readonly path: string; readonly text: string | null }> => ({
  path,
  text: file.size > MOST_TEXT_BYTES ? null : decoded(await file.arrayBuffer()),
});

/** With the mark at its beginning, where it has one: offsets count it, and saving keeps it. null: it is no UTF-8. */
const decoded = (bytes: ArrayBuffer): string | null => {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
};

async function save(
  folder: FileSystemDirectoryHandle,
  changes: readonly TextChange[],
): Promise<SaveOutcome> {
  try {
    const other = new Map<string, string | null>();
    for (const { file, before } of changes) {
      const there = await fileAt(folder, file);
      const text = there === null ? null : decoded(await there.arrayBuffer());
      if (there !== null && text === null)
        return { kind: "refused", why: `${file} is not UTF-8 text` };
      if (text !== before) other.set(file, text);
    }
    if (other.size > 0) return { kind: "changed-outside", files: other };
    for (const { file, before, after } of changes)
      await write(folder, file, { content: after, isNew: before === null });
    return { kind: "saved", how: "Saved" };
  } catch (reason) {
    return { kind: "refused", why: `${folder.name} can't be written: ${wordsOf(reason)}` };
  }
}

async function keepPicture(
  folder: FileSystemDirectoryHandle,
  path: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<KeptPicture> {
  try {
    const there = await fileAt(folder, path);
    if (there !== null)
      return isSameBytes(new Uint8Array(await there.arrayBuffer()), bytes)
        ? { kind: "kept" }
        : { kind: "refused", why: `another picture is called ${path}; give this one another name` };
    await write(folder, path, { content: bytes, isNew: true });
    return { kind: "kept" };
  } catch (reason) {
    return { kind: "refused", why: `${folder.name} can't be written: ${wordsOf(reason)}` };
  }
}

/** Put in the file's place when it is closed, whole; of a new one that can't be written no empty file stays. */
async function write(
  folder: FileSystemDirectoryHandle,
  path: string,
  {
    content,
    isNew,
  }: { readonly content: string | Uint8Array<ArrayBuffer>; readonly isNew: boolean },
): Promise<void> {
  const { within, name } = await placeOf(folder, path, true);
  const handle = await within.getFileHandle(name, { create: true });
  try {
    const writing = await handle.createWritable();
    await writing.write(content);
    await writing.close();
  } catch (reason) {
    if (isNew) await within.removeEntry(name).catch(() => undefined);
    throw reason;
  }
}

/** null where there is none. */
async function fileAt(folder: FileSystemDirectoryHandle, path: string): Promise<File | null> {
  try {
    const { within, name } = await placeOf(folder, path, false);
    return await (await within.getFileHandle(name)).getFile();
  } catch (reason) {
    if (reason instanceof DOMException && reason.name === "NotFoundError") return null;
    throw reason;
  }
}

async function placeOf(
  folder: FileSystemDirectoryHandle,
  path: string,
  create: boolean,
): Promise<{ readonly within: FileSystemDirectoryHandle; readonly name: string }> {
  const names = path.split("/");
  let within = folder;
  for (const name of names.slice(0, -1)) within = await within.getDirectoryHandle(name, { create });
  return { within, name: names.at(-1) ?? path };
}

/** How often the folder is looked at, ms. */
const LOOK_MS = 3000;

function follow(folder: FileSystemDirectoryHandle, { changed, lost }: Following): () => void {
  // The first look is told of as well: the folder may have changed since it was read.
  let seen: string | null = null;
  const timer = setInterval(async () => {
    try {
      const found: Found[] = [];
      await gather(folder, "", found);
      const now = found
        .map(({ path, file }) => `${path} ${file.lastModified} ${file.size}`)
        .toSorted()
        .join("\n");
      if (now !== seen) changed();
      seen = now;
      lost(null);
    } catch (reason) {
      lost(`the folder ${folder.name} can't be read: ${wordsOf(reason)}`);
    }
  }, LOOK_MS);
  return () => clearInterval(timer);
}

const wordsOf = (reason: unknown): string =>
  reason instanceof DOMException && reason.name === "NotAllowedError"
    ? "the browser does not allow it"
    : reasonWords(reason);
