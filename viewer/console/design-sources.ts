// What the console's worker reads a design from: the texts as they are on the desk, and what they name that is no text.

import type { DesignSources, DesignTexts } from "../core-messages.ts";

/** Shapes of obstacles from files are not handed on yet: such an obstacle is left out of the picture with its finding. */
export const designSources = (texts: DesignTexts): DesignSources => ({
  texts,
  binaries: new Map(),
});
