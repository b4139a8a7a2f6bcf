// The entry of the text that an instance, or the name of a member, comes from: `warn` for `warn.3`, `mount` for `mount.1.left`.

export const entryName = (id: string): string => id.split(".", 1)[0] ?? id;
