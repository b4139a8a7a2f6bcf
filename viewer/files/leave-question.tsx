// The question before unsaved edits make room for another design. It has the keyboard until it is answered, Escape stays, and
// who stays is again where he was.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { type Leaving, leaving } from "./leaving.ts";
import { unsaved } from "./stored-state.ts";

export function LeaveQuestion(): JSX.Element | null {
  const now = leaving.value;
  return now === null ? null : <Question key={now.next} now={now} />;
}

function Question({ now }: { readonly now: Leaving }): JSX.Element {
  const stay = useRef<HTMLButtonElement>(null);
  const before = useRef<Element | null>(null);
  useEffect(() => {
    before.current = document.activeElement;
    stay.current?.focus();
  }, []);
  const staying = (): void => {
    now.answer(false);
    if (before.current instanceof HTMLElement) before.current.focus();
  };
  return (
    <div
      class="decision"
      role="alertdialog"
      aria-labelledby="leave-words"
      onKeyDown={(event) => {
        if (event.key === "Escape") staying();
      }}
    >
      <span id="leave-words">
        Not saved: {unsaved.value.join(", ")}. Open {now.next} in its place all the same?
      </span>
      <button ref={stay} type="button" class="act" onClick={staying}>
        Stay with it
      </button>
      <button type="button" class="act" onClick={() => now.answer(true)}>
        Open {now.next}
      </button>
    </div>
  );
}
