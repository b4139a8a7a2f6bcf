// The text of a file that the user names on the command line.

import { resolve } from "node:path";
import { utf8Text } from "../pack/utf8.ts";
import { type WrongUse, wrongUse } from "./command.ts";
import { attempt } from "./disk-trouble.ts";
import type { Shell } from "./shell.ts";

/** Larger than any text that a reader of this program takes. */
const MOST_BYTES = 4_000_000;

export const readArgumentFile = (
  file: string,
  { cwd, disk }: Pick<Shell, "cwd" | "disk">,
): { readonly text: string } | WrongUse => {
  const read = attempt(() => {
    const place = disk.truePath(resolve(cwd, file));
    if (disk.look(place) !== "file") return wrongUse(`${file} is not a file.`);
    if (disk.sizeOf(place) > MOST_BYTES)
      return wrongUse(`${file} is too large: ${disk.sizeOf(place)} bytes, at most ${MOST_BYTES}.`);
    return { text: utf8Text(disk.read(place)) };
  });
  return read.kind === "trouble" ? wrongUse(`${file} can't be read: ${read.why}.`) : read.result;
};
