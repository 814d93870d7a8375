/** Faults of lots and storage places that a schema cannot see. */
import { civilFromDay, isoFromDay } from "./day.ts";
import { foldedCode } from "./lot-code.ts";
import type { Lot, Plan, StoragePlace } from "./plan.ts";
import { shown } from "./problem.ts";

export interface FieldFault {
  /** Field within the lot or place, e.g. `tests[0].date`. */
  readonly field: string;
  readonly got: string;
  readonly expected: string;
}

/** What is wrong within one lot, apart from others: dates before its harvest, stays out of order. */
export function lotFaults(lot: Lot): readonly FieldFault[] {
  const faults: FieldFault[] = [];
  const add = (field: string, got: string, expected: string) =>
    faults.push({ field, got, expected });
  const { harvestYear } = lot;
  const isEarly = (day: number | undefined) =>
    day !== undefined && harvestYear !== undefined && civilFromDay(day).year < harvestYear;
  if (lot.code.trim() === "") add("code", shown(lot.code), "a code");
  lot.tests?.forEach(({ date }, index) => {
    if (isEarly(date)) {
      add(
        `tests[${index}].date`,
        isoFromDay(date),
        `a day in its harvest year ${harvestYear} or later`,
      );
    }
  });
  const received = lot.from?.on;
  if (received !== undefined && isEarly(received)) {
    add("from.on", isoFromDay(received), `a day in its harvest year ${harvestYear} or later`);
  }
  lot.stored?.forEach(({ from }, index) => {
    const before = lot.stored?.[index - 1]?.from;
    if (from === undefined) {
      if (index > 0) add(`stored[${index}].from`, "nothing", "the day it was moved there");
    } else if (isEarly(from)) {
      add(
        `stored[${index}].from`,
        isoFromDay(from),
        `a day in its harvest year ${harvestYear} or later`,
      );
    } else if (before !== undefined && from < before) {
      add(`stored[${index}].from`, isoFromDay(from), `a day from ${isoFromDay(before)} on`);
    }
  });
  for (const [index, id] of repeated(lot.tests ?? [])) {
    add(`tests[${index}].id`, shown(id), "an id of its own");
  }
  return faults;
}

/** What is wrong within one storage place: two conditions that begin in one month. */
export function placeFaults(place: StoragePlace): readonly FieldFault[] {
  const seen = new Set<number>();
  return (place.conditions ?? []).flatMap(({ fromMonth }, index) => {
    const isTwice = seen.has(fromMonth);
    seen.add(fromMonth);
    if (!isTwice) return [];
    const field = `conditions[${index}].fromMonth`;
    return [{ field, got: String(fromMonth), expected: "a month no other condition begins in" }];
  });
}

type Add = (object: string, field: string, got: string, expected: string) => void;

/** Faults of the whole shelf: within lots and places, codes used twice, references to nothing. */
export function shelfProblems(plan: Plan, add: Add): void {
  const placeIds = new Set(plan.storagePlaces.map(({ id }) => id));
  const varietyIds = new Set(plan.varieties.map(({ id }) => id));
  const lotIds = new Set(plan.lots.map(({ id }) => id));
  for (const [index, id] of repeated(plan.storagePlaces)) {
    add(placeName(plan, index), "id", shown(id), "an id of its own");
  }
  plan.storagePlaces.forEach((place, index) => {
    for (const { field, got, expected } of placeFaults(place)) {
      add(placeName(plan, index), field, got, expected);
    }
  });
  for (const [index, id] of repeated(plan.lots)) {
    add(lotName(plan, index), "id", shown(id), "an id of its own");
  }
  const codes = new Map<string, number>();
  plan.lots.forEach((lot, index) => {
    const object = lotName(plan, index);
    const earlier = codes.get(foldedCode(lot.code));
    if (earlier === undefined) codes.set(foldedCode(lot.code), index);
    else
      add(object, "code", shown(lot.code), `a code of its own (lots[${earlier}] has it already)`);
    if (!varietyIds.has(lot.variety)) {
      add(object, "variety", shown(lot.variety), "the id of a variety in this plan");
    }
    for (const { field, got, expected } of lotFaults(lot)) add(object, field, got, expected);
    lot.stored?.forEach(({ place }, at) => {
      if (!placeIds.has(place)) {
        add(object, `stored[${at}].place`, shown(place), "the id of a storage place in this plan");
      }
    });
    namedLots(lot.partOf, lotIds, (at, id) =>
      add(object, `partOf[${at}]`, shown(id), "the id of a lot in this plan"),
    );
    namedLots(lot.grownFrom, lotIds, (at, id) =>
      add(object, `grownFrom[${at}]`, shown(id), "the id of a lot in this plan"),
    );
  });
}

/** References of a variety or planting to lots that are not there. */
export function lotReferenceProblems(
  thing: { readonly lots?: readonly string[] | undefined },
  object: string,
  lotIds: ReadonlySet<string>,
  add: Add,
): void {
  namedLots(thing.lots, lotIds, (at, id) =>
    add(object, `lots[${at}]`, shown(id), "the id of a lot in this plan"),
  );
}

function namedLots(
  ids: readonly string[] | undefined,
  known: ReadonlySet<string>,
  miss: (index: number, id: string) => void,
): void {
  ids?.forEach((id, index) => {
    if (!known.has(id)) miss(index, id);
  });
}

function lotName(plan: Plan, index: number): string {
  return `lots[${index}] ${shown(plan.lots[index]?.code)}`;
}

function placeName(plan: Plan, index: number): string {
  return `storagePlaces[${index}] ${shown(plan.storagePlaces[index]?.name)}`;
}

/** Items whose id an earlier one has, with their places in the list. */
function repeated(
  items: readonly { readonly id: string }[],
): readonly (readonly [number, string])[] {
  const seen = new Set<string>();
  return items.flatMap(({ id }, index) => {
    if (seen.has(id)) return [[index, id] as const];
    seen.add(id);
    return [];
  });
}
