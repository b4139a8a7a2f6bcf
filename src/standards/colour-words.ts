// The colours that sheets and paints are called by, and how each looks: typical for matt paint, anodised and bare metal, cast
// acrylic (common practice; no two cans are alike). A word that is not here has no known look.

export interface NamedColour {
  readonly name: "black" | "white" | "aluminium" | "opal" | "green" | "blue";
  readonly word: RegExp;
  /** `#rrggbb`. */
  readonly looks: string;
}

const NAMED_COLOURS: readonly NamedColour[] = [
  { name: "black", word: /black|anthracite/i, looks: "#23262a" },
  { name: "white", word: /white|cream|ivory/i, looks: "#efede6" },
  { name: "aluminium", word: /alumin|silver|bare|natural/i, looks: "#c6cace" },
  { name: "opal", word: /opal|milk|frosted|clear/i, looks: "#f3efe4" },
  { name: "green", word: /green/i, looks: "#3f5a4a" },
  { name: "blue", word: /blue/i, looks: "#2f4a63" },
];

/** By the first of its words that is known: "black anodised aluminium" is black. null where none is. */
export const namedColour = (words: string): NamedColour | null =>
  NAMED_COLOURS.map((colour) => ({ colour, at: words.search(colour.word) }))
    .filter(({ at }) => at >= 0)
    .toSorted((a, b) => a.at - b.at)[0]?.colour ?? null;

export const looksOf = (name: NamedColour["name"]): string =>
  NAMED_COLOURS.find((colour) => colour.name === name)?.looks ?? "";
