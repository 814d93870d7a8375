/**
 * The line of a variety: its lots and the plots between them, each lot with what its line has been
 * through. Made of what the lots say: the lots they were grown from, split off or mixed of, the
 * plants they were saved from, and how they were isolated. A lot that says not what it was grown
 * from is followed to its plot, where that plot stands in the open plan.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import { lotsToSow } from "../lots/lot-book.ts";
import { isSameVariety, varietyIndex } from "../lots/variety-index.ts";
import { descentOf, namedParents } from "../lots/lot-descent.ts";
import type { Lot, Plan } from "../model/plan.ts";
import { inbreedingOver } from "./effective-size.ts";
import { growingOf, hasOwnRecord, howItCame, isolationMet } from "./growing.ts";
import type { LineLot, Past } from "./line-lot.ts";

export interface LineBook {
  lot(id: string): LineLot | undefined;
  /** Lots of a variety, by whatever entry of the seed list, each after those it comes from. */
  ofVariety(varietyId: string): readonly LineLot[];
  /** Circles of lots, from child to parent: none of them, nor what is grown of them, has a line. */
  readonly loops: readonly (readonly Lot[])[];
  /** Lots in such circles or grown from one, by id. */
  readonly broken: ReadonlySet<string>;
}

type LinePlan = Pick<Plan, "lots" | "varieties" | "season" | "layouts" | "chosenLayout">;

interface KeptBook {
  readonly varieties: Plan["varieties"];
  readonly book: CropBook;
  readonly lines: LineBook;
}

const kept = new WeakMap<Plan["lots"], KeptBook>();

/** Lines as the lots tell them and the open plan's plots, where a lot does not say what it was sown from. */
export function lineBook(plan: LinePlan, book: CropBook): LineBook {
  return plan.lots.some((lot) => isOfThisSeason(lot, plan))
    ? makeLines(plan, book, parentsInPlan(plan))
    : lineBookOfLots(plan, book);
}

/**
 * Lines as the lots alone tell them: the same for the same lots and varieties, whatever is moved on
 * the sheet. What is sown this season was not harvested in it, so checks need no more.
 */
export function lineBookOfLots(plan: LinePlan, book: CropBook): LineBook {
  const known = kept.get(plan.lots);
  if (known?.varieties === plan.varieties && known.book === book) return known.lines;
  const lines = makeLines(plan, book, (lot) => ({ ids: namedParents(lot), isReadFromPlan: false }));
  kept.set(plan.lots, { varieties: plan.varieties, book, lines });
  return lines;
}

/**
 * The lots, each harvest of the plan's own season with what its plot was sown from: for a plan that
 * goes on without the plots.
 */
export function lotsWithParents(plan: LinePlan): Plan["lots"] {
  if (!plan.lots.some((lot) => isOfThisSeason(lot, plan))) return plan.lots;
  const parentsOf = parentsInPlan(plan);
  const lots = plan.lots.map((lot) => {
    const { ids, isReadFromPlan } = parentsOf(lot);
    return isReadFromPlan ? { ...lot, grownFrom: [...ids] } : lot;
  });
  return lots.some((lot, at) => lot !== plan.lots[at]) ? lots : plan.lots;
}

function makeLines(plan: LinePlan, book: CropBook, parentsOf: (lot: Lot) => Parents): LineBook {
  const { ordered, unordered, loops } = descentOf(plan.lots, (lot) => parentsOf(lot).ids);
  const varieties = varietyIndex(plan.varieties);
  const byId = new Map<string, LineLot>();
  for (const lot of ordered) {
    const { ids, isReadFromPlan } = parentsOf(lot);
    const parents = ids.flatMap((id) => byId.get(id) ?? []);
    const variety = varieties.get(lot.variety);
    const kind = variety && book.kind(variety.kind);
    const how = howItCame(lot, parents.length > 0);
    const growing = how === "grown" ? growingOf(lot, kind) : null;
    const bare = {
      lot,
      variety,
      kind,
      year: lot.harvestYear ?? null,
      how,
      parents,
      isReadFromPlan,
      growing,
      isolation: isolationMet(lot),
    };
    byId.set(lot.id, withPast(bare));
  }
  return {
    lot: (id) => byId.get(id),
    ofVariety: (id) => {
      const asked = varieties.get(id);
      if (!asked) return [];
      return [...byId.values()].filter(({ variety }) => variety && isSameVariety(variety, asked));
    },
    loops,
    broken: new Set(unordered.map(({ id }) => id)),
  };
}

interface Parents {
  readonly ids: readonly string[];
  readonly isReadFromPlan: boolean;
}

/** A harvest of the open plan's own season that does not name what it was sown from. */
function isOfThisSeason({ from, grownFrom, partOf }: Lot, { season }: LinePlan): boolean {
  const isOwn = from?.what === "own" && grownFrom === undefined && partOf === undefined;
  return isOwn && from.plot !== undefined && from.season === season.name;
}

function parentsInPlan(plan: LinePlan): (lot: Lot) => Parents {
  const { layouts, chosenLayout, varieties } = plan;
  const chosen = layouts.filter(({ id }) => id === chosenLayout);
  const inOrder = [...chosen, ...layouts].flatMap(({ plantings }) => plantings);
  const byId = varietyIndex(varieties);
  return (lot) => {
    if (!isOfThisSeason(lot, plan)) return { ids: namedParents(lot), isReadFromPlan: false };
    const planting = inOrder.find(
      ({ code, variety }) => code === lot.from?.plot && variety === lot.variety,
    );
    const sown = planting ? lotsToSow(plan, planting, byId.get(planting.variety)) : [];
    const ids = sown.map(({ id }) => id).filter((id) => id !== lot.id);
    return { ids, isReadFromPlan: ids.length > 0 };
  };
}

function withPast(bare: Omit<LineLot, "past">): LineLot {
  const { parents, growing, isolation, how } = bare;
  const before = parents.map(({ past }) => past);
  const through = parents.reduce<LineLot | null>(
    (most, parent) => (most === null || parent.past.lost > most.past.lost ? parent : most),
    null,
  );
  const size = growing?.size.effective ?? null;
  const lost = through?.past.lost ?? 0;
  const ownWord = hasOwnRecord(bare) ? isolation : null;
  const past: Past = {
    generations:
      Math.max(0, ...before.map(({ generations }) => generations)) + (how === "grown" ? 1 : 0),
    lost: size === null ? lost : 1 - (1 - lost) * (1 - inbreedingOver([size])),
    through,
    hasUnknown: before.some((each) => each.hasUnknown) || (growing !== null && size === null),
    hasCrossing:
      before.some((each) => each.hasCrossing) ||
      ownWord === "not met" ||
      bare.lot.crossedBefore !== undefined,
    hasDoubt: before.some((each) => each.hasDoubt) || ownWord === "not told",
  };
  return { ...bare, past };
}
