// What the browser keeps for the page (W3C IndexedDB): recovery copies and snapshots, whole records by their key. Each
// call opens, works and closes, so that no window stands in another's way.

export type KeepName = "recovery" | "recovery-bytes" | "snapshots" | "snapshot-bytes";

export async function keep(name: KeepName, record: object): Promise<void> {
  await work(name, "readwrite", (store) => store.put(record));
}

export async function forget(name: KeepName, key: string): Promise<void> {
  await work(name, "readwrite", (store) => store.delete(key));
}

/** Every record; the caller knows what it has kept under this name. */
export async function kept(name: KeepName): Promise<readonly unknown[]> {
  const found = await work(name, "readonly", (store) => store.getAll());
  return Array.isArray(found) ? found : [];
}

/** The one of this key; undefined where there is none. */
export const keptAt = (name: KeepName, key: string): Promise<unknown> =>
  work(name, "readonly", (store) => store.get(key));

/** Keys alone, where records are large. */
export async function keptKeys(name: KeepName): Promise<readonly string[]> {
  const found = await work(name, "readonly", (store) => store.getAllKeys());
  return Array.isArray(found) ? found.filter((key) => typeof key === "string") : [];
}

const NAMES: readonly KeepName[] = ["recovery", "recovery-bytes", "snapshots", "snapshot-bytes"];

async function work(
  name: KeepName,
  mode: IDBTransactionMode,
  ask: (store: IDBObjectStore) => IDBRequest,
): Promise<unknown> {
  const base = await opened();
  try {
    const transaction = base.transaction(name, mode, { durability: "strict" });
    const done = ended(transaction);
    // Whoever asked is told once, by the request or by the end.
    done.catch(() => undefined);
    const result = await answered(ask(transaction.objectStore(name)));
    await done;
    return result;
  } finally {
    base.close();
  }
}

function opened(): Promise<IDBDatabase> {
  const request = indexedDB.open("consolewright", 3);
  request.addEventListener("upgradeneeded", () => {
    // What an earlier version of the page has kept stays.
    const there = request.result.objectStoreNames;
    for (const each of NAMES)
      if (!there.contains(each)) request.result.createObjectStore(each, { keyPath: "key" });
  });
  return answered(request);
}

const answered = <Result>(request: IDBRequest<Result>): Promise<Result> =>
  new Promise((done, failed) => {
    request.addEventListener("success", () => done(request.result));
    request.addEventListener("error", () => failed(request.error));
  });

/** A full disk shows when a transaction ends, not when it is asked. */
const ended = (transaction: IDBTransaction): Promise<void> =>
  new Promise((done, failed) => {
    transaction.addEventListener("complete", () => done());
    transaction.addEventListener("abort", () => failed(transaction.error));
  });
