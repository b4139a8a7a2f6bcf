// Fenced blocks of a Markdown text, and whether a text says what a block shows.

export interface MarkdownBlock {
  readonly language: string;
  readonly text: string;
  /** From a comment right above it: `<!-- file: close.yaml -->`. */
  readonly file: string | null;
  /** `<!-- after: LINE -->`: the reader puts it below this line of the panel. */
  readonly after: string | null;
}

export const blocksOf = (markdown: string): readonly MarkdownBlock[] =>
  [...markdown.matchAll(BLOCK)].map(([, place, value, language = "", text = ""]) => ({
    language,
    text,
    file: place === "file" ? (value ?? null) : null,
    after: place === "after" ? (value ?? null) : null,
  }));

const BLOCK = /(?:^<!-- (file|after): (.+) -->\n)?^```(\w+)\n([\s\S]*?)\n```$/gm;

/** A line of `...` stands for any lines, none too; `...` within a line for any words. */
export const says = (text: string, shown: string): boolean => {
  const pattern = shown
    .trimEnd()
    .split("\n")
    .map((line) =>
      line === "..." ? "(?:.*\\n)*?" : `${line.split(ANY_WORDS).map(escaped).join(".*")}\\n`,
    )
    .join("");
  return new RegExp(`^${pattern}\\n*$`).test(text);
};

/** Not the three dots of the program's own sentences, which stand before a comma, a brace or a dot. */
const ANY_WORDS = /\.\.\.(?= (?:files|measurements))/;

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
