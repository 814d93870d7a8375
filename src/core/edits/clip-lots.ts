/** Lots that go along when plantings are copied from one plan to another. */
import { lotBook, rememberedCrossings } from "../lots/lot-book.ts";
import { foldedCode, freeCode } from "../model/lot-code.ts";
import type { Lot, Plan } from "../model/plan.ts";
import { nextId, patched } from "./edit.ts";

type Naming = { readonly lots?: readonly string[] | undefined };

/** The lots these things name, as far as they are true elsewhere: not where they lie, nor how much. */
export function lotsToCopy(plan: Plan, things: readonly Naming[]): readonly Lot[] {
  const ids = new Set(things.flatMap(({ lots = [] }) => lots));
  if (ids.size === 0) return [];
  return [...ids]
    .flatMap((id) => lotBook(plan.lots).lot(id) ?? [])
    .map((lot) =>
      patched(lot, {
        stored: undefined,
        amount: undefined,
        partOf: undefined,
        grownFrom: undefined,
        crossedBefore: rememberedCrossings(plan.lots, lot, () => true),
      }),
    );
}

/**
 * The plan with the lots that come and are not there yet, matched by code and variety. A code that
 * another variety has here gets a number behind it.
 * @param varietyIdOf ids of coming varieties in the plan
 */
export function withComingLots(
  plan: Plan,
  coming: readonly Lot[],
  varietyIdOf: (id: string) => string,
): { readonly next: Plan; readonly idOf: ReadonlyMap<string, string> } {
  const idOf = new Map<string, string>();
  const lots = [...plan.lots];
  const taken = new Map(lots.map((lot) => [foldedCode(lot.code), lot]));
  for (const lot of coming) {
    const variety = varietyIdOf(lot.variety);
    const same = taken.get(foldedCode(lot.code));
    if (same?.variety === variety) {
      idOf.set(lot.id, same.id);
      continue;
    }
    const id = nextId(
      "lot-",
      lots.map((each) => each.id),
    );
    const made: Lot = { ...lot, id, variety, code: freeCode(lot.code, taken) };
    idOf.set(lot.id, id);
    taken.set(foldedCode(made.code), made);
    lots.push(made);
  }
  return { next: lots.length === plan.lots.length ? plan : { ...plan, lots }, idOf };
}

/** A thing that names its lots by other ids. */
export function renamedLots<T extends Naming>(thing: T, idOf: ReadonlyMap<string, string>): T {
  return thing.lots ? { ...thing, lots: thing.lots.map((id) => idOf.get(id) ?? id) } : thing;
}
