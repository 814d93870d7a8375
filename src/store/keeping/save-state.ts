/** What the screen says about saving: honest at every moment, in plain words. */
import { create } from "zustand";
import type { Problem } from "../../core/model/problem.ts";
import { monthName } from "../../core/model/day.ts";
import { note } from "./diagnostics.ts";

export type SaveStatus =
  /** The plan to show is still being looked for. */
  | { readonly kind: "loading" }
  /** Stored in this browser; `at` is local time as HH:MM, with the day before it if not today. */
  | { readonly kind: "saved"; readonly at: string }
  | { readonly kind: "saving" }
  | { readonly kind: "unsaved" }
  /** Only in memory; `reason` ends the sentence "Not saved: ...". */
  | { readonly kind: "failed"; readonly reason: string };

export interface SaveState {
  readonly state: SaveStatus;
  /** Another tab writes this plan: here one can only look, or take over. */
  readonly isReadOnly: boolean;
  /** Something worth telling once, until dismissed. */
  readonly notice: string | null;
  /** Why the last file was not opened. */
  readonly problems: readonly Problem[];
}

export interface SaveActions {
  /** Puts the notice and the problems away. */
  readonly dismiss: () => void;
}

export const useSaveState = create<SaveState & SaveActions>()((set) => ({
  state: { kind: "loading" },
  isReadOnly: false,
  notice: null,
  problems: [],
  dismiss: () => set({ notice: null, problems: [] }),
}));

export function tell(notice: string): void {
  note("notice", notice);
  useSaveState.setState({ notice });
}

/** Local time of a moment as HH:MM; a moment of another day carries its date, e.g. `3 Nov 10:02`. */
export function clockText(iso: string, now: Date): string {
  const then = new Date(iso);
  const two = (value: number) => String(value).padStart(2, "0");
  const time = `${two(then.getHours())}:${two(then.getMinutes())}`;
  if (then.toDateString() === now.toDateString()) return time;
  return `${then.getDate()} ${monthName(then.getMonth() + 1)} ${time}`;
}
