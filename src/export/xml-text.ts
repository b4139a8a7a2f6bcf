// Text on its way into XML: takes any words, gives characters that no reader can take for markup,
// in element content as well as between either kind of quotes (XML 1.0, section 2.4).

import { plainText } from "./plain-text.ts";

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

export const xmlText = (text: string, longest?: number): string =>
  plainText(text, longest).replaceAll(/[&<>"']/g, (character) => ENTITIES[character] ?? "");
