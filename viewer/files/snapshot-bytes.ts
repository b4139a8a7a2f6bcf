// Shapes and photographs of snapshots in the browser's keep: put there with a snapshot, given back by their content, and taken out
// when no snapshot has them any more. Loaded when a design has such files.

import type { DesignBinaries } from "../core-messages.ts";
import type { Content } from "../history.ts";
import { forget, keep, keptAt, keptKeys } from "./browser-keep.ts";
import { contentPlan, type HeldContents } from "./snapshot-plan.ts";

export interface KeptContents {
  readonly files: HeldContents;
  readonly leftOut: readonly string[];
}

/** `others`: what the other snapshots hold. Never throws for want of room: what finds none is named. */
export async function keepContents(
  binaries: DesignBinaries,
  others: readonly HeldContents[],
): Promise<KeptContents> {
  const bytesOf = new Map<string, Uint8Array>();
  const wanted = new Map<string, Content>();
  // One that was too large to be read at all is not here to be kept.
  const unread = [...binaries].flatMap(([path, bytes]) => (bytes === null ? [path] : []));
  for (const [path, bytes] of binaries) {
    if (bytes === null) continue;
    const hash = await hashOf(bytes);
    bytesOf.set(hash, bytes);
    wanted.set(path, { hash, size: bytes.length });
  }
  const plan = contentPlan(wanted, others);
  const refused = new Set<string>();
  for (const hash of plan.added)
    await keep("snapshot-bytes", { key: hash, bytes: bytesOf.get(hash) }).catch(() =>
      refused.add(hash),
    );
  const files = [...plan.files].filter(([, { hash }]) => !refused.has(hash));
  const without = [...plan.files].filter(([, { hash }]) => refused.has(hash)).map(([path]) => path);
  return {
    files: new Map(files),
    leftOut: [...plan.leftOut, ...without, ...unread].toSorted(),
  };
}

const atHand = new Map<string, Uint8Array<ArrayBuffer>>();

/** What a step has brought: it may be taken back and done again when no snapshot has it any more. */
export const keepAtHand = ({ hash }: Content, bytes: Uint8Array<ArrayBuffer>): void =>
  void atHand.set(hash, bytes);

/** null: it is not there any more. */
export async function contentAt({ hash }: Content): Promise<Uint8Array<ArrayBuffer> | null> {
  const known = atHand.get(hash);
  if (known !== undefined) return known;
  const record = await keptAt("snapshot-bytes", hash);
  return isContent(record) ? record.bytes : null;
}

/** Takes out what none of these snapshots has. */
export async function sweepContents(held: readonly HeldContents[]): Promise<void> {
  const wanted = new Set(held.flatMap((files) => [...files.values()].map(({ hash }) => hash)));
  for (const key of await keptKeys("snapshot-bytes"))
    if (!wanted.has(key)) await forget("snapshot-bytes", key);
}

const isContent = (value: unknown): value is { readonly bytes: Uint8Array<ArrayBuffer> } =>
  typeof value === "object" &&
  value !== null &&
  "bytes" in value &&
  value.bytes instanceof Uint8Array;

const hashOf = async (bytes: Uint8Array): Promise<string> => {
  const digest = await crypto.subtle.digest("SHA-256", new Uint8Array(bytes));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
};
