// A paper of the pack: text that is read by people, as a file that belongs to the panel and not to one part.

import type { PackFile, PackFileKind } from "./pack-file.ts";
import { utf8Bytes } from "./utf8.ts";

export const paperFile = (kind: PackFileKind, path: string, text: string): PackFile => ({
  path,
  kind,
  part: "",
  bytes: utf8Bytes(text),
});
