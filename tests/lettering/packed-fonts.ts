// The fonts as the library packs them, for the tests of lettering.

import { fontRecords } from "../../scripts/font-records.ts";
import type { FontRecord } from "../../src/lettering/font-record.ts";

export const packedFonts: readonly FontRecord[] = fontRecords();

export const outlineFonts: readonly FontRecord[] = packedFonts.filter(
  (record) => record.format === "woff",
);
