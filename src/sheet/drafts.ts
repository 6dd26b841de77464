/** Work that was not saved yet, kept by the browser on this computer only: nothing leaves it. */
export interface Draft {
  /** Of the tab that wrote it. */
  readonly id: string;
  readonly fileName: string;
  /** Milliseconds since 1970, for the list alone. */
  readonly when: number;
  /** The workbook with its changes. */
  readonly bytes: Uint8Array;
}

const store = "drafts";

const database = (): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const asked = indexedDB.open("oxygen-sheet", 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(store, { keyPath: "id" });
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error("the browser's storage does not open"));
  });

const inStore = async <Result>(
  mode: IDBTransactionMode,
  work: (drafts: IDBObjectStore) => IDBRequest<Result>,
): Promise<Result> => {
  const base = await database();
  try {
    return await new Promise<Result>((resolve, reject) => {
      const transaction = base.transaction(store, mode);
      const asked = work(transaction.objectStore(store));
      transaction.oncomplete = () => resolve(asked.result);
      transaction.onabort = () => reject(transaction.error ?? new Error("the browser's storage is full"));
    });
  } finally {
    base.close();
  }
};

export const keepDraft = (draft: Draft): Promise<unknown> => inStore("readwrite", (drafts) => drafts.put(draft));

export const deleteDraft = (id: string): Promise<unknown> => inStore("readwrite", (drafts) => drafts.delete(id));

/** The newest first. */
export const listDrafts = async (): Promise<Draft[]> =>
  (await inStore<Draft[]>("readonly", (drafts) => drafts.getAll() as IDBRequest<Draft[]>)).sort(
    (one, other) => other.when - one.when,
  );
