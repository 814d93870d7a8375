/**
 * What went wrong, written down on this device only, for the grower to read and to copy into a
 * letter. The last entries outlive a crash of the page. Nothing is sent anywhere.
 */
import { create } from "zustand";
import * as words from "./words.ts";

/** Which part of the program an entry is about. */
export type Topic = "program" | "saving" | "notice" | "offline" | "security";

export interface DiagnosticEntry {
  /** ISO 8601 date and time. */
  readonly at: string;
  readonly topic: Topic;
  readonly text: string;
}

/** Entries kept; the oldest go first. */
export const MAX_ENTRIES = 100;
const MAX_TEXT = 500;
const KEY = "wideberth.diagnostics";

export const useDiagnostics = create<{ readonly entries: readonly DiagnosticEntry[] }>()(() => ({
  entries: keptEntries(),
}));

/** Writes an entry down; the same again right after itself is not repeated. */
export function note(topic: Topic, text: string): void {
  const { entries } = useDiagnostics.getState();
  const last = entries.at(-1);
  const short = text.slice(0, MAX_TEXT);
  if (last?.topic === topic && last.text === short) return;
  const entry = { at: new Date().toISOString(), topic, text: short };
  const kept = [...entries, entry].slice(-MAX_ENTRIES);
  useDiagnostics.setState({ entries: kept });
  try {
    localStorage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // Refused or full: the entries last as long as the page.
  }
}

/** Forgets every entry. */
export function clearDiagnostics(): void {
  useDiagnostics.setState({ entries: [] });
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Refused: then nothing was kept either.
  }
}

/** Hears of faults nobody caught; gives back a function that stops. */
export function listenForFaults(page: Window): () => void {
  const thrown = ({ message, filename, lineno }: ErrorEvent) => {
    // The browser says so when it puts off a measure to the next frame: nothing went wrong.
    if (message.startsWith("ResizeObserver loop")) return;
    note("program", `${message} (${filename}:${lineno})`);
  };
  const rejected = ({ reason }: PromiseRejectionEvent) => note("program", String(reason));
  const violated = ({ effectiveDirective, blockedURI }: SecurityPolicyViolationEvent) =>
    note("security", words.refused(effectiveDirective, blockedURI));
  page.addEventListener("error", thrown);
  page.addEventListener("unhandledrejection", rejected);
  page.document.addEventListener("securitypolicyviolation", violated);
  return () => {
    page.removeEventListener("error", thrown);
    page.removeEventListener("unhandledrejection", rejected);
    page.document.removeEventListener("securitypolicyviolation", violated);
  };
}

function keptEntries(): readonly DiagnosticEntry[] {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(value) ? value.filter(isEntry).slice(-MAX_ENTRIES) : [];
  } catch {
    return [];
  }
}

function isEntry(value: unknown): value is DiagnosticEntry {
  return (
    typeof value === "object" &&
    value !== null &&
    "at" in value &&
    typeof value.at === "string" &&
    "topic" in value &&
    typeof value.topic === "string" &&
    "text" in value &&
    typeof value.text === "string"
  );
}
