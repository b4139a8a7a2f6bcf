// Snapshots by name: keep one, see how it differs from what is on the desk, bring it back, remove it.

import { useSignal } from "@preact/signals";
import type { JSX } from "preact";
import { texts } from "../desk.ts";
import type { Content } from "../history.ts";
import { giveFile } from "./give-file.ts";
import { localTime } from "./local-time.ts";
import { heldWords } from "./snapshot-held-words.ts";
import { MOST_SNAPSHOT_BYTES } from "./snapshot-plan.ts";
import { bringBack, removeSnapshot, type Snapshot, snapshots, takeSnapshot } from "./snapshots.ts";
import { refuse, store } from "./stored-state.ts";
import { TextDifferences } from "./text-differences.tsx";

export function SnapshotList(): JSX.Element | null {
  const isOpen = useSignal(false);
  if (store.value === null) return null;
  return (
    <section class="snapshots">
      <button
        type="button"
        class="act"
        aria-expanded={isOpen.value}
        onClick={() => {
          isOpen.value = !isOpen.value;
        }}
      >
        {`Snapshots (${snapshots.value.length})`}
      </button>
      {isOpen.value && <OpenList />}
    </section>
  );
}

function OpenList(): JSX.Element {
  const name = useSignal("");
  return (
    <div>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const given = name.value.trim();
          if (given !== "") void takeSnapshot(given);
          name.value = "";
        }}
      >
        <label>
          Name
          <input
            type="text"
            value={name.value}
            onInput={(event) => {
              name.value = event.currentTarget.value;
            }}
          />
        </label>
        <button type="submit" class="act">
          Keep a snapshot
        </button>
      </form>
      <p>
        Kept in this browser, not in the design's folder: the texts, and the shapes and photographs
        that they name, {MOST_SNAPSHOT_BYTES / 1_000_000} MB of them at most for all snapshots.
      </p>
      <ul>
        {snapshots.value.map((snapshot) => (
          <SnapshotItem key={snapshot.key} snapshot={snapshot} />
        ))}
      </ul>
    </div>
  );
}

function SnapshotItem({ snapshot }: { readonly snapshot: Snapshot }): JSX.Element {
  const isCompared = useSignal(false);
  const { name, when } = snapshot;
  return (
    <li>
      <b>{name}</b> <small>{localTime(when)}</small> <small>{heldWords(snapshot)}</small>
      <div>
        <button
          type="button"
          class="act"
          aria-label={`Compare: ${name}`}
          aria-expanded={isCompared.value}
          onClick={() => {
            isCompared.value = !isCompared.value;
          }}
        >
          Compare
        </button>
        <button
          type="button"
          class="act"
          aria-label={`Bring back: ${name}`}
          onClick={() => void bringBack(snapshot)}
        >
          Bring back
        </button>
        <button
          type="button"
          class="act"
          aria-label={`Remove: ${name}`}
          onClick={() => void removeSnapshot(snapshot)}
        >
          Remove
        </button>
      </div>
      {isCompared.value && <Comparison snapshot={snapshot} />}
    </li>
  );
}

const saveContent = async (path: string, content: Content): Promise<void> => {
  const { contentAt } = await import("./snapshot-bytes.ts");
  const bytes = await contentAt(content).catch(() => null);
  if (bytes === null) refuse(`${path} is not kept any more`);
  else giveFile(path.split("/").at(-1) ?? path, bytes);
};

function Comparison({ snapshot }: { readonly snapshot: Snapshot }): JSX.Element {
  const files = [...new Set([...snapshot.texts.keys(), ...texts.value.keys()])]
    .toSorted()
    .filter((file) => snapshot.texts.get(file) !== texts.value.get(file));
  const held = [...(snapshot.files ?? [])];
  return (
    <div class="both">
      {files.length === 0 && <p>No text differs from what is on the desk.</p>}
      {held.map(([path, content]) => (
        <button
          key={path}
          type="button"
          class="act"
          onClick={() => void saveContent(path, content)}
        >
          {`Save ${path} of the snapshot`}
        </button>
      ))}
      {files.map((file) => (
        <TextDifferences
          key={file}
          title={`${file}, since the snapshot`}
          before={snapshot.texts.get(file) ?? null}
          after={texts.value.get(file) ?? null}
        />
      ))}
    </div>
  );
}
