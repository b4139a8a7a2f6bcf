// Whether two sets of shapes and pictures are alike: the same paths with the same bytes, or with none where a file is too large.

import { isSameBytes } from "../src/pack/same-bytes.ts";
import type { DesignBinaries } from "./core-messages.ts";

export const isSameBinaries = (before: DesignBinaries, now: DesignBinaries): boolean =>
  before.size === now.size &&
  [...now].every(([path, bytes]) => {
    const old = before.get(path);
    if (old === undefined || old === null || bytes === null) return old === bytes;
    return isSameBytes(old, bytes);
  });
