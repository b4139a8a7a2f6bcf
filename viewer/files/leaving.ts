// Another design in the place of one with unsaved edits: every way of opening one asks here first. An example's edits are kept
// and offered when it is opened again, which is said; of anything else, as of a panel made in the page, the person is asked.

import { effect, signal } from "@preact/signals";
import { handsEmpty } from "../when-current.ts";
import { isExample } from "./examples.ts";
import { store, unsaved } from "./stored-state.ts";

export type Leave =
  | { readonly kind: "stay" }
  /** `news`: what is to be said when the other design is there; null: nothing was left. */
  | { readonly kind: "go"; readonly news: string | null };

export interface Leaving {
  /** What would be opened. */
  readonly next: string;
  readonly answer: (isGoing: boolean) => void;
}

/** The question that stands; null: none does. */
export const leaving = signal<Leaving | null>(null);

export async function leaveFor(next: string): Promise<Leave> {
  leaving.peek()?.answer(false);
  await handsEmpty();
  const left = unsaved.value;
  const now = store.value;
  if (left.length === 0 || now === null) return { kind: "go", news: null };
  if (!isExample(now)) return asked(next);
  const news = `Your edits of ${left.join(", ")} of ${now.name} are kept in this browser. Open ${now.name} again, and they are offered.`;
  return { kind: "go", news };
}

function asked(next: string): Promise<Leave> {
  return new Promise((done) => {
    const stop = effect(() => {
      // Saved meanwhile: nothing is left to ask about, and what is open stays.
      if (unsaved.value.length === 0) queueMicrotask(() => answer(false));
    });
    const answer = (isGoing: boolean): void => {
      stop();
      if (leaving.peek() === standing) leaving.value = null;
      done(isGoing ? { kind: "go", news: null } : { kind: "stay" });
    };
    const standing: Leaving = { next, answer };
    leaving.value = standing;
  });
}
