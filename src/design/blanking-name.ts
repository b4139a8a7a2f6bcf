// What a blanking panel is called: as it says, or by its number among those of its console's text, the unreadable ones counted.

import type { BlankingUse } from "./console-design.ts";

export const blankingName = ({ as, number }: Pick<BlankingUse, "as" | "number">): string =>
  as ?? `blanking-${number}`;
