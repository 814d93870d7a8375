/**
 * Reminds of the plan file: the file is the archive, the browser's storage only the workbench. For
 * every plan the day of its last file and of the first change after it are noted in this browser.
 */
import { create } from "zustand";
import { entriesOf, stored } from "../window/stored.ts";
import { isStorageKept } from "../keeping/keep-storage.ts";

const DAY_MS = 86_400_000;
/** Days a change may be without a file; fewer where the browser may clear its storage unasked. */
export const PATIENCE_DAYS = { kept: 14, clearable: 7 } as const;

interface FileNote {
  /** When the plan last went into a file, ISO 8601; null when it never did. */
  readonly inFile: string | null;
  /** First change the file does not hold, ISO 8601; null when there is none. */
  readonly changed: string | null;
}

type FileNotes = Readonly<Record<string, FileNote>>;

function isFileNote(value: unknown): value is FileNote {
  const isMoment = (moment: unknown) => moment === null || typeof moment === "string";
  return (
    typeof value === "object" &&
    value !== null &&
    "inFile" in value &&
    isMoment(value.inFile) &&
    "changed" in value &&
    isMoment(value.changed)
  );
}

const storedNotes = stored<FileNotes>("wideberth.files", entriesOf(isFileNote));

export const useFileNotes = create<{ readonly notes: FileNotes }>()(() => ({
  notes: storedNotes.load(),
}));

/** The plan lies in a file, or is on its way into one. */
export function noteInFile(planId: string, now = new Date()): void {
  keep(planId, { inFile: now.toISOString(), changed: null });
}

/** The plan was changed and stored in the browser only. */
export function noteChanged(planId: string, now = new Date()): void {
  const { notes } = useFileNotes.getState();
  const before = noteOf(notes, planId);
  if (before?.changed) return;
  keep(planId, { inFile: before?.inFile ?? null, changed: now.toISOString() });
}

/** A plan's id comes from a file: only what was noted under it counts. */
function noteOf(notes: FileNotes, planId: string): FileNote | undefined {
  return Object.hasOwn(notes, planId) ? notes[planId] : undefined;
}

/** Whether a plan went into a file and was not changed since; not, where nothing is known of it. */
export function isWholeInFile(planId: string): boolean {
  const entry = noteOf(useFileNotes.getState().notes, planId);
  return entry !== undefined && entry.inFile !== null && entry.changed === null;
}

/** When a plan last went into a file, ISO 8601, or null. */
export function lastFileOf(notes: FileNotes, planId: string): string | null {
  return noteOf(notes, planId)?.inFile ?? null;
}

/** Whole days the plan's changes have been without a file, once that is too long; else null. */
export function daysWithoutFile(notes: FileNotes, planId: string, now: Date): number | null {
  const since = Date.parse(noteOf(notes, planId)?.changed ?? "");
  if (Number.isNaN(since)) return null;
  const days = Math.floor((now.getTime() - since) / DAY_MS);
  return days >= (isStorageKept() ? PATIENCE_DAYS.kept : PATIENCE_DAYS.clearable) ? days : null;
}

function keep(planId: string, entry: FileNote): void {
  const notes = { ...useFileNotes.getState().notes, [planId]: entry };
  useFileNotes.setState({ notes });
  storedNotes.save(notes);
}
