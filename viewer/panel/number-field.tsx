// A field of the ticket with its label: what the design says, to be written over; taken when it is left or Enter is pressed.

import type { JSX } from "preact";

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
        size={9}
        key={value}
        defaultValue={value}
        onChange={(event) => change(event.currentTarget.value)}
      />
    </label>
  );
}
