// The part of JSON Schema (draft 2020-12) that the fields speak. Kept as plain data, ready to be written to a file.

export interface JsonSchema {
  readonly $schema?: string;
  readonly $id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: JsonType | readonly JsonType[];
  readonly enum?: readonly (string | number | boolean)[];
  readonly const?: string | number;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minProperties?: number;
  readonly maxProperties?: number;
  readonly default?: string | number | boolean;
  readonly examples?: readonly (string | number)[];
  readonly items?: JsonSchema | false;
  readonly prefixItems?: readonly JsonSchema[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly propertyNames?: JsonSchema;
  readonly additionalProperties?: JsonSchema | boolean;
  readonly required?: readonly string[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
}

export type JsonType = "string" | "number" | "integer" | "boolean" | "object" | "array";
