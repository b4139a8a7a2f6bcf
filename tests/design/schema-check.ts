// A second opinion on documents: the keywords of JSON Schema (draft 2020-12) that the generated schema uses, read from the
// specification's validation vocabulary. An unknown keyword throws, so that nothing goes unchecked.

type Json = unknown;
type Keyword = (rule: Json, value: Json, schema: Readonly<Record<string, Json>>) => boolean;

export const isValid = (schema: Json, value: Json): boolean => {
  const rules = schema as Readonly<Record<string, Json>> | boolean;
  if (typeof rules === "boolean") return rules;
  return Object.entries(rules).every(([keyword, rule]) => {
    const check = KEYWORDS[keyword];
    if (check === undefined) throw new Error(`unknown keyword ${keyword}`);
    return check(rule, value, rules);
  });
};

const annotation: Keyword = () => true;
const isRecord = (value: Json): value is Readonly<Record<string, Json>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const own = (record: Json, key: string): boolean => isRecord(record) && Object.hasOwn(record, key);

const isOfType = (type: Json, value: Json): boolean => {
  switch (type) {
    case "object":
      return isRecord(value);
    case "array":
      return Array.isArray(value);
    case "integer":
      return Number.isInteger(value);
    default:
      return typeof value === type;
  }
};

const KEYWORDS: Readonly<Record<string, Keyword>> = {
  $schema: annotation,
  title: annotation,
  description: annotation,
  default: annotation,
  type: (rule, value) => [rule].flat().some((type) => isOfType(type, value)),
  enum: (rule, value) => (rule as readonly Json[]).includes(value),
  const: (rule, value) => rule === value,
  pattern: (rule, value) => typeof value !== "string" || new RegExp(String(rule), "u").test(value),
  minimum: (rule, value) => typeof value !== "number" || value >= Number(rule),
  maximum: (rule, value) => typeof value !== "number" || value <= Number(rule),
  minItems: (rule, value) => !Array.isArray(value) || value.length >= Number(rule),
  maxItems: (rule, value) => !Array.isArray(value) || value.length <= Number(rule),
  items: (rule, value) => !Array.isArray(value) || value.every((item) => isValid(rule, item)),
  required: (rule, value) =>
    !isRecord(value) || (rule as readonly string[]).every((key) => own(value, key)),
  properties: (rule, value) =>
    !isRecord(value) ||
    Object.entries(rule as object).every(
      ([key, of]) => !own(value, key) || isValid(of, value[key]),
    ),
  propertyNames: (rule, value) =>
    !isRecord(value) || Object.keys(value).every((key) => isValid(rule, key)),
  additionalProperties: (rule, value, { properties }) =>
    !isRecord(value) ||
    Object.entries(value).every(([key, item]) => own(properties, key) || isValid(rule, item)),
  anyOf: (rule, value) => (rule as readonly Json[]).some((schema) => isValid(schema, value)),
  oneOf: (rule, value) =>
    (rule as readonly Json[]).filter((schema) => isValid(schema, value)).length === 1,
};
