// What a blanking panel is called: as it says, or by its number among those of its console.

import type { BlankingUse } from "./console-design.ts";

export const blankingName = ({ as }: Pick<BlankingUse, "as">, index: number): string =>
  as ?? `blanking-${index + 1}`;
