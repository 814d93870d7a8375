/** The seed shelf: lots added, changed, split, mixed, moved, tested, removed. */
import { lotBook } from "../lots/lot-book.ts";
import { freeCode } from "../model/lot-code.ts";
import type { GerminationTest, Lot, Plan, SeedAmount } from "../model/plan.ts";
import { withoutMentions } from "./object-edits.ts";
import { type Edit, mapItem, mapItems, nextId, patched } from "./edit.ts";
import * as steps from "../words/shelf-step-words.ts";

type Changes<T> = { readonly [Key in keyof Omit<T, "id">]?: T[Key] | undefined };

/** An id no lot of the plan has. */
export function nextLotId(plan: Pick<Plan, "lots">): string {
  return nextId(
    "lot-",
    plan.lots.map(({ id }) => id),
  );
}

export function addLots(lots: readonly Lot[], title = steps.addLot(lots[0]?.code ?? "")): Edit {
  return {
    title,
    apply: (plan) => (lots.length === 0 ? plan : { ...plan, lots: [...plan.lots, ...lots] }),
  };
}

/** Puts each lot in the place of the one with its id, or at the end: one step for all. */
export function putLots(lots: readonly Lot[], title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const coming = new Map(lots.map((lot) => [lot.id, lot]));
      const known = new Set(plan.lots.map(({ id }) => id));
      const kept = mapItems(plan.lots, (lot) => coming.get(lot.id) ?? lot);
      const fresh = lots.filter(({ id }) => !known.has(id));
      return { ...plan, lots: fresh.length === 0 ? kept : [...kept, ...fresh] };
    },
  };
}

export function changeLots(ids: readonly string[], changes: Changes<Lot>, title: string): Edit {
  return eachLot(ids, (lot) => patched(lot, changes), title);
}

function eachLot(ids: readonly string[], change: (lot: Lot) => Lot, title: string): Edit {
  const chosen = new Set(ids);
  return {
    title,
    apply: (plan) => {
      const lots = mapItems(plan.lots, (lot) => (chosen.has(lot.id) ? change(lot) : lot));
      return lots === plan.lots ? plan : { ...plan, lots };
    },
  };
}

/** Removes lots and every mention of them. A lot that is only used up is better kept, in that state. */
export function removeLots(ids: readonly string[], title: string): Edit {
  const gone = new Set(ids);
  return {
    title,
    apply: (plan) => {
      const lots = plan.lots.filter(({ id }) => !gone.has(id));
      return lots.length === plan.lots.length
        ? plan
        : withoutMentions({ ...plan, lots }, gone, plan);
    },
  };
}

/**
 * Splits an amount off a lot: the new lot has the parent's facts under a code of its own, the
 * parent keeps the rest. Nothing happens where the parent has no amount in the part's unit, or
 * less than the part.
 */
export function splitLot(id: string, part: SeedAmount, code: string): Edit {
  return {
    title: steps.splitLot(code),
    apply: (plan) => {
      const lot = lotBook(plan.lots).lot(id);
      if (!lot?.amount || lot.amount.unit !== part.unit || lot.amount.value < part.value) {
        return plan;
      }
      const value = lot.amount.value - part.value;
      const rest = patched(lot, { amount: { ...lot.amount, value } });
      const free = freeCode(code.trim() === "" ? lot.code : code.trim(), lotBook(plan.lots).codes);
      const { partOf: _parents, ...facts } = lot;
      const made: Lot = { ...facts, id: nextLotId(plan), code: free, amount: part, partOf: [id] };
      return { ...plan, lots: [...mapItem(plan.lots, id, () => rest), made] };
    },
  };
}

/**
 * Mixes lots of one variety into a new one that names them all; they are used up. What they do not
 * agree on is left open, and a mixture with treated seed in it is treated. Nothing happens for
 * fewer than two lots, or lots of more than one variety.
 */
export function mixLots(ids: readonly string[], code: string): Edit {
  return {
    title: steps.mixLots(ids.length, code),
    apply: (plan) => {
      const book = lotBook(plan.lots);
      const lots = [...new Set(ids)].flatMap((id) => book.lot(id) ?? []);
      const [first] = lots;
      if (!first || lots.length < 2 || lots.some(({ variety }) => variety !== first.variety)) {
        return plan;
      }
      const chosen = new Set(ids);
      const used = mapItems(plan.lots, (lot) => (chosen.has(lot.id) ? usedUp(lot) : lot));
      return {
        ...plan,
        lots: [...used, mixture(lots, nextLotId(plan), freeCode(code, book.codes))],
      };
    },
  };
}

function usedUp(lot: Lot): Lot {
  return patched(lot, {
    state: "used up",
    ...(lot.amount ? { amount: { ...lot.amount, value: 0 } } : {}),
  });
}

function mixture(lots: readonly Lot[], id: string, code: string): Lot {
  const first = lots[0] as Lot;
  const agreed = <T>(of: (lot: Lot) => T): T | undefined =>
    lots.every((lot) => JSON.stringify(of(lot)) === JSON.stringify(of(first)))
      ? of(first)
      : undefined;
  const unit = agreed(({ amount }) => amount?.unit);
  const value = lots.reduce((sum, { amount }) => sum + (amount?.value ?? 0), 0);
  const isTreated = lots.some(
    ({ treated, treatedWith }) => treated === true || treatedWith !== undefined,
  );
  const means = [...new Set(lots.flatMap(({ treatedWith }) => treatedWith ?? []))];
  return patched<Lot>(
    { id, code, variety: first.variety, state: "in stock", partOf: lots.map((lot) => lot.id) },
    {
      harvestYear: agreed((lot) => lot.harvestYear),
      from: agreed((lot) => lot.from),
      // Of one harvest, the parts were isolated alike; of several, each parent keeps its own record.
      grownFrom: agreed((lot) => lot.grownFrom),
      isolation: agreed((lot) => lot.isolation),
      stored: agreed((lot) => lot.stored),
      seedsPerGram: agreed((lot) => lot.seedsPerGram),
      amount: unit === undefined ? undefined : { unit, value },
      treated: isTreated ? true : agreed(({ treated }) => treated),
      treatedWith: means.length > 0 ? means.join(", ").slice(0, 200) : undefined,
    },
  );
}

/** Records that lots lie in a place from a day on. The same day twice: the later word stands. */
export function moveLots(
  ids: readonly string[],
  place: string,
  from: number | undefined,
  title: string,
): Edit {
  return eachLot(
    ids,
    (lot) => {
      const before = (lot.stored ?? []).filter(
        (stay) => from !== undefined && (stay.from === undefined || stay.from < from),
      );
      const stay = from === undefined ? { place } : { place, from };
      return { ...lot, stored: [...before, stay] };
    },
    title,
  );
}

/** Adds a germination test, or puts it in the place of the one with its id. */
export function putTest(lotId: string, test: GerminationTest, title: string): Edit {
  return eachLot(
    [lotId],
    (lot) => {
      const others = (lot.tests ?? []).filter(({ id }) => id !== test.id);
      return { ...lot, tests: [...others, test].sort((a, b) => a.date - b.date) };
    },
    title,
  );
}

export function removeTest(lotId: string, testId: string, title: string): Edit {
  return eachLot(
    [lotId],
    (lot) => {
      const tests = (lot.tests ?? []).filter(({ id }) => id !== testId);
      return patched(lot, { tests: tests.length === 0 ? undefined : tests });
    },
    title,
  );
}

/** An id no test of the lot has. */
export function nextTestId(lot: Pick<Lot, "tests">): string {
  return nextId(
    "t",
    (lot.tests ?? []).map(({ id }) => id),
  );
}
