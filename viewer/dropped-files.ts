// Files and folders dropped on the page, with their paths from the dropped folder: a design whose files name each
// other by path can be dropped whole. A single table of bought parts goes to the list's door.

import { openPathed, type PathedFile } from "./files/opening.ts";
import { openWithList } from "./panel/list-state.ts";

export function takeDrops(): void {
  document.addEventListener("dragover", (event) => event.preventDefault());
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    const [table, ...others] = event.dataTransfer?.files ?? [];
    if (table !== undefined && others.length === 0 && /\.(csv|tsv|txt)$/i.test(table.name)) {
      void table.text().then(openWithList);
      return;
    }
    // The entries must be taken at once: the list is emptied when this function returns.
    const entries = [...(event.dataTransfer?.items ?? [])].flatMap(
      (item) => item.webkitGetAsEntry() ?? [],
    );
    // A drop that does not come from a folder of the system (another program's picture of a file) has no entries.
    const loose = [...(event.dataTransfer?.files ?? [])].map((file) => ({ path: file.name, file }));
    void (entries.length > 0 ? openEntries(entries) : openPathed(loose));
  });
}

async function openEntries(entries: readonly FileSystemEntry[]): Promise<void> {
  const [first] = entries;
  const roots =
    entries.length === 1 && first !== undefined && isFolder(first)
      ? await entriesIn(first)
      : entries;
  const files = (await Promise.all(roots.map((entry) => filesOf(entry, "")))).flat();
  await openPathed(files);
}

async function filesOf(entry: FileSystemEntry, folder: string): Promise<readonly PathedFile[]> {
  const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
  if (isFolder(entry)) {
    const inside = await entriesIn(entry);
    return (await Promise.all(inside.map((each) => filesOf(each, path)))).flat();
  }
  if (!isFile(entry)) return [];
  const file = await new Promise<File>((done, failed) => entry.file(done, failed));
  return [{ path, file }];
}

/** A reader gives a folder's entries in batches; an empty batch is the end. */
async function entriesIn(folder: FileSystemDirectoryEntry): Promise<readonly FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const batch = await new Promise<readonly FileSystemEntry[]>((done, failed) =>
      reader.readEntries(done, failed),
    );
    if (batch.length === 0) return all;
    all.push(...batch);
  }
}

const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory;

const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;
