// Which of the opened texts a reading begins with: one console, the nearest to the root unless another is chosen, or where
// there is none every panel. A text whose kind can't be told is begun with too, so that the program says what is wrong with it.

import type { DesignTexts } from "./core-messages.ts";

export function firstFiles(texts: DesignTexts): readonly string[] {
  const [first] = consolesIn(texts);
  if (first !== undefined) return [first];
  return [...texts]
    .filter(([, text]) => !["workshop", "parts"].includes(kindOf(text) ?? ""))
    .map(([path]) => path)
    .sort();
}

/** Whether one of them says that it is a panel or a console. */
export const holdsDesign = (texts: DesignTexts): boolean =>
  [...texts.values()].some((text) => ["panel", "console"].includes(kindOf(text) ?? ""));

/** The nearest to the root first, then by path. */
export const consolesIn = (texts: DesignTexts): readonly string[] =>
  [...texts]
    .filter(([, text]) => kindOf(text) === "console")
    .map(([path]) => path)
    .sort((a, b) => depthOf(a) - depthOf(b) || (a < b ? -1 : 1));

/** Without the consoles that are not looked at: a console names no other one. */
export function withOneConsole(texts: DesignTexts, chosen: string | null): DesignTexts {
  const others = consolesIn(texts).filter((path) => path !== chosen);
  if (others.length === 0) return texts;
  return new Map([...texts].filter(([path]) => !others.includes(path)));
}

/** A panel with what it may name, without its console and its neighbours. */
export const withOnePanel = (texts: DesignTexts, file: string): DesignTexts =>
  new Map(
    [...texts].filter(
      ([path, text]) => path === file || ["workshop", "parts"].includes(kindOf(text) ?? ""),
    ),
  );

const depthOf = (path: string): number => path.split("/").length;

const kindOf = (text: string): string | undefined => /^kind:[ \t]*["']?([a-z-]+)/m.exec(text)?.[1];
