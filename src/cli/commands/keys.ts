// `keys [WORD ...]`: what can be written in a design file, one key a line, with what it means and what holds without it.

import { recordsSchema } from "../../catalogue/read-records.ts";
import { designSchema } from "../../design/schema.ts";
import type { Command } from "../command.ts";
import { type SchemaKey, schemaKeys } from "../schema-keys.ts";
import { EXIT } from "../shell.ts";

export const keys: Command = {
  usage: "keys [WORD ...]",
  details: [
    "Lists the keys of panel, console, workshop and parts files: what each means, and what holds where it is",
    "left out. A star stands for a name of yours, brackets for an item of a list. Words narrow it down:",
    "`keys panel.components`, `keys lighting`. With --json the whole JSON Schema is printed, for editors.",
  ].join("\n"),
  options: [],
  words: { least: 0, most: 12 },
  run: async ({ words, switches }, shell) => {
    const schema = designSchema(recordsSchema());
    if (switches.has("json")) {
      shell.stdout(`${JSON.stringify(schema, null, 2)}\n`);
      return EXIT.fine;
    }
    const wanted = words.map((word) => word.toLowerCase());
    const found = schemaKeys(schema).filter(({ path, about }) =>
      wanted.every((word) => `${path} ${about}`.toLowerCase().includes(word)),
    );
    shell.stdout(found.map(keyLine).join(""));
    if (found.length === 0) shell.stderr(`No key goes by "${words.join(" ")}".\n`);
    return EXIT.fine;
  },
};

const NEED: Readonly<Record<SchemaKey["need"], readonly string[]>> = {
  always: ["needed"],
  "in-one-form": ["needed in one of its forms"],
  never: [],
};

const keyLine = ({ path, about, need, usual }: SchemaKey): string => {
  const rest = [about, ...NEED[need], ...(usual === "" ? [] : [`${usual} unless told`])];
  return `${path}  ${rest.filter((words) => words !== "").join("; ")}\n`;
};
