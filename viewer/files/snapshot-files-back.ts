// Shapes and photographs of a snapshot that is brought back: those that are not there now are put beside the texts again, those that
// are another file by now stay, and what is missing is named.

import { isSameBytes } from "../../src/pack/same-bytes.ts";
import { addBinary, binaryAt } from "../desk.ts";
import type { Content } from "../history.ts";
import { contentAt, keepAtHand } from "./snapshot-bytes.ts";
import type { SnapshotFiles } from "./snapshot-plan.ts";
import { isLoose, type Store } from "./store.ts";
import { store } from "./stored-state.ts";

export interface BroughtFile {
  readonly path: string;
  readonly content: Content;
  /** Not where the design is kept, but here alone. */
  readonly isInPage: boolean;
}

export interface FilesBack {
  readonly back: readonly BroughtFile[];
  /** Of each that was not brought back, or not into the store, in words. */
  readonly stays: readonly string[];
}

/** `into`: the store of the design that they belong to; as soon as another one is open, no more are brought. */
export async function bringFilesBack(
  { files, leftOut }: SnapshotFiles,
  into: Store | null,
): Promise<FilesBack> {
  const back: BroughtFile[] = [];
  const stays: string[] = [];
  for (const [path, content] of files ?? []) {
    const bytes = await contentAt(content).catch((): Unreadable => "unreadable");
    if (store.value !== into) break;
    const file = fileNow(path, bytes);
    if (file.kind === "stays") stays.push(file.why);
    if (file.kind !== "missing") continue;
    const refusal = await placed(path, file.bytes, into);
    if (store.value !== into) break;
    addBinary(path, file.bytes);
    keepAtHand(content, file.bytes);
    back.push({ path, content, isInPage: refusal !== null || into === null || isLoose(into.id) });
    if (refusal !== null) stays.push(`${path} is in the page alone: ${refusal}`);
  }
  return { back, stays: [...stays, ...missed(leftOut)] };
}

/** Why the store does not take it; null: it does. */
async function placed(path: string, bytes: Bytes, into: Store | null): Promise<string | null> {
  const outcome = await into?.keepPicture(path, bytes);
  return outcome?.kind === "refused" ? outcome.why : null;
}

const missed = (leftOut: readonly string[]): readonly string[] =>
  leftOut
    .filter((path) => binaryAt(path) === undefined)
    .map((path) => `${path} is missing, and the snapshot has none`);

type Unreadable = "unreadable";
type Bytes = Uint8Array<ArrayBuffer>;

type FileNow =
  | { readonly kind: "same" }
  | { readonly kind: "missing"; readonly bytes: Bytes }
  | { readonly kind: "stays"; readonly why: string };

const fileNow = (path: string, bytes: Bytes | Unreadable | null): FileNow => {
  const stays = (why: string): FileNow => ({ kind: "stays", why: `${path} ${why}` });
  if (bytes === "unreadable") return stays("can't be read from the browser's keep");
  if (bytes === null) return stays("is not kept any more");
  const now = binaryAt(path);
  if (now === undefined) return { kind: "missing", bytes };
  if (now === null) return stays("is too large to be read and stays");
  return isSameBytes(now, bytes)
    ? { kind: "same" }
    : stays("is another file now and stays; compare to save the one of the snapshot");
};
