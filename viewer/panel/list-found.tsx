// What was found in a list, line by line: in the list's door, and beside the panel that was made of it until it is put away.

import type { JSX } from "preact";
import { designName } from "../desk.ts";
import { found, isListOpen, madeOfList } from "./list-state.ts";

export function FoundInList(): JSX.Element | null {
  if (isListOpen.value || found.value.length === 0) return null;
  // Of another design that was opened since it says nothing.
  if (madeOfList.value === null || madeOfList.value !== designName.value) return null;
  return (
    <section class="list-found" aria-label="What was found in the list">
      <p>
        <b>
          {found.value.length === 1 ? "One thing" : `${found.value.length} things`} in the list{" "}
          {found.value.length === 1 ? "is" : "are"} not on the panel as written:
        </b>{" "}
        <button
          type="button"
          onClick={() => {
            isListOpen.value = true;
          }}
        >
          Change the list
        </button>{" "}
        <button
          type="button"
          onClick={() => {
            found.value = [];
          }}
        >
          Put this away
        </button>
      </p>
      <FoundLines />
    </section>
  );
}

/** Nobody reads more of them at once; the rest stands there when these are mended. */
const MOST_SHOWN = 100;

export function FoundLines(): JSX.Element {
  const all = found.value;
  return (
    <>
      <ul>
        {all.slice(0, MOST_SHOWN).map(({ finding, line }) => (
          <li key={`${finding.span.start} ${finding.message}`}>
            line {line}: {finding.message}
          </li>
        ))}
      </ul>
      {all.length > MOST_SHOWN && (
        <p>
          These are the first {MOST_SHOWN} of {all.length}: mend them, and arrange the list again.
        </p>
      )}
    </>
  );
}
