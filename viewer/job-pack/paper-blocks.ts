// A pack's paper taken apart: the Markdown that our own papers are written in (CommonMark 0.31 with the tables and task lists of
// GitHub Flavored Markdown 0.29; no more of it than they use). Takes text, gives plain data: whatever is not known stays words.

export type PaperWords = { readonly kind: "plain" | "strong" | "code"; readonly words: string };

export interface PaperItem {
  /** A box to tick stands before it. */
  readonly isTick: boolean;
  readonly words: readonly PaperWords[];
  readonly inner: readonly (readonly PaperWords[])[];
}

export type PaperBlock =
  | { readonly kind: "heading"; readonly level: number; readonly words: readonly PaperWords[] }
  | { readonly kind: "paragraph"; readonly words: readonly PaperWords[] }
  | { readonly kind: "picture"; readonly path: string; readonly name: string }
  | { readonly kind: "list"; readonly isNumbered: boolean; readonly items: readonly PaperItem[] }
  | {
      readonly kind: "table";
      /** By column: numbers stand on the right. */
      readonly isNumber: readonly boolean[];
      readonly head: readonly (readonly PaperWords[])[];
      readonly rows: readonly (readonly (readonly PaperWords[])[])[];
    };

export const paperBlocks = (text: string): readonly PaperBlock[] => {
  const blocks: PaperBlock[] = [];
  const lines = text.split("\n");
  for (let at = 0; at < lines.length; ) {
    const run = runFrom(lines, at);
    at += Math.max(1, run.length);
    const block = run.length === 0 ? null : blockOf(run);
    if (block !== null) blocks.push(block);
  }
  return blocks;
};

/** Lines of one kind that follow one another. */
const runFrom = (lines: readonly string[], from: number): readonly string[] => {
  const kind = kindOf(lines[from] ?? "");
  if (kind === "none") return [];
  if (kind === "heading" || kind === "picture") return lines.slice(from, from + 1);
  let to = from + 1;
  while (to < lines.length && goesOn(kind, lines[to] ?? "")) to += 1;
  return lines.slice(from, to);
};

type LineKind = "none" | "heading" | "picture" | "table" | "bullet" | "number" | "paragraph";

const kindOf = (line: string): LineKind => {
  if (line.trim() === "") return "none";
  if (HEADING.test(line)) return "heading";
  if (PICTURE.test(line)) return "picture";
  if (line.startsWith("|")) return "table";
  if (BULLET.test(line)) return "bullet";
  return NUMBER.test(line) ? "number" : "paragraph";
};

const goesOn = (kind: LineKind, line: string): boolean =>
  kindOf(line) === kind || (kind === "bullet" && INNER.test(line));

const HEADING = /^(#{1,6}) (.*)$/;
const PICTURE = /^!\[([^\]]*)\]\(([^)\s]+)\)$/;
const BULLET = /^- (\[ \] )?(.*)$/;
const INNER = /^ {2}- (.*)$/;
const NUMBER = /^\d{1,9}\. (.*)$/;

const blockOf = (run: readonly string[]): PaperBlock => {
  const [first = ""] = run;
  switch (kindOf(first)) {
    case "heading": {
      const [, signs = "", words = ""] = HEADING.exec(first) ?? [];
      return { kind: "heading", level: signs.length, words: paperWords(words) };
    }
    case "picture": {
      const [, name = "", path = ""] = PICTURE.exec(first) ?? [];
      return { kind: "picture", path, name: plainWords(name) };
    }
    case "table":
      return tableOf(run);
    case "bullet":
      return { kind: "list", isNumbered: false, items: bulletItems(run) };
    case "number":
      return { kind: "list", isNumbered: true, items: run.map(numberItem) };
    case "none":
    case "paragraph":
      return { kind: "paragraph", words: paperWords(run.join(" ")) };
  }
};

const bulletItems = (run: readonly string[]): readonly PaperItem[] => {
  const items: {
    isTick: boolean;
    words: readonly PaperWords[];
    inner: (readonly PaperWords[])[];
  }[] = [];
  for (const line of run) {
    const [, inner] = INNER.exec(line) ?? [];
    const last = items.at(-1);
    if (inner !== undefined && last !== undefined) last.inner.push(paperWords(inner));
    else {
      const [, tick, words = ""] = BULLET.exec(line) ?? [];
      items.push({ isTick: tick !== undefined, words: paperWords(words), inner: [] });
    }
  }
  return items;
};

const numberItem = (line: string): PaperItem => ({
  isTick: false,
  words: paperWords(NUMBER.exec(line)?.[1] ?? ""),
  inner: [],
});

const tableOf = (run: readonly string[]): PaperBlock => {
  const [head = "", rule = "", ...rows] = run;
  return {
    kind: "table",
    isNumber: cellsOf(rule).map((cell) => cell.endsWith(":")),
    head: cellsOf(head).map(paperWords),
    rows: rows.map((row) => cellsOf(row).map(paperWords)),
  };
};

/** Between bars; a bar that belongs to a cell has a backslash before it. */
const cellsOf = (row: string): readonly string[] =>
  [...row.slice(1).matchAll(/((?:\\.|[^\\|])*)\|/g)].map(([, cell = ""]) => cell.trim());

/** What may stand in a line: an escaped sign, one of three that HTML would act on, strong words, words as they are typed. */
const PIECE = /\\([!-/:-@[-`{-~])|&(amp|lt|gt);|(\*\*)|`([^`]*)`/g;

const SIGNS: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">" };

export const paperWords = (line: string): readonly PaperWords[] => {
  const pieces: { kind: PaperWords["kind"]; words: string }[] = [];
  let isStrong = false;
  const add = (kind: PaperWords["kind"], words: string): void => {
    const last = pieces.at(-1);
    if (words === "") return;
    if (last?.kind === kind && kind !== "code") last.words += words;
    else pieces.push({ kind, words });
  };
  let at = 0;
  const around = (): PaperWords["kind"] => (isStrong ? "strong" : "plain");
  for (const piece of line.matchAll(PIECE)) {
    const [whole, escaped, sign, stars, code] = piece;
    add(around(), line.slice(at, piece.index));
    at = piece.index + whole.length;
    if (escaped !== undefined) add(around(), escaped);
    else if (sign !== undefined) add(around(), SIGNS[sign] ?? whole);
    else if (stars !== undefined) isStrong = !isStrong;
    else add("code", code ?? "");
  }
  add(around(), line.slice(at));
  return pieces;
};

const plainWords = (line: string): string =>
  paperWords(line)
    .map(({ words }) => words)
    .join("");
