// Paths into a record: "hold.length", "hold.holes.2.at.x", "bodies.case.from". Segments may be written in the text's
// spelling (stand-off) or in the data's (standOff); an item of a list is named by its index, its role or its name.

/** The value at a path; undefined where the record has no such field. */
export function fieldAt(record: unknown, path: string): unknown {
  return path
    .split(".")
    .reduce<unknown>((value, segment) => childOf(value, keyOf(value, segment)), record);
}

/** A copy of a record with one number replaced; null where the path leads to no number. */
export function withNumber(record: unknown, path: string, number: number): unknown {
  return typeof fieldAt(record, path) === "number"
    ? replaced(record, path.split("."), number)
    : null;
}

/** Every path of a record that leads to a number, in the text's spelling; bodies by role, connectors by name. */
export function numberPaths(record: unknown, path = ""): readonly string[] {
  if (typeof record === "number") return [path];
  if (typeof record !== "object" || record === null) return [];
  const children = Array.isArray(record)
    ? record.map((item, index) => [itemName(record, item, index), item] as const)
    : Object.entries(record).map(([key, value]) => [kebab(key), value] as const);
  return children.flatMap(([name, value]) =>
    numberPaths(value, path === "" ? name : `${path}.${name}`),
  );
}

/** The one spelling of a path that leads somewhere: text's spelling, items by name where they have one. */
export function pathOf(record: unknown, path: string): string {
  const [segment, ...rest] = path.split(".");
  const key = segment === undefined ? null : keyOf(record, segment);
  if (key === null) return path;
  const child = childOf(record, key);
  const called = Array.isArray(record) ? itemName(record, child, Number(key)) : kebab(key);
  return rest.length === 0 ? called : `${called}.${pathOf(child, rest.join("."))}`;
}

const childOf = (value: unknown, key: string | null): unknown =>
  key !== null && typeof value === "object" && value !== null
    ? Object.entries(value).find(([name]) => name === key)?.[1]
    : undefined;

/** The key that a segment means in a value; null where it means none. */
function keyOf(value: unknown, segment: string): string | null {
  if (typeof value !== "object" || value === null) return null;
  if (Object.hasOwn(value, segment)) return segment;
  if (Array.isArray(value)) {
    const index = value.findIndex((item) => callOf(item) === segment);
    return index < 0 ? null : `${index}`;
  }
  const spelled = camel(segment);
  return Object.hasOwn(value, spelled) ? spelled : null;
}

function replaced(value: unknown, segments: readonly string[], number: number): unknown {
  const [segment, ...rest] = segments;
  if (segment === undefined) return number;
  const key = keyOf(value, segment);
  const next = replaced(childOf(value, key), rest, number);
  if (Array.isArray(value)) return value.map((item, index) => (`${index}` === key ? next : item));
  return Object.fromEntries(
    Object.entries(value ?? {}).map(([name, old]) => [name, name === key ? next : old]),
  );
}

/** By role or name where it is the first of them in the list, else by index. */
function itemName(list: readonly unknown[], item: unknown, index: number): string {
  const called = callOf(item);
  return called !== null && list.findIndex((other) => callOf(other) === called) === index
    ? called
    : `${index}`;
}

/** What an item of a list is called. */
const callOf = (item: unknown): string | null =>
  ["role", "name"].map((key) => childOf(item, key)).find((word) => typeof word === "string") ??
  null;

const camel = (segment: string): string =>
  segment.replaceAll(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

const kebab = (key: string): string =>
  key.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
