// The colours that sheets and paints are called by, and how each looks: typical for matt paint, anodised and bare metal, cast
// acrylic (common practice; no two cans are alike). A word that is not here has no known look.

export interface NamedColour {
  readonly name: ColourName;
  /** `#rrggbb`. */
  readonly looks: string;
}

type ColourName = keyof typeof LOOKS;

const LOOKS = {
  black: "#23262a",
  white: "#efede6",
  aluminium: "#c6cace",
  opal: "#f3efe4",
  green: "#3f5a4a",
  blue: "#2f4a63",
} as const;

const WORDS: readonly { readonly name: ColourName; readonly word: RegExp }[] = [
  { name: "black", word: /black|anthracite/i },
  { name: "white", word: /white|cream|ivory/i },
  { name: "aluminium", word: /alumin|silver|bare|natural/i },
  { name: "opal", word: /opal|milk|frosted|clear/i },
  { name: "green", word: /green/i },
  { name: "blue", word: /blue/i },
];

/** By the first of its words that is known: "black anodised aluminium" is black. null where none is. */
export const namedColour = (words: string): NamedColour | null => {
  const [first] = WORDS.map(({ name, word }) => ({ name, at: words.search(word) }))
    .filter(({ at }) => at >= 0)
    .toSorted((a, b) => a.at - b.at);
  return first === undefined ? null : { name: first.name, looks: looksOf(first.name) };
};

export const looksOf = (name: ColourName): string => LOOKS[name];
