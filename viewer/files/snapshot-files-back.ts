// Shapes and photographs of a snapshot that is brought back: those that are not there now are put beside the texts again, those that
// are another file by now stay, and what is missing is named.

import { isSameBytes } from "../../src/pack/same-bytes.ts";
import { addBinary, binaryAt } from "../desk.ts";
import { contentAt } from "./snapshot-bytes.ts";
import type { HeldContent, SnapshotFiles } from "./snapshot-plan.ts";
import { store } from "./stored-state.ts";

export interface FilesBack {
  readonly back: readonly string[];
  /** Of each that was not brought back, in words. */
  readonly stays: readonly string[];
}

export async function bringFilesBack({ files, leftOut }: SnapshotFiles): Promise<FilesBack> {
  const back: string[] = [];
  const stays: string[] = [];
  for (const [path, content] of files ?? []) {
    const outcome = await broughtBack(path, content);
    if (outcome === BACK) back.push(path);
    else if (outcome !== null) stays.push(outcome);
  }
  for (const path of leftOut)
    if (binaryAt(path) === undefined) stays.push(`${path} is missing, and the snapshot has none`);
  return { back, stays };
}

const BACK = "back";

/** null: it is there, the same. */
const broughtBack = async (path: string, content: HeldContent): Promise<string | null> => {
  const bytes = await contentAt(content);
  const now = binaryAt(path);
  if (bytes === null) return `${path} is not kept any more`;
  if (now !== undefined && now !== null)
    return isSameBytes(now, bytes)
      ? null
      : `${path} is another file now and stays; compare to save the one of the snapshot`;
  if (now === null) return `${path} is too large to be read and stays`;
  const placed = await store.value?.keepPicture(path, bytes);
  addBinary(path, bytes);
  return placed?.kind === "refused" ? `${path} is in the page alone: ${placed.why}` : BACK;
};
