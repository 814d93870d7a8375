/** What the list of findings shows and how: filters, groups unfolded, the finding being solved. */
import { create } from "zustand";
import type { Severity } from "../../core/checks/finding.ts";
import { onAnotherPlan } from "../../store/plan/plan-store.ts";

interface FindingsState {
  readonly without: ReadonlySet<Severity>;
  readonly check: string | null;
  /** Only what is about the selection. */
  readonly isSelectionOnly: boolean;
  /** Ids of the groups that are unfolded. */
  readonly unfolded: ReadonlySet<string>;
  /** The finding whose ways out are looked at, or null. */
  readonly waysOutFor: string | null;
  /** A finding just solved from the list: once it is gone the focus goes to what then stands there. */
  readonly solved: string | null;
  readonly toggleSeverity: (severity: Severity) => void;
  readonly showCheck: (check: string | null) => void;
  readonly setSelectionOnly: (isOn: boolean) => void;
  readonly showAll: () => void;
  readonly toggleGroup: (id: string) => void;
  readonly askWaysOut: (id: string | null) => void;
  /** Closes the ways out of a finding that one of them has just solved. */
  readonly leaveSolved: () => void;
}

const atStart = {
  without: new Set<Severity>(),
  check: null,
  isSelectionOnly: false,
} as const;

export const useFindingsState = create<FindingsState>()((set, get) => ({
  ...atStart,
  unfolded: new Set(),
  waysOutFor: null,
  solved: null,
  toggleSeverity: (severity) => set({ without: toggled(get().without, severity) }),
  showCheck: (check) => set({ check }),
  setSelectionOnly: (isSelectionOnly) => set({ isSelectionOnly }),
  showAll: () => set(atStart),
  toggleGroup: (id) => set({ unfolded: toggled(get().unfolded, id) }),
  askWaysOut: (waysOutFor) => set({ waysOutFor }),
  leaveSolved: () => set({ waysOutFor: null, solved: get().waysOutFor }),
}));

onAnotherPlan(() => {
  useFindingsState.setState({ ...atStart, unfolded: new Set(), waysOutFor: null, solved: null });
});

function toggled<T>(set: ReadonlySet<T>, value: T): ReadonlySet<T> {
  const next = new Set(set);
  if (!next.delete(value)) next.add(value);
  return next;
}
