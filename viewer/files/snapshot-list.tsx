// Snapshots by name: keep one, see how it differs from what is on the desk, bring it back, remove it.

import { useSignal } from "@preact/signals";
import type { JSX } from "preact";
import { texts } from "../desk.ts";
import { bringBack, removeSnapshot, type Snapshot, snapshots, takeSnapshot } from "./snapshots.ts";
import { store } from "./stored-state.ts";
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
        Kept in this browser, not in the design's folder: the texts alone, without shapes and
        photographs.
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
      <b>{name}</b> <small>{new Date(when).toLocaleString()}</small>
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
          onClick={() => bringBack(snapshot)}
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

function Comparison({ snapshot }: { readonly snapshot: Snapshot }): JSX.Element {
  const files = [...new Set([...snapshot.texts.keys(), ...texts.value.keys()])]
    .toSorted()
    .filter((file) => snapshot.texts.get(file) !== texts.value.get(file));
  if (files.length === 0) return <p>Nothing differs from what is on the desk.</p>;
  return (
    <div class="both">
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
