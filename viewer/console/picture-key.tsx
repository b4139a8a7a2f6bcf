// What the lines round the operator mean, in words under the picture: which ring is which reach, what the sight
// lines run between. Only for what is shown.

import type { JSX } from "preact";
import { decimal } from "../../src/geometry/number.ts";
import type { SceneOperator } from "./console-messages.ts";
import { look, scene } from "./console-state.ts";
import type { Look } from "./look.ts";
import { INKS } from "./picture-surroundings.ts";

export function PictureKey(): JSX.Element | null {
  const operator = scene.value?.operator ?? null;
  const rows = operator === null ? [] : rowsOf(operator, look.value);
  if (rows.length === 0) return null;
  const light = look.value.dark ? "night" : "day";
  return (
    <ul class="console-key" aria-label="What the lines mean">
      {rows.map(({ ink, words }) => (
        <li key={ink} style={{ "--ring": INKS[ink][light] }}>
          {words}
        </li>
      ))}
    </ul>
  );
}

interface KeyRow {
  readonly ink: "functional" | "extended" | "sight";
  readonly words: string;
}

const rowsOf = (
  { hand, functional, extended }: SceneOperator,
  { showReach, showSight }: Look,
): readonly KeyRow[] => [
  ...(showReach
    ? [
        {
          ink: "functional" as const,
          words: `Inner ring: reach of the ${hand} hand without leaning, ${decimal(functional, 0)} mm from the shoulder`,
        },
        {
          ink: "extended" as const,
          words: `Outer ring: leaning forward, ${decimal(extended, 0)} mm`,
        },
      ]
    : []),
  ...(showSight
    ? [{ ink: "sight" as const, words: "Sight lines: from the eyes to the middle of each bay" }]
    : []),
];
