/** One writer per plan: the browser's own locks, which a tab that dies gives up by itself. */
import { isCancelled } from "./storage-fault.ts";

/** A lock this tab has. */
export interface Hold {
  readonly release: () => void;
  /** Settles when another tab has taken the lock away; never after a release. */
  readonly lost: Promise<void>;
}

export type LockMode =
  /** Null at once when another tab has it. */
  | "if-free"
  /** Waits for its turn. */
  | "wait"
  /** Takes it from the tab that has it. */
  | "steal";

/** Name of the lock of a plan, the same in every tab. */
export function lockName(planId: string): string {
  return `wideberth plan ${planId}`;
}

let asked: { readonly name: string; readonly answer: Promise<Hold | null> } | null = null;

/** Asks for a lock before it is wanted; whoever first requests it, if it is free, gets the answer. */
export function askLock(name: string): void {
  if (!hasLocks()) return;
  const answer = requestLock(name, "if-free");
  // Told to whoever requests it.
  answer.catch(() => undefined);
  asked = { name, answer };
}

export function hasLocks(): boolean {
  return typeof navigator !== "undefined" && "locks" in navigator;
}

/**
 * Asks for a lock. Null when it is not free, or when the signal ends the wait; rejects when the
 * browser keeps locks from this page.
 */
export function requestLock(
  name: string,
  mode: LockMode,
  signal?: AbortSignal,
): Promise<Hold | null> {
  if (mode === "if-free" && asked?.name === name) {
    const { answer } = asked;
    asked = null;
    return answer;
  }
  return new Promise((resolve, reject) => {
    let isOver = false;
    let letGo: () => void = () => undefined;
    const kept = new Promise<void>((settle) => {
      letGo = settle;
    });
    let markLost: () => void = () => undefined;
    const lost = new Promise<void>((settle) => {
      markLost = settle;
    });
    const release = () => {
      isOver = true;
      letGo();
    };
    const granted = (lock: Lock | null) => {
      resolve(lock && { release, lost });
      return lock ? kept : undefined;
    };
    navigator.locks.request(name, optionsOf(mode, signal), granted).catch((error: unknown) => {
      // Either the lock had been granted and was taken away, or the wait for it has ended.
      if (!isOver) markLost();
      if (isCancelled(error) || isTimeout(error)) resolve(null);
      else reject(error);
    });
  });
}

function isTimeout(error: unknown): boolean {
  return error instanceof DOMException && error.name === "TimeoutError";
}

function optionsOf(mode: LockMode, signal: AbortSignal | undefined): LockOptions {
  if (mode === "steal") return { steal: true };
  if (mode === "if-free") return { ifAvailable: true };
  return signal ? { signal } : {};
}
