/** Faults put into the fake database: refused requests, transactions that die. */
import { vi } from "vitest";

type Method = "add" | "put" | "get" | "getAllKeys" | "openKeyCursor" | "delete";
const METHODS: readonly Method[] = ["add", "put", "get", "getAllKeys", "openKeyCursor", "delete"];

/** Makes a kind of request fail, for so many times or until mended. */
export function breakRequest(method: Method, name: string, times = Infinity): () => void {
  let left = times;
  return onRequest([method], () => {
    if (left <= 0) return;
    left -= 1;
    throw new DOMException("injected", name);
  });
}

/** Lets every request of a write succeed and the transaction fail at its end. */
export function breakTransaction(name: string): () => void {
  const error = new DOMException("injected", name);
  return onRequest(["put"], (store) => {
    const { transaction } = store;
    transaction.addEventListener("abort", () => undefined);
    Object.defineProperty(transaction, "error", { get: () => error });
    setImmediate(() => abort(transaction));
  });
}

/** Counts the requests a piece of work makes. */
export async function requestsOfOneSave(work: () => Promise<void>): Promise<number> {
  let count = 0;
  const mend = onRequest(METHODS, () => {
    count += 1;
  });
  await work();
  mend();
  return count;
}

/** After so many requests nothing reaches the disk any more: open transactions die. */
export function cutAfter(requests: number): () => void {
  let count = 0;
  return onRequest(METHODS, ({ transaction }) => {
    count += 1;
    if (count < requests) return;
    abort(transaction);
    throw new DOMException("injected", "DataError");
  });
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It is over already.
  }
}

function onRequest(
  methods: readonly Method[],
  before: (store: IDBObjectStore) => void,
): () => void {
  const spies = methods.map((method) => {
    const original = IDBObjectStore.prototype[method] as (...args: unknown[]) => IDBRequest;
    return vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (
      this: IDBObjectStore,
      ...args: unknown[]
    ) {
      before(this);
      return original.apply(this, args) as never;
    });
  });
  return () => {
    for (const spy of spies) spy.mockRestore();
  };
}
