/**
 * The plans stored in this browser, and the connection to them. The database, version 1:
 *
 * - `generations`, key [planId, revision]: every saved copy of a plan, never changed once written;
 * - `heads`, key planId: which copy is the present one; moved last, in the copy's own transaction;
 * - `notes`: "last" holds the id of the plan that was opened or saved last; "undo PLAN" the steps of
 *   undo that led to a plan's present copy.
 *
 * Connections die: browsers drop them from tabs in the background. So no handle outlives a
 * failure: work that meets a lost connection is done once more over a new one.
 */
import {
  type DBSchema,
  type IDBPDatabase,
  type IDBPTransaction,
  type StoreNames,
  openDB,
} from "idb";
import type { Origin } from "./keeping-rule.ts";
import {
  isCancelled,
  isLostConnection,
  storageNewer,
  storageRefused,
  storageSilent,
} from "./storage-fault.ts";

export const DATABASE = "wideberth";
const VERSION = 1;
/** A browser that has not answered by then is taken for broken, milliseconds. */
const PATIENCE_MS = 10_000;

/** One saved copy of a plan. */
export interface Generation {
  readonly planId: string;
  /** Counts up from 1 within a plan; the order of copies, whatever the clock said. */
  readonly revision: number;
  /** ISO 8601 date and time. */
  readonly savedAt: string;
  readonly origin: Origin;
  readonly title: string;
  /** The plan file's text. */
  readonly text: string;
  readonly checksum: string;
}

/** The present copy of a plan. */
export type Head = Omit<Generation, "text" | "origin">;

export interface PlanDbSchema extends DBSchema {
  generations: {
    key: [string, number];
    value: Generation;
    /** Everything but text and checksum, so that copies can be listed without loading them. */
    indexes: { summary: [string, number, string, Origin, string] };
  };
  heads: { key: string; value: Head };
  notes: { key: string; value: string };
}

export type PlanDb = IDBPDatabase<PlanDbSchema>;

export interface PlanDbEvents {
  /** A tab with an older version holds the database: opening waits until it is closed. */
  readonly blocked: () => void;
  /** A newer version wants the database; it is closed for this tab when the promise settles. */
  readonly outdated: () => Promise<void>;
  /** The connection was ended from outside, as when the database is deleted; it is closed by then. */
  readonly cut: () => void;
}

/** Keys of every copy of a plan, by key or by summary: a list sorts after every number. */
export function copiesOf(planId: string): IDBKeyRange {
  return IDBKeyRange.bound([planId], [planId, []]);
}

/** Under which note the steps of undo of a plan are kept; ids have no spaces. */
export function historyKey(planId: string): string {
  return `undo ${planId}`;
}

let connection: Promise<PlanDb> | null = null;
let isOutdated = false;
/** Opening waits for another tab, which nobody may have been told yet. */
let isBlocked = false;
let events: PlanDbEvents = {
  blocked: () => undefined,
  outdated: () => Promise.resolve(),
  cut: () => undefined,
};

/** Sets who is told about other versions of the program. */
export function watchPlanDb(watcher: PlanDbEvents): void {
  events = watcher;
  if (isBlocked) events.blocked();
}

/** Does some work on the stored plans; over a new connection if the old one is found dead. */
export async function withPlanDb<T>(work: (db: PlanDb) => Promise<T>): Promise<T> {
  const first = connect();
  try {
    return await work(await first);
  } catch (error) {
    if (!isLostConnection(error) || isOutdated) throw error;
    drop(first);
    return work(await connect());
  }
}

/** Something that is done whole or not at all. */
interface Undertaking {
  readonly done: Promise<void>;
  readonly abort: () => void;
}

/** Works within a transaction; settles when it is complete, and undoes everything on a failure. */
export async function within<T>(transaction: Undertaking, work: () => Promise<T>): Promise<T> {
  const ended = transaction.done.then(
    () => null,
    (error: unknown) => ({ error }),
  );
  try {
    const value = await work();
    const failure = await ended;
    if (failure) throw failure.error;
    return value;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    // The transaction may know the cause, such as a full disk, where the request does not.
    const cause = (await ended)?.error;
    throw cause === undefined || isCancelled(cause) ? error : cause;
  }
}

/** Reads from one store. */
export function readFrom<Name extends StoreNames<PlanDbSchema>, T>(
  name: Name,
  work: (store: IDBPTransaction<PlanDbSchema, [Name], "readonly">["store"]) => Promise<T>,
): Promise<T> {
  return withPlanDb((db) => {
    const transaction = db.transaction(name);
    return within(transaction, () => work(transaction.store));
  });
}

let askedHead: { readonly planId: string; readonly answer: Promise<Head | undefined> } | null =
  null;

/** Has the present copy of a plan looked for before it is wanted; who first reads it gets the answer. */
export function askHead(planId: string): void {
  const answer = readFrom("heads", (store) => store.get(planId));
  // Told to whoever reads it.
  answer.catch(() => undefined);
  askedHead = { planId, answer };
}

/** The present copy of a plan; undefined where none is stored. */
export function readHead(planId: string): Promise<Head | undefined> {
  const asked = askedHead?.planId === planId ? askedHead.answer : null;
  if (asked) askedHead = null;
  return asked ?? readFrom("heads", (store) => store.get(planId));
}

/** Closes the connection; the next piece of work opens another. */
export async function closePlanDb(): Promise<void> {
  const closing = connection;
  connection = null;
  await closing?.then(
    (db) => db.close(),
    () => undefined,
  );
}

function connect(): Promise<PlanDb> {
  if (isOutdated) return Promise.reject(storageNewer());
  if (connection) return connection;
  const opening = openDatabase(() => drop(opening));
  connection = opening;
  opening.catch(() => drop(opening));
  return opening;
}

function drop(dead: Promise<PlanDb>): void {
  if (connection === dead) connection = null;
}

async function openDatabase(onClosed: () => void): Promise<PlanDb> {
  if (typeof indexedDB === "undefined") throw storageRefused();
  let patience: ReturnType<typeof setTimeout> | undefined;
  let isLate = false;
  const silence = new Promise<never>((_resolve, reject) => {
    patience = setTimeout(() => {
      isLate = true;
      reject(storageSilent());
    }, PATIENCE_MS);
  });
  try {
    const opening = openDB<PlanDbSchema>(DATABASE, VERSION, {
      upgrade: createStores,
      blocked: () => {
        clearTimeout(patience);
        isBlocked = true;
        events.blocked();
      },
      blocking: (_mine, wanted) => void (wanted === null ? letDelete() : makeWay()),
      terminated: () => {
        onClosed();
        events.cut();
      },
    });
    opening.then(
      (db) => (isLate ? db.close() : undefined),
      () => undefined,
    );
    const db = await Promise.race([opening, silence]);
    isBlocked = false;
    return db;
  } finally {
    clearTimeout(patience);
  }
}

function createStores(db: PlanDb): void {
  const generations = db.createObjectStore("generations", { keyPath: ["planId", "revision"] });
  generations.createIndex("summary", ["planId", "revision", "savedAt", "origin", "title"]);
  db.createObjectStore("heads", { keyPath: "planId" });
  db.createObjectStore("notes");
}

/** A newer version wants the database: what is unsaved goes in first, then this tab lets go. */
async function makeWay(): Promise<void> {
  await events.outdated();
  isOutdated = true;
  await closePlanDb();
}

/** Another page, or the browser's own tools, deletes the database: that cannot be held up. */
async function letDelete(): Promise<void> {
  await closePlanDb();
  events.cut();
}
