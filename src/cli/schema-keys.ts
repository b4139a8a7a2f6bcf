// The keys of the design text as lines, walked out of the schema that its own readers give: nothing can be listed that is
// not read, and nothing is read that is not listed.

import type { JsonSchema } from "../design/json-schema.ts";

export interface SchemaKey {
  /** `panel.components.*.legend.side`; a star stands for a name of the user's, brackets for an item of a list. */
  readonly path: string;
  readonly about: string;
  /** `in-one-form`: of several forms that a value has, one needs it. */
  readonly need: "always" | "in-one-form" | "never";
  /** What holds where nothing is said; empty where there is nothing. */
  readonly usual: string;
}

/** Keys nest no deeper than this in any design. */
const DEEPEST = 8;

export const schemaKeys = (schema: JsonSchema): readonly SchemaKey[] => {
  const kinds = (schema.oneOf ?? []).flatMap((one) => {
    const kind = one.properties?.["kind"]?.const;
    return typeof kind === "string" ? keysBelow(one, kind, 0) : [];
  });
  return [...new Map(kinds.map((key) => [key.path, key])).values()];
};

const keysBelow = (schema: JsonSchema, path: string, depth: number): readonly SchemaKey[] => {
  if (depth > DEEPEST) return [];
  const forms = [...(schema.anyOf ?? []), ...(schema.oneOf ?? [])];
  const own = Object.entries(schema.properties ?? {}).flatMap(([name, value]) => [
    {
      path: `${path}.${name}`,
      about: value.description ?? "",
      need: schema.required?.includes(name) === true ? ("always" as const) : ("never" as const),
      usual: value.default === undefined ? "" : `${value.default}`,
    },
    ...keysBelow(value, `${path}.${name}`, depth + 1),
  ]);
  const named = schema.additionalProperties;
  const items = schema.items;
  return [
    ...own,
    ...(typeof named === "object" ? keysBelow(named, `${path}.*`, depth + 1) : []),
    ...(typeof items === "object" ? keysBelow(items, `${path}[]`, depth + 1) : []),
    ...forms
      .flatMap((form) => keysBelow(form, path, depth + 1))
      .map((key) => ({ ...key, need: needAmong(forms, key, path) })),
  ];
};

const needAmong = (
  forms: readonly JsonSchema[],
  { path, need }: SchemaKey,
  above: string,
): SchemaKey["need"] => {
  const name = path.slice(above.length + 1);
  const isOwn = forms.some(({ properties }) => properties?.[name] !== undefined);
  const isShared = forms.every(({ required }) => required?.includes(name) === true);
  return need === "always" && isOwn && !isShared ? "in-one-form" : need;
};
