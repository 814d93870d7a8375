/**
 * Plantings tangled in conflicts with one another, and how many of them can stay as they are.
 * Exact for the places, dates and covers they have now; it says nothing about other places.
 */
import type { FindingBase } from "../checks/finding.ts";
import type { CheckResult } from "../checks/run-checks.ts";
import { tangleSentences as words } from "./tangle-words.ts";

export interface Tangle {
  /** Plantings that conflicts tie together, directly or through others, in the order of the layout. */
  readonly ids: readonly string[];
  /** One largest set of them in which none is in conflict with another or with the surroundings. */
  readonly canStay: readonly string[];
}

/** With more tied together, counting through would take too long. */
const COUNTED_MOST = 24;

/** The tangle a conflict belongs to; null for a mere pair, and where it is too large to count through. */
export function tangleOf(result: CheckResult, finding: FindingBase): Tangle | null {
  const enemies = enemiesOf(result);
  const found = new Set<string>();
  const waiting = finding.subjects.filter((id) => isPlanting(result, id));
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    for (const enemy of enemies.get(id) ?? []) if (isPlanting(result, enemy)) waiting.push(enemy);
  }
  if (found.size < 3 || found.size > COUNTED_MOST) return null;
  const ids = result.stands.flatMap(({ id }) => (found.has(id) ? [id] : []));
  const free = ids.filter((id) => [...(enemies.get(id) ?? [])].every((enemy) => found.has(enemy)));
  const largest = largestPeace(free, enemies);
  return { ids, canStay: ids.filter((id) => largest.has(id)) };
}

function isPlanting({ standById }: CheckResult, id: string): boolean {
  return Boolean(standById.get(id)?.planting);
}

/** Whom each stand is in conflict with; conflicts the grower has accepted do not count. */
function enemiesOf({ findings }: CheckResult): ReadonlyMap<string, ReadonlySet<string>> {
  const enemies = new Map<string, Set<string>>();
  const add = (id: string, enemy: string) => {
    const known = enemies.get(id) ?? new Set();
    known.add(enemy);
    enemies.set(id, known);
  };
  for (const { check, severity, subjects } of findings) {
    const [a, b] = subjects;
    if (check !== "isolation" || severity !== "conflict" || !a || !b) continue;
    add(a, b);
    add(b, a);
  }
  return enemies;
}

/** A largest set without enemies in it, by trying the one with most enemies in and out. */
function largestPeace(
  ids: readonly string[],
  enemies: ReadonlyMap<string, ReadonlySet<string>>,
): ReadonlySet<string> {
  const among = (id: string) => ids.filter((other) => enemies.get(id)?.has(other)).length;
  const [most] = [...ids].sort((a, b) => among(b) - among(a));
  if (most === undefined || among(most) === 0) return new Set(ids);
  const rest = ids.filter((id) => id !== most);
  const without = largestPeace(rest, enemies);
  const beside = rest.filter((id) => !enemies.get(most)?.has(id));
  if (beside.length < without.size) return without;
  const within = largestPeace(beside, enemies);
  return within.size + 1 > without.size ? new Set([most, ...within]) : without;
}

/** The tangle in plain sentences that claim no more than was counted. */
export function tangleWords(
  { ids, canStay }: Tangle,
  nameOf: (id: string) => string,
): readonly string[] {
  const leave = ids.length - canStay.length;
  return [
    words.tangled(ids.length, ids.map(nameOf).join(", ")),
    canStay.length === 0
      ? words.noneStays(leave)
      : words.someStay(canStay.length, canStay.map(nameOf).join(", "), leave),
    words.countedHere,
  ];
}
