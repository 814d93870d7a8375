/**
 * Lots looked up by id, code and variety, which of them a planting is sown from, and what they must
 * remember of lots that go off the shelf.
 */
import { LIMITS } from "../model/limits.ts";
import { foldedCode } from "../model/lot-code.ts";
import type { Lot, Plan, Planting, Variety } from "../model/plan.ts";

export interface LotBook {
  lot(id: string): Lot | undefined;
  /** By its code, whatever the case. */
  ofCode(code: string): Lot | undefined;
  /** All of a variety, in the plan's order, used up and discarded ones too. */
  ofVariety(varietyId: string): readonly Lot[];
  /** Folded codes in use; see core/model/lot-code.ts. */
  readonly codes: ReadonlySet<string>;
}

const books = new WeakMap<Plan["lots"], LotBook>();

/** The same book for the same list of lots. */
export function lotBook(lots: Plan["lots"]): LotBook {
  const known = books.get(lots);
  if (known) return known;
  const made = makeBook(lots);
  books.set(lots, made);
  return made;
}

function makeBook(lots: Plan["lots"]): LotBook {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const byCode = new Map(lots.map((lot) => [foldedCode(lot.code), lot]));
  const byVariety = new Map<string, Lot[]>();
  for (const lot of lots) {
    const list = byVariety.get(lot.variety);
    if (list) list.push(lot);
    else byVariety.set(lot.variety, [lot]);
  }
  return {
    lot: (id) => byId.get(id),
    ofCode: (code) => byCode.get(foldedCode(code)),
    ofVariety: (id) => byVariety.get(id) ?? [],
    codes: new Set(byCode.keys()),
  };
}

/** The lots a planting is sown from, in order of use: its own, else those its variety names. */
export function lotsToSow(
  plan: Pick<Plan, "lots">,
  planting: Pick<Planting, "lots">,
  variety: Pick<Variety, "lots"> | undefined,
): readonly Lot[] {
  const book = lotBook(plan.lots);
  return (planting.lots ?? variety?.lots ?? []).flatMap((id) => book.lot(id) ?? []);
}

/** Their codes as they stand on stakes and packets: `AL-25, AL-26`; empty for none. */
export function lotCodesToSow(
  plan: Pick<Plan, "lots">,
  planting: Pick<Planting, "lots">,
  variety: Pick<Variety, "lots"> | undefined,
): string {
  return lotsToSow(plan, planting, variety)
    .map(({ code }) => code)
    .join(", ");
}

/**
 * Whether seed of a lot may have crossed while it grew: as it is said of it, else as the record
 * that was frozen at harvest has it. Species that rarely cross do not decide it.
 */
export function mayHaveCrossed({ mayHaveCrossed: said, isolation }: Lot): boolean {
  if (said !== undefined || isolation?.standing !== "conflict") return said === true;
  const { sources } = isolation;
  const isClash = ({ standing, relation }: (typeof sources)[number]) =>
    standing === "conflict" && relation !== "rarely";
  return sources.length === 0 || sources.some(isClash);
}

/**
 * Codes of a lot and of those it comes from that were not kept apart. What was looked through and
 * found true has nothing of it, whatever is behind it.
 */
export function crossedForebears(lots: readonly Lot[], start: Lot): readonly string[] {
  const book = lotBook(lots);
  const seen = new Set([start]);
  const codes = new Set<string>();
  for (const lot of seen) {
    if (lot.mayHaveCrossed === false) continue;
    lot.crossedBefore?.forEach((code) => codes.add(code));
    if (mayHaveCrossed(lot)) codes.add(lot.code);
    for (const id of [...(lot.partOf ?? []), ...(lot.grownFrom ?? [])]) {
      const parent = book.lot(id);
      if (parent) seen.add(parent);
    }
  }
  return [...codes];
}

/** What a lot is to remember of parents that go: with what it remembers already; undefined for nothing. */
export function rememberedCrossings(
  lots: readonly Lot[],
  lot: Lot,
  going: (id: string) => boolean,
): string[] | undefined {
  const parents = new Set([...(lot.partOf ?? []), ...(lot.grownFrom ?? [])].filter(going));
  const lost = lots
    .filter(({ id }) => parents.has(id))
    .flatMap((parent) => crossedForebears(lots, parent));
  const codes = [...new Set([...(lot.crossedBefore ?? []), ...lost])];
  return codes.length === 0 ? undefined : codes.slice(0, LIMITS.lotRefs);
}

/**
 * Varieties of which no lot is entered and no reserve asked for: of these nothing can be said. A
 * hybrid's seed is not kept.
 */
export function unshelvedVarieties(plan: Pick<Plan, "lots" | "varieties">): readonly Variety[] {
  const shelf = lotBook(plan.lots);
  return plan.varieties.filter(
    ({ id, hybrid, reserve }) =>
      hybrid !== true && reserve === undefined && shelf.ofVariety(id).length === 0,
  );
}
