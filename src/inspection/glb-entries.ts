// Entries of a glTF file's JSON, read without trust: what is not of the kind that is asked for is not there.

export type Entry = Readonly<Record<string, unknown>>;

export const isEntry = (value: unknown): value is Entry =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A list of entries; whatever else stands in it is an empty entry, so that numbers keep their meaning. */
export const entriesOf = (of: Entry, key: string): readonly Entry[] => {
  const list = of[key];
  return Array.isArray(list) ? list.map((each) => (isEntry(each) ? each : {})) : [];
};

export const numberIn = (of: Entry, key: string): number | null => {
  const value = of[key];
  return typeof value === "number" ? value : null;
};

export const wordIn = (of: Entry, key: string): string => {
  const value = of[key];
  return typeof value === "string" ? value : "";
};
