// What brings a drawing or a solid nearer without a wheel or keys: three buttons beside its frame.

import type { JSX } from "preact";

export function NearButtons(props: {
  readonly isWhole: boolean;
  readonly isNearest: boolean;
  readonly go: (direction: -1 | 0 | 1) => void;
}): JSX.Element {
  const { isWhole, isNearest: isAtEnd, go } = props;
  return (
    <p class="near-bar">
      <button type="button" class="act" aria-disabled={isAtEnd} onClick={() => go(1)}>
        Nearer
      </button>
      <button type="button" class="act" aria-disabled={isWhole} onClick={() => go(-1)}>
        Farther
      </button>
      <button type="button" class="act" aria-disabled={isWhole} onClick={() => go(0)}>
        All of it
      </button>
    </p>
  );
}
