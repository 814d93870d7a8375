/** A page as far as the store needs one: storage, locks, visibility, leaving. Fresh for every test. */
import {
  IDBCursor,
  IDBCursorWithValue,
  IDBDatabase,
  IDBFactory,
  IDBIndex,
  IDBKeyRange,
  IDBObjectStore,
  IDBOpenDBRequest,
  IDBRequest,
  IDBTransaction,
  IDBVersionChangeEvent,
} from "fake-indexeddb";
import { vi } from "vitest";
import { FakeLocks } from "./fake-locks.ts";

const DATABASE_CLASSES = {
  IDBCursor,
  IDBCursorWithValue,
  IDBDatabase,
  IDBIndex,
  IDBKeyRange,
  IDBObjectStore,
  IDBOpenDBRequest,
  IDBRequest,
  IDBTransaction,
  IDBVersionChangeEvent,
};

export class FakeDocument extends EventTarget {
  visibilityState: DocumentVisibilityState = "visible";
  /** Links made, and how often each was clicked. */
  readonly links: { href: string; download: string; clicks: number }[] = [];

  createElement(): object {
    const link = { href: "", download: "", clicks: 0 };
    this.links.push(link);
    return Object.defineProperty(link, "click", {
      value: () => {
        link.clicks += 1;
      },
    });
  }

  become(visibility: DocumentVisibilityState): void {
    this.visibilityState = visibility;
    this.dispatchEvent(new Event("visibilitychange"));
  }
}

/** Small storage that writes at once. That of a session is a tab's own and outlives a reload. */
export class FakeNotes {
  private readonly notes = new Map<string, string>();

  getItem(key: string): string | null {
    return this.notes.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    this.notes.set(key, value);
  }

  removeItem(key: string): void {
    this.notes.delete(key);
  }

  get length(): number {
    return this.notes.size;
  }
}

export interface FakePage {
  readonly document: FakeDocument;
  readonly window: EventTarget & { readonly confirm: ReturnType<typeof vi.fn> };
  /** Whether closing the tab now would ask the grower first. */
  warnsOnLeaving(): boolean;
}

export interface PageWants {
  readonly locks?: boolean;
}

export function layPage({ locks = true }: PageWants = {}): FakePage {
  const document = new FakeDocument();
  const window = Object.assign(new EventTarget(), { confirm: vi.fn(() => false) });
  for (const [name, value] of Object.entries(DATABASE_CLASSES)) vi.stubGlobal(name, value);
  vi.stubGlobal("indexedDB", new IDBFactory());
  vi.stubGlobal("document", document);
  vi.stubGlobal("window", window);
  vi.stubGlobal("sessionStorage", new FakeNotes());
  vi.stubGlobal("localStorage", new FakeNotes());
  vi.stubGlobal("navigator", locks ? { locks: new FakeLocks() } : {});
  return {
    document,
    window,
    warnsOnLeaving: () => !window.dispatchEvent(new Event("beforeunload", { cancelable: true })),
  };
}
