// Which of the opened texts a reading begins with: the consoles, or where there is none every panel. A text whose kind
// can't be told is begun with too, so that the program says what is wrong with it.

import type { DesignTexts } from "./core-messages.ts";

export function firstFiles(texts: DesignTexts): readonly string[] {
  const kinds = [...texts].map(([path, text]) => ({ path, kind: kindOf(text) }));
  const consoles = kinds.filter(({ kind }) => kind === "console");
  const first =
    consoles.length > 0
      ? consoles
      : kinds.filter(({ kind }) => kind !== "workshop" && kind !== "parts");
  return first.map(({ path }) => path).sort();
}

const kindOf = (text: string): string | undefined => /^kind:[ \t]*["']?([a-z-]+)/m.exec(text)?.[1];
