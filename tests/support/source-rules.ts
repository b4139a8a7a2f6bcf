// The rules of the source tree that no linter here can hold: the floors, the banned arithmetic, the size of files.
// Takes sources as a map of path ("src/layout/panel.ts") to text; gives one sentence for each breach.

import { posix } from "node:path";
import { parseSync } from "vite";

export type Sources = ReadonlyMap<string, string>;

/** Lowest first. Folders in one row are siblings: they may not import each other. */
const FLOORS: readonly (readonly string[])[] = [
  ["geometry"],
  ["diagnostics"],
  ["standards", "lettering"],
  ["design"],
  ["catalogue"],
  ["layout"],
  ["wiring"],
  ["parts"],
  ["fit", "light", "nest", "service"],
  ["checks"],
  ["arrange", "drawings"],
  ["export", "inspection"],
  ["pack"],
  ["project.ts"],
  ["making"],
  ["cli"],
];

const TOP = "viewer";
const MOST_LINES = 400;

/** Their last bits differ between engines (measured: 3 to 17 % of arguments), so that files would differ. */
const UNEQUAL_MATH = new Set(
  (
    "sin cos tan asin acos atan atan2 sinh cosh tanh asinh acosh atanh " +
    "exp expm1 log log1p log2 log10 pow hypot cbrt"
  ).split(" "),
);

/** Imports that go up, sideways, out of the tree or into a place that has no floor. */
export function floorFaults(sources: Sources): readonly string[] {
  if (sources.size === 0) return ["no source files were found"];
  return [...sources].flatMap(([path, text]) => {
    const from = floorOf(path);
    if (from === null) return [`${path} stands on no floor`];
    return importsOf(path, text).flatMap((specifier) => importFault(path, from, specifier));
  });
}

function importFault(path: string, from: Floor, specifier: string | null): readonly string[] {
  if (specifier === null) return [`${path} imports something that cannot be read from its text`];
  if (!specifier.startsWith(".")) return [];
  const target = posix.join(posix.dirname(path), specifier);
  const to = floorOf(target);
  if (to === null) return [`${path} imports ${target}, which stands on no floor`];
  if (to.level < from.level || to.name === from.name) return [];
  return [`${path} imports ${target}, which is not on a lower floor`];
}

interface Floor {
  readonly level: number;
  readonly name: string;
}

function floorOf(path: string): Floor | null {
  const [top, name, ...rest] = path.split("/");
  if (top === TOP) return { level: FLOORS.length, name: TOP };
  if (top !== "src" || name === undefined) return null;
  // A file at the root of src is a floor by its own name; a folder must hold something.
  if (name.endsWith(".ts") !== (rest.length === 0)) return null;
  const level = FLOORS.findIndex((row) => row.includes(name));
  return level < 0 ? null : { level, name };
}

/** Every module that a text speaks of: imports, re-exports, types, and `import()`; null where it is computed. */
function importsOf(path: string, text: string): readonly (string | null)[] {
  const found: (string | null)[] = [];
  visit(path, text, (node) => {
    if (IMPORTING.has(node.type) && node["source"] !== null && node["source"] !== undefined)
      found.push(literalText(node["source"]));
    if (node.type === "TSExternalModuleReference") found.push(literalText(node["expression"]));
  });
  return found;
}

const IMPORTING = new Set([
  "ImportDeclaration",
  "ExportNamedDeclaration",
  "ExportAllDeclaration",
  "ImportExpression",
  "TSImportType",
]);

/** Arithmetic that differs between engines, and whatever would make two runs differ: clock, chance, locale. */
export function sameBytesFaults(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    const faults: string[] = [];
    visit(path, text, (node) => {
      const fault = sameBytesFault(node);
      if (fault !== null) faults.push(`${path} uses ${fault}`);
    });
    return faults;
  });
}

function sameBytesFault(node: SyntaxNode): string | null {
  switch (node.type) {
    case "BinaryExpression":
      return node["operator"] === "**" && !isExactPower(node) ? "**" : null;
    case "AssignmentExpression":
      return node["operator"] === "**=" ? "**=" : null;
    case "VariableDeclarator":
      return isNamed(node["init"], "Math") ? "a part of Math" : null;
    case "NewExpression":
      return isNamed(node["callee"], "Date") ? "new Date" : null;
    case "MemberExpression":
      return memberFault(node);
    default:
      return null;
  }
}

/** `2 ** 32` or `2 ** -10`, a power of two written out, is exact in every engine; so is whatever BigInt does. */
const isExactPower = (node: SyntaxNode): boolean =>
  (literalValue(node["left"]) === 2 && Number.isInteger(literalValue(unsigned(node["right"])))) ||
  isBigIntCall(node["right"]);

const unsigned = (value: unknown): unknown =>
  isNode(value) && value.type === "UnaryExpression" ? value["argument"] : value;

const isBigIntCall = (value: unknown): boolean =>
  isNode(value) && value.type === "CallExpression" && isNamed(value["callee"], "BigInt");

function memberFault(node: SyntaxNode): string | null {
  const property = node["computed"] === true ? null : nameOf(node["property"]);
  if (isNamed(node["object"], "Math")) {
    if (property === null) return "Math[...]";
    return UNEQUAL_MATH.has(property) || property === "random" ? `Math.${property}` : null;
  }
  if (isNamed(node["object"], "Date") || isNamed(node["object"], "Intl")) return "Date or Intl";
  return property === "localeCompare" || property?.startsWith("toLocale") ? property : null;
}

/** Files that are too long to be read at a sitting. */
export function lengthFaults(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    const lines = text.split("\n").length - (text.endsWith("\n") ? 1 : 0);
    return lines > MOST_LINES ? [`${path} has ${lines} lines; at most ${MOST_LINES}`] : [];
  });
}

/** Files that do not open with a comment saying what they are. */
export function headerFaults(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) =>
    /^(#!.*\n)?(\/\/|\/\*)/.test(text) ? [] : [`${path} does not open with a comment`],
  );
}

interface SyntaxNode {
  readonly type: string;
  readonly [key: string]: unknown;
}

function visit(path: string, text: string, look: (node: SyntaxNode) => void): void {
  const { program, errors } = parseSync(path, text);
  const [first] = errors;
  if (first !== undefined) throw new Error(`${path} cannot be parsed: ${first.message}`);
  walk(program, look);
}

function walk(value: unknown, look: (node: SyntaxNode) => void): void {
  if (Array.isArray(value)) {
    for (const item of value) walk(item, look);
  } else if (isNode(value)) {
    look(value);
    for (const part of Object.values(value)) walk(part, look);
  }
}

const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === "object" && value !== null && "type" in value && typeof value.type === "string";

const nameOf = (value: unknown): string | null =>
  isNode(value) && typeof value["name"] === "string" ? value["name"] : null;

const isNamed = (value: unknown, name: string): boolean => nameOf(value) === name;

const literalValue = (value: unknown): unknown => (isNode(value) ? value["value"] : undefined);

function literalText(value: unknown): string | null {
  const text = literalValue(value);
  return typeof text === "string" ? text : null;
}
