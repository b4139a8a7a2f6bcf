// What is said of a list that is longer than one that is read, beside the field: how many of its lines are in it, and what can be
// done with the others. None of them is let go but by a button.

import type { JSX } from "preact";
import { MOST_LIST_CHARACTERS } from "../../src/design/list-caps.ts";
import { giveFile } from "../files/give-file.ts";
import { list, restOfList, takeList } from "./list-state.ts";
import { lineCount, MOST_LIST_LINES } from "./long-list.ts";

export function RestOfList(): JSX.Element | null {
  const rest = restOfList.value;
  if (rest === "") return null;
  const [inField, others] = [lineCount(list.value), lineCount(rest)];
  return (
    <div class="list-rest" role="status">
      <p>
        {inField} of {inField + others} lines are in the field, and they are what is read: a list
        has at most {MOST_LIST_LINES} lines and {MOST_LIST_CHARACTERS} characters. The other{" "}
        {others} are kept here.
      </p>
      <p>
        <button type="button" onClick={() => takeList(`${list.value}${rest}`)}>
          Fill the field up with them
        </button>{" "}
        <button type="button" onClick={() => giveFile("rest-of-list.csv", bytesOf(rest))}>
          Save the other {others}
        </button>{" "}
        <button
          type="button"
          onClick={() => {
            restOfList.value = "";
          }}
        >
          Let the other {others} go
        </button>
      </p>
    </div>
  );
}

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);
