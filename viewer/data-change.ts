// What has changed between two states of plain data, and the new state put together again from the old one and the change. An
// edit that makes its line longer moves everything behind it in the text: of that only the distance is said.

export type DataChange =
  | { readonly kind: "same" }
  | { readonly kind: "anew"; readonly value: unknown }
  /** The same, but that every place in the text in it stands so many characters further on. */
  | { readonly kind: "moved"; readonly by: number }
  /** The same keys or as many items; what has changed in it by key or index. */
  | { readonly kind: "within"; readonly parts: readonly ChangedPart[] };

interface ChangedPart {
  readonly at: string | number;
  readonly change: DataChange;
}

const SAME: DataChange = { kind: "same" };

/** Data as a message carries it: numbers, words, lists and records of them; of anything else it is said anew. */
export const dataChange = (before: unknown, now: unknown): DataChange =>
  changeOf(before, now, alikeOnce());

/** One object for all changes that are alike, as those of all components behind a longer line: a message names it again where it would copy another. */
interface AlikeOnce {
  readonly moved: (by: number) => DataChange;
  readonly within: (parts: readonly ChangedPart[]) => DataChange;
}

function alikeOnce(): AlikeOnce {
  const changes = new Map<string, DataChange>();
  const numbers = new Map<DataChange, number>();
  const numberOf = (change: DataChange): number => {
    const known = numbers.get(change) ?? numbers.size;
    numbers.set(change, known);
    return known;
  };
  const once = (key: string, change: DataChange): DataChange => {
    const known = changes.get(key) ?? change;
    changes.set(key, known);
    return known;
  };
  // A key's length before it keeps any two lists of parts apart.
  const partKey = ({ at, change }: ChangedPart): string =>
    typeof at === "number"
      ? `#${at} ${numberOf(change)}`
      : `${at.length} ${at} ${numberOf(change)}`;
  return {
    moved: (by) => once(`by ${by}`, { kind: "moved", by }),
    within: (parts) => once(parts.map(partKey).join(" "), { kind: "within", parts }),
  };
}

function changeOf(before: unknown, now: unknown, alike: AlikeOnce): DataChange {
  if (Object.is(before, now)) return SAME;
  if (isList(before) && isList(now) && before.length === now.length) {
    const parts: ChangedPart[] = [];
    for (let at = 0; at < now.length; at += 1)
      addChange(parts, at, changeOf(before[at], now[at], alike));
    return together(parts, now.length, alike);
  }
  if (isRecord(before) && isRecord(now)) {
    if (isPlace(before) && isPlace(now)) return placeChange(before, now, alike);
    return recordChange(before, now, alike);
  }
  return { kind: "anew", value: now };
}

function recordChange(before: PlainRecord, now: PlainRecord, alike: AlikeOnce): DataChange {
  const parts: ChangedPart[] = [];
  let [count, deep] = [0, 0];
  for (const at in now) {
    const [old, value] = [before[at], now[at]];
    // Of a key that the old state does not have, and of one that would be no key in a copy, nothing can be said alone.
    if (at === "__proto__" || (mayBeInherited(old) && !Object.hasOwn(before, at)))
      return { kind: "anew", value: now };
    count += 1;
    if (typeof value === "object" && value !== null) deep += 1;
    addChange(parts, at, changeOf(old, value, alike));
  }
  for (const _ in before) count -= 1;
  return count === 0 ? together(parts, deep, alike) : { kind: "anew", value: now };
}

/** What every object has without being given it is a function, and no message carries one. */
const mayBeInherited = (value: unknown): boolean =>
  value === undefined || typeof value === "function";

function addChange(parts: ChangedPart[], at: string | number, change: DataChange): void {
  if (change !== SAME) parts.push({ at, change });
}

/** Where all that is no mere word or number has moved by one distance, the whole has. */
function together(parts: readonly ChangedPart[], deep: number, alike: AlikeOnce): DataChange {
  const first = parts[0]?.change;
  if (first === undefined) return SAME;
  if (first.kind === "moved" && parts.length === deep && parts.every((one) => one.change === first))
    return first;
  return alike.within(parts);
}

const placeChange = (before: Place, now: Place, alike: AlikeOnce): DataChange => {
  const by = now.start - before.start;
  if (now.file !== before.file || now.end - before.end !== by) return { kind: "anew", value: now };
  return by === 0 ? SAME : alike.moved(by);
};

/** The new state; its records keep the old order of their keys. What has not changed in it is the very object that it was. */
export function changedData(before: unknown, change: DataChange): unknown {
  switch (change.kind) {
    case "same":
      return before;
    case "anew":
      return change.value;
    case "moved":
      return movedData(before, change.by);
    case "within": {
      if (isList(before)) {
        const list = [...before];
        for (const { at, change: part } of change.parts)
          list[Number(at)] = changedData(before[Number(at)], part);
        return list;
      }
      const record: Record<string, unknown> = isRecord(before) ? { ...before } : {};
      for (const { at, change: part } of change.parts) record[at] = changedData(record[at], part);
      return record;
    }
  }
}

function movedData(data: unknown, by: number): unknown {
  if (isList(data)) return data.map((item) => movedData(item, by));
  if (!isRecord(data)) return data;
  if (isPlace(data)) return { ...data, start: data.start + by, end: data.end + by };
  const record: Record<string, unknown> = {};
  for (const at in data) record[at] = movedData(data[at], by);
  return record;
}

type PlainRecord = Readonly<Record<string, unknown>>;

const isList = (data: unknown): data is readonly unknown[] => Array.isArray(data);

const isRecord = (data: unknown): data is PlainRecord => {
  if (typeof data !== "object" || data === null) return false;
  const kind: unknown = Object.getPrototypeOf(data);
  return kind === Object.prototype || kind === null;
};

/** A span of the text (`diagnostics/finding.ts`), and nothing that has more to it. */
interface Place extends PlainRecord {
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

const isPlace = (data: PlainRecord): data is Place =>
  typeof data["start"] === "number" &&
  typeof data["end"] === "number" &&
  typeof data["file"] === "string" &&
  Object.keys(data).length === 3;
