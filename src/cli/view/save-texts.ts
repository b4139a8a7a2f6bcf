// Writes what the page saves: texts of the design below its root, all of them or none, each only where the text stands
// that the page knows. Gives what is to be answered; whatever the disk refuses is said in words.

import { dirname, join } from "node:path";
import { MOST_TEXT_BYTES } from "../../design/file-caps.ts";
import { textHash } from "../../diagnostics/text-edit.ts";
import { utf8Bytes } from "../../pack/utf8.ts";
import { attempt } from "../disk-trouble.ts";
import { isBelow } from "../is-below.ts";
import { replaceTexts } from "../replace-texts.ts";
import {
  type DesignSource,
  isDesignText,
  type ServedDesign,
  servedDesign,
} from "./served-design.ts";
import { trueTarget } from "./true-target.ts";
import type { SaveReply, TextChangeMessage } from "./view-messages.ts";

export interface SaveOutcome {
  readonly status: 200 | 400 | 403 | 409 | 413 | 507;
  readonly reply: SaveReply;
}

export const saveTexts = (
  changes: readonly TextChangeMessage[],
  source: DesignSource,
): SaveOutcome => {
  if (source.isReadOnly) return refused(403, "the design was opened read-only");
  const served = servedDesign(source);
  const { loaded } = served;
  for (const change of changes) {
    const why = refusal(change, served, source);
    if (why !== null) return why;
  }
  const standing = changes.map((change) => ({
    change,
    before: loaded.files.get(change.path) ?? null,
  }));
  const other = standing.filter(
    ({ change, before }) => change.baseHash !== (before === null ? null : textHash(before)),
  );
  if (other.length > 0)
    return changedOutside(
      other.map(({ change }) => change.path),
      source,
    );
  return written(standing, source);
};

const refusal = (
  { path, text }: TextChangeMessage,
  { paths, unread }: Pick<ServedDesign, "paths" | "unread">,
  { place, disk }: DesignSource,
): SaveOutcome | null => {
  if (!isDesignText(path) || !paths.has(path))
    return refused(403, `${path} is no file of this design`);
  const half = text.search(/\p{Surrogate}/u);
  if (half >= 0)
    return refused(
      400,
      `${path} holds half a character, which no file can; take it out at line ${text.slice(0, half).split("\n").length}`,
    );
  const unreadWhy = unread.get(path);
  if (unreadWhy !== undefined) return refused(403, unreadWhy);
  if (utf8Bytes(text).length > MOST_TEXT_BYTES)
    return refused(413, `${path} would have more than ${MOST_TEXT_BYTES} bytes`);
  const target = join(place.root, path);
  const checked = attempt((): SaveOutcome | null => {
    if (!isBelow(place.root, trueTarget(target, disk)))
      return refused(403, `${path} is a link that leads out of the design's folder`);
    if (disk.look(target) === "nothing") return null;
    if (disk.look(disk.truePath(target)) !== "file") return refused(403, `${path} is not a file`);
    return disk.isWritable(target) ? null : refused(403, `${path} is read-only on the disk`);
  });
  return checked.kind === "done" ? checked.result : refused(403, `${path}: ${checked.why}`);
};

interface Standing {
  readonly change: TextChangeMessage;
  readonly before: string | null;
}

const written = (standing: readonly Standing[], source: DesignSource): SaveOutcome => {
  const { place, disk } = source;
  const fresh = standing.filter(({ before }) => before === null).map(({ change }) => change);
  const made = attempt(() => writeFresh(fresh, source));
  if (made.kind === "trouble") return refused(507, made.why);
  const replaced = standing.flatMap(({ change, before }) =>
    before === null ? [] : [{ place: join(place.root, change.path), before, after: change.text }],
  );
  const why = replaceTexts(replaced, disk);
  if (why === null) return { status: 200, reply: { kind: "saved" } };
  for (const { path } of fresh) attempt(() => disk.removeFile(join(place.root, path)));
  const now = servedDesign(source).loaded.files;
  const moved = standing.filter(({ change, before }) => (now.get(change.path) ?? null) !== before);
  return moved.length === 0
    ? refused(507, why)
    : changedOutside(
        moved.map(({ change }) => change.path),
        source,
      );
};

/** A file that is new, or was deleted: never over one that has come meanwhile. */
const writeFresh = (changes: readonly TextChangeMessage[], { place, disk }: DesignSource): void => {
  const made: string[] = [];
  try {
    for (const { path, text } of changes) {
      const target = join(place.root, path);
      disk.makeFolder(dirname(target));
      made.push(target);
      disk.write(target, utf8Bytes(text));
    }
  } catch (error) {
    // The last one failed: where it was there already it is not this run's, else it is half a file.
    const [last, ...whole] = made.toReversed();
    if (last !== undefined && !isThere(error)) attempt(() => disk.removeFile(last));
    for (const target of whole) attempt(() => disk.removeFile(target));
    throw error;
  }
};

const isThere = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "EEXIST";

const changedOutside = (paths: readonly string[], source: DesignSource): SaveOutcome => {
  const { files } = servedDesign(source).loaded;
  return {
    status: 409,
    reply: {
      kind: "changed-outside",
      files: paths.map((path) => ({ path, text: files.get(path) ?? null })),
    },
  };
};

const refused = (status: SaveOutcome["status"], why: string): SaveOutcome => ({
  status,
  reply: { kind: "refused", why },
});
