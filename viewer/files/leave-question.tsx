// Another design in the place of one with unsaved edits. An example's are kept and offered when it is opened again, which
// is said; of anything else, as of a panel made in the page, the person is asked.

import { signal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { exampleNames } from "./opening.ts";
import { store, tell, unsaved } from "./stored-state.ts";

interface Leaving {
  readonly next: string;
  readonly go: () => Promise<void>;
}

const leaving = signal<Leaving | null>(null);

export function leaveFor(next: string, go: () => Promise<void>): void {
  const left = unsaved.value;
  const name = store.value?.name ?? "";
  leaving.value = null;
  if (left.length === 0) void go();
  else if (exampleNames.value.includes(name))
    void go().then(() =>
      tell(
        `Not saved, but kept here: ${left.join(", ")} of ${name}. Open ${name} again, and it is offered.`,
      ),
    );
  else leaving.value = { next, go };
}

export function LeaveQuestion(): JSX.Element | null {
  const now = leaving.value;
  const stay = useRef<HTMLButtonElement>(null);
  useEffect(() => stay.current?.focus(), [now]);
  if (now === null || unsaved.value.length === 0) return null;
  return (
    <div class="decision" role="alertdialog" aria-labelledby="leave-words">
      <span id="leave-words">
        Not saved: {unsaved.value.join(", ")}. Open {now.next} in its place all the same?
      </span>
      <button ref={stay} type="button" class="act" onClick={() => answered(null)}>
        Stay with it
      </button>
      <button type="button" class="act" onClick={() => answered(now)}>
        Open {now.next}
      </button>
    </div>
  );
}

function answered(now: Leaving | null): void {
  leaving.value = null;
  if (now !== null) void now.go();
}
