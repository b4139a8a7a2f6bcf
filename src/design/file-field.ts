// The path of another file, as it is written: relative to the file that names it.

import { finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, read, refined, unread } from "./field.ts";
import { resolveInclude } from "./resolve-include.ts";
import { text } from "./text-fields.ts";
import { about } from "./text-node.ts";

/** Refused where it can't lead to a file inside the root. Whether the file is there, its reader finds out. */
export const filePath = (what: string): Field<string> =>
  refined(text(what), (path, node, source) => {
    const resolved = resolveInclude(source.file, path);
    return resolved.kind === "resolved"
      ? read(path, node)
      : unread(
          node,
          finding(MEANING_CODES.pathRefused, {
            message: `${about(node)}\`${path}\` can't be used: ${resolved.why}`,
            span: node.span,
          }),
        );
  });
