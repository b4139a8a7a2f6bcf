// The keys that every design file begins with.

import { finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, read, unread } from "./field.ts";
import { required } from "./fields.ts";
import { scalarField } from "./scalar-field.ts";
import { shortened } from "./source.ts";
import { name, oneOf } from "./text-fields.ts";
import { FORMAT_VERSION } from "./usual-values.ts";

export const FILE_KINDS = ["panel", "console", "workshop", "parts"] as const;

export type FileKind = (typeof FILE_KINDS)[number];

const VERSION: Field<string> = scalarField({
  what: `the format version, ${FORMAT_VERSION}`,
  schema: { enum: [Number(FORMAT_VERSION), FORMAT_VERSION] },
  parse: (node) =>
    node.text === FORMAT_VERSION
      ? read(FORMAT_VERSION, node)
      : unread(
          node,
          finding(MEANING_CODES.formatVersion, {
            message: `the file is written in version ${shortened(node.text)} of the format; this program reads version ${FORMAT_VERSION}`,
            span: node.span,
          }),
        ),
});

export const FILE_KEYS = {
  consolewright: required(VERSION, "The version of the format that this file is written in"),
  kind: required(oneOf("a kind of file", FILE_KINDS), "What this file describes"),
  name: required(name("a name"), "A short name; files and wires are named after it"),
};
