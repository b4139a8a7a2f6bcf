// Of which revision and day a design is, in words.

import type { ConsoleDesign } from "../design/console-design.ts";

/** `revision B, dated 2026-10-02`. */
export const revisionWords = ({
  revision,
  dated,
}: Pick<ConsoleDesign, "revision" | "dated">): string =>
  `revision ${revision}${dated === null ? "" : `, dated ${dated}`}`;
