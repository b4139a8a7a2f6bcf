// What a component is in space, without its words: it outlives an edit that only moves them along the text.

import type { PlacedBody, PlacedComponent } from "./panel-layout.ts";

/** One object for all of it: whenever any of it is another, or stands elsewhere, its bodies are others. */
export const shapeOf = ({ bodies }: PlacedComponent): readonly PlacedBody[] => bodies;
