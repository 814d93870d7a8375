/**
 * What every finding has: plain data, JSON-safe, in a stable order. Each check adds what it has to
 * say in a type of its own beside it, and the words for it.
 */
import type { Point } from "../geometry/point.ts";
import { IdPages } from "../lists/id-pages.ts";
import { type IdRanks, inIdOrder } from "../nearness/id-order.ts";
import type { PairColumns } from "../nearness/pair-columns.ts";

/** `conflict`: seed would mix; `caution`: look at it; `unknown`: a figure or date is missing. */
export type Severity = "conflict" | "caution" | "unknown";

/** Two places a finding is measured between, in sheet metres. */
export type Where = readonly [Point, Point];

export interface FindingBase {
  /** Check name and sorted subject ids; the same finding keeps its id while numbers change. */
  readonly id: string;
  /** Name of the check. */
  readonly check: string;
  readonly severity: Severity;
  /** Ids of the plantings, beds and surroundings it is about, sorted. */
  readonly subjects: readonly string[];
  /** Measured distance, metres; absent where the check measures none. */
  readonly measuredM?: number;
  /** Required distance, metres; absent where none is known or none is required. */
  readonly requiredM?: number;
  readonly where?: Where;
}

/** The stable id of a finding. */
export function findingId(check: string, subjects: readonly string[], extra?: string): string {
  // Most are of two, and a move asks for those of all its neighbours.
  const [a = "", b = ""] = subjects;
  if (subjects.length === 2 && extra === undefined) {
    return a < b ? `${check}|${a}|${b}` : `${check}|${b}|${a}`;
  }
  const parts: string[] = [check, ...[...subjects].sort(compareText)];
  if (extra !== undefined) parts.push(extra);
  return parts.join("|");
}

/** How many findings of each severity. */
export function countBySeverity(
  findings: readonly Pick<FindingBase, "severity">[],
): Readonly<Record<Severity, number>> {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  for (const { severity } of findings) counts[severity] += 1;
  return counts;
}

/** Two things each, by their places in a list. */
interface Twos {
  readonly one: PairColumns["one"];
  readonly other: PairColumns["other"];
  readonly stands: readonly { readonly id: string }[];
  readonly order: IdRanks;
}

/**
 * Findings about two things each, in the order of their ids and made when they are read.
 * @param found places in the columns of those that are found
 */
export function foundLater<F extends FindingBase>(
  check: F["check"],
  found: Uint32Array,
  { one, other, stands, order }: Twos,
  make: (pair: number, id: string) => F,
): IdPages<F> {
  const pairs = inIdOrder(found, { one, other }, order);
  const idOf = (place: number | undefined) => stands[place ?? -1]?.id ?? "";
  const idAt = (at: number) => {
    const pair = pairs[at] as number;
    return findingId(check, [idOf(one[pair]), idOf(other[pair])]);
  };
  const at = (place: number) => make(pairs[place] as number, idAt(place));
  return IdPages.later({ length: pairs.length, idAt, at });
}

/** Plain code-unit order: the same on every machine and in every locale. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
