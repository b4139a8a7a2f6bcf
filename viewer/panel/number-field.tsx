// A field of the ticket with its label: what the design says, to be written over; taken when it is left or Enter is pressed.

import type { JSX } from "preact";

/** Characters: as much room as what stands in it needs. */
const LEAST = 5;
const MOST = 20;

export function NumberField(props: {
  readonly label: string;
  readonly value: string;
  readonly change: (typed: string) => void;
}): JSX.Element {
  const { label, value, change } = props;
  return (
    <label class="number">
      {label}{" "}
      <input
        type="text"
        size={Math.min(MOST, Math.max(LEAST, value.length + 1))}
        key={value}
        defaultValue={value}
        onChange={(event) => change(event.currentTarget.value)}
      />
    </label>
  );
}
