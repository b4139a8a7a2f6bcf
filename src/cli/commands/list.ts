// `list [WORD ...]`: what the catalogue holds, one record a line, by kind and id.

import type { Library } from "../../catalogue/library.ts";
import type { StockDesign } from "../../design/workshop-design.ts";
import { decimal } from "../../geometry/number.ts";
import type { Command } from "../command.ts";
import { EXIT } from "../shell.ts";

export const list: Command = {
  usage: "list [WORD ...]",
  details: [
    "Lists parts, hardware, boards, strips, inserts, mounts, materials, stock, finishes, machines and fonts.",
    "Words narrow it down: `list toggle`, `list stock acrylic`. With --json whole records are printed.",
  ].join("\n"),
  options: [],
  words: { least: 0, most: 12 },
  run: async ({ words, switches }, shell) => {
    const wanted = words.map((word) => word.toLowerCase());
    const listed = recordsOf(await shell.library()).filter((line) =>
      wanted.every((word) => `${line.kind} ${line.id} ${line.title}`.toLowerCase().includes(word)),
    );
    if (switches.has("json"))
      shell.stdout(listed.map((line) => `${JSON.stringify(line)}\n`).join(""));
    else shell.stdout(columns(listed));
    if (listed.length === 0)
      shell.stderr(`Nothing in the catalogue goes by "${words.join(" ")}".\n`);
    return EXIT.fine;
  },
};

interface Line {
  readonly kind: string;
  readonly id: string;
  readonly title: string;
  readonly record: object;
}

const recordsOf = ({ catalogue, lettering }: Library): readonly Line[] => [
  ...linesOf("part", catalogue.parts, ({ title }) => title),
  ...linesOf("hardware", catalogue.hardware, ({ kind, title }) => `${kind}: ${title}`),
  ...linesOf("board", catalogue.boards, ({ title }) => title),
  ...linesOf("strip", catalogue.strips, ({ title }) => title),
  ...linesOf("led-board", catalogue.ledBoards, ({ title }) => title),
  ...linesOf("insert", catalogue.inserts, ({ title }) => title),
  ...linesOf("mount", catalogue.mounts, ({ title }) => title),
  ...linesOf("material", catalogue.materials, ({ title }) => title),
  ...linesOf("stock", catalogue.stock, stockTitle),
  ...linesOf("finish", catalogue.finishes, ({ coats, order }) => `${order}: ${coats.join(", ")}`),
  ...linesOf(
    "machine",
    catalogue.machines,
    ({ kind, bed }) => `${kind}, bed ${bed.join(" x ")} mm`,
  ),
  ...[...lettering.faces].map(([id, { kind }]) => ({
    kind: "font",
    id,
    title: kind,
    record: { id, kind },
  })),
];

const linesOf = <Item extends object>(
  kind: string,
  records: ReadonlyMap<string, Item>,
  titleOf: (record: Item) => string,
): readonly Line[] =>
  [...records].map(([id, record]) => ({ kind, id, title: titleOf(record), record }));

const columns = (lines: readonly Line[]): string => {
  const widest = Math.max(0, ...lines.map(({ id }) => id.length));
  return lines
    .map(({ kind, id, title }) => `${kind.padEnd(9)}  ${id.padEnd(widest)}  ${title}\n`)
    .join("");
};

/** What is printed comes in no thickness of its own: its nominal is nothing. */
const stockTitle = ({ colour, material, nominal }: StockDesign): string => {
  const what = colour === material ? material : `${colour} ${material}`;
  return nominal > 0 ? `${what}, ${decimal(nominal, 3)} mm` : `${what}, of any depth`;
};
