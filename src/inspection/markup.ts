// Reads SVG as a stream of tags and text. Tolerant: what it does not know it steps over, so that a damaged
// file still gives everything that can be measured in it. Takes the text of a file; gives its pieces in order.

export type MarkupPiece =
  | {
      readonly kind: "open";
      readonly name: string;
      readonly attributes: ReadonlyMap<string, string>;
      /** `<path ... />`: no closing tag follows. */
      readonly isEmpty: boolean;
    }
  | { readonly kind: "close"; readonly name: string }
  | { readonly kind: "text"; readonly text: string };

export const markupPieces = (text: string): readonly MarkupPiece[] => {
  const pieces: MarkupPiece[] = [];
  let at = 0;
  while (at < text.length) {
    const bracket = text.indexOf("<", at);
    const until = bracket < 0 ? text.length : bracket;
    if (until > at) pieces.push({ kind: "text", text: withoutEntities(text.slice(at, until)) });
    if (bracket < 0) break;
    const end = tagEnd(text, bracket);
    const piece = pieceOfTag(text.slice(bracket + 1, end));
    if (piece !== null) pieces.push(piece);
    at = end + closingLength(text, bracket);
  }
  return pieces;
};

/** Offset at which the tag, comment or declaration that starts here stops. */
const tagEnd = (text: string, start: number): number => {
  const close = text.startsWith("<!--", start)
    ? text.indexOf("-->", start + 4)
    : text.indexOf(">", quotesSkipped(text, start));
  return close < 0 ? text.length : close;
};

const closingLength = (text: string, start: number): number =>
  text.startsWith("<!--", start) ? "-->".length : ">".length;

/** Steps over quoted values, in which a `>` may stand. */
const quotesSkipped = (text: string, start: number): number => {
  let at = start;
  while (at < text.length && text[at] !== ">") {
    const quote = text[at];
    if (quote === '"' || quote === "'") {
      const end = text.indexOf(quote, at + 1);
      if (end < 0) return at;
      at = end;
    }
    at += 1;
  }
  return at;
};

const pieceOfTag = (inside: string): MarkupPiece | null => {
  if (inside.startsWith("!") || inside.startsWith("?")) return null;
  if (inside.startsWith("/")) return { kind: "close", name: inside.slice(1).trim() };
  const name = /^[^\s/]+/.exec(inside)?.[0];
  if (name === undefined) return null;
  return {
    kind: "open",
    name,
    attributes: attributesOf(inside.slice(name.length)),
    isEmpty: inside.endsWith("/"),
  };
};

const attributesOf = (inside: string): ReadonlyMap<string, string> => {
  const attributes = new Map<string, string>();
  for (const found of inside.matchAll(/([^\s=/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
    attributes.set(found[1] ?? "", withoutEntities(found[2] ?? found[3] ?? ""));
  }
  return attributes;
};

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);

const withoutEntities = (text: string): string =>
  text.includes("&")
    ? text.replace(/&(?:#(\d+)|([a-z]+));/g, (whole, code?: string, name?: string) =>
        code === undefined
          ? (ENTITIES.get(name ?? "") ?? whole)
          : String.fromCodePoint(Math.min(Number(code), LAST_CODE_POINT)),
      )
    : text;

/** The Unicode Standard, chapter 2.4: code points end here. */
const LAST_CODE_POINT = 0x10ffff;
