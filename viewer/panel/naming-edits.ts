// A component renamed: its own key and everything in the panel's file that names it, as edits that belong together. Refused
// in words where the name is no name, or another thing's.

import { nodeAt, replaceValue } from "../../src/design/edit.ts";
import { renamedReferences } from "../../src/design/name-references.ts";
import type { Source } from "../../src/design/source.ts";
import { LONGEST_NAME, NAME } from "../../src/design/text-fields.ts";
import type { TextEdit } from "../../src/diagnostics/text-edit.ts";

export type Renaming =
  | { readonly kind: "edits"; readonly edits: readonly TextEdit[] }
  | { readonly kind: "refused"; readonly why: string };

/** `taken`: every name on the panel, markings' and what could not be placed with them. */
export function componentRenamed(
  from: Source,
  entry: string,
  { name, taken }: { readonly name: string; readonly taken: readonly string[] },
): Renaming {
  if (!NAME.test(name) || name.length > LONGEST_NAME)
    return refused(
      `"${name}" is no name; take small letters, digits and hyphens, a letter first, at most ${LONGEST_NAME}`,
    );
  if (taken.includes(name)) return refused(`${name} is another thing's name`);
  const components = nodeAt(from, ["components"]);
  const own =
    components?.kind === "map" ? components.entries.find(({ key }) => key === entry) : undefined;
  if (own === undefined) return refused(`${entry} is not written under components`);
  const edits = renamedReferences(from, new Map([[entry, name]]));
  return { kind: "edits", edits: [replaceValue(from, own.keySpan, name), ...edits] };
}

const refused = (why: string): Renaming => ({ kind: "refused", why });
