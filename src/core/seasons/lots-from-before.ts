/**
 * Lots that came onto the shelf of a plan after the next season's was started from it: seed is
 * cleaned and tested all winter. They are brought after it, and nothing of either shelf is lost.
 */
import { type Edit, nextId, patched } from "../edits/edit.ts";
import { kindsBrought } from "../edits/kinds-brought.ts";
import { lotsWithParents } from "../generations/line.ts";
import { foldedCode, freeCode } from "../model/lot-code.ts";
import type { Lot, OwnKind, Plan, StoragePlace, Variety } from "../model/plan.ts";

export interface LotsBrought {
  /** As they will stand on this plan's shelf. */
  readonly lots: readonly Lot[];
  /** Places, varieties and own kinds they need that this plan has not. */
  readonly places: readonly StoragePlace[];
  readonly varieties: readonly Variety[];
  readonly ownKinds: readonly OwnKind[];
  /** Codes that stand for other seed here, and the new ones under which those lots come. */
  readonly recoded: readonly { readonly from: string; readonly to: string }[];
}

/**
 * Lots of an earlier plan that are not on this plan's shelf. A lot is known by its code, which
 * stands on the packet, its variety and harvest year: ids are numbered by each plan for itself.
 */
export function lotsFromBefore(plan: Plan, before: Plan): LotsBrought {
  const kinds = kindsBrought(before.ownKinds, plan, () => "here");
  const varieties = varietiesBrought(plan, before, kinds.idOf);
  const places = placesBrought(plan, before);
  const twins = twinsOf(plan, before, varieties.idOf);
  // Their plots stay behind: what they were sown from comes with them.
  const coming = lotsWithParents(before).filter(({ id }) => !twins.has(id));
  const ids = lotIds(plan, coming, twins);
  const codes = new Set(plan.lots.map(({ code }) => foldedCode(code)));
  const recoded: { from: string; to: string }[] = [];
  const lots = coming.map((lot) => {
    const code = freeCode(lot.code, codes);
    codes.add(foldedCode(code));
    if (code !== lot.code) recoded.push({ from: lot.code, to: code });
    return patched<Lot>(
      { ...lot, code, id: ids.get(lot.id) ?? lot.id, variety: varieties.idOf(lot.variety) },
      {
        partOf: lot.partOf?.map((id) => ids.get(id) ?? id),
        grownFrom: lot.grownFrom?.map((id) => ids.get(id) ?? id),
        stored: lot.stored?.map((stay) => ({ ...stay, place: places.idOf(stay.place) })),
      },
    );
  });
  const needs = new Set(lots.map(({ variety }) => variety));
  const lain = new Set(lots.flatMap(({ stored = [] }) => stored.map(({ place }) => place)));
  const newVarieties = varieties.coming.filter(({ id }) => needs.has(id));
  const grown = new Set(newVarieties.map(({ kind }) => kind));
  const known = new Set(plan.ownKinds.map(({ id }) => id));
  return {
    lots,
    places: places.coming.filter(({ id }) => lain.has(id)),
    varieties: newVarieties,
    ownKinds: kinds.ownKinds.filter(({ id }) => grown.has(id) && !known.has(id)),
    recoded,
  };
}

/** Puts them on the shelf in one step. */
export function takeLots(brought: LotsBrought, title: string): Edit {
  const { lots, places, varieties, ownKinds } = brought;
  return {
    title,
    apply: (plan) =>
      lots.length === 0
        ? plan
        : {
            ...plan,
            lots: [...plan.lots, ...lots],
            storagePlaces: [...plan.storagePlaces, ...places],
            varieties: [...plan.varieties, ...varieties],
            ownKinds: [...plan.ownKinds, ...ownKinds],
          },
  };
}

/** For lots of the plan before that are on this shelf already, by id: which lot of this plan. */
function twinsOf(
  plan: Plan,
  before: Plan,
  varietyOf: (id: string) => string,
): ReadonlyMap<string, string> {
  const here = new Map(plan.lots.map((lot) => [foldedCode(lot.code), lot]));
  const twins = new Map<string, string>();
  for (const lot of before.lots) {
    const code = foldedCode(lot.code);
    const other = here.get(code);
    if (!other) continue;
    const variety = varietyOf(lot.variety);
    const twin = isOneLot(lot, other, variety)
      ? other
      : // Brought before, under the code it was given then.
        plan.lots.find((each) => {
          const isRecoded = foldedCode(each.code).startsWith(`${code}-`);
          return isRecoded && isOneLot(lot, each, variety) && hasOneOrigin(lot, each);
        });
    if (twin) twins.set(lot.id, twin.id);
  }
  return twins;
}

/** @param variety the lot's, as this plan has it */
function isOneLot(lot: Lot, other: Lot, variety: string): boolean {
  const [year, otherYear] = [lot.harvestYear, other.harvestYear];
  const isOneYear = year === undefined || otherYear === undefined || year === otherYear;
  return other.variety === variety && isOneYear;
}

function hasOneOrigin(lot: Lot, other: Lot): boolean {
  return JSON.stringify(lot.from ?? null) === JSON.stringify(other.from ?? null);
}

/** Id in this plan of each lot of the one before: its twin's, its own, or one that is free. */
function lotIds(
  plan: Plan,
  coming: readonly Lot[],
  twins: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  const taken = new Set(plan.lots.map(({ id }) => id));
  const ids = new Map(twins);
  for (const { id } of coming) {
    const free = taken.has(id) ? nextId("lot-", taken) : id;
    taken.add(free);
    ids.set(id, free);
  }
  return ids;
}

interface Brought<T> {
  /** Things of the plan before that this one has not, under ids that are free in it. */
  readonly coming: readonly T[];
  readonly idOf: (id: string) => string;
}

/** One variety is the other by kind and name. */
function varietiesBrought(
  plan: Plan,
  before: Plan,
  kindOf: (id: string) => string,
): Brought<Variety> {
  const sign = (kind: string, name: string) =>
    `${kind} ${name.normalize("NFC").trim().toLowerCase()}`;
  return broughtThings<Variety>(
    plan.varieties,
    before.varieties.map((variety) => {
      const { lots: _lots, toSetOut: _roots, wantedPlants: _plants, ...rest } = variety;
      return { ...rest, kind: kindOf(variety.kind) };
    }),
    ({ kind, name }) => sign(kind, name),
    "variety-",
  );
}

function placesBrought(plan: Plan, before: Plan): Brought<StoragePlace> {
  return broughtThings<StoragePlace>(
    plan.storagePlaces,
    before.storagePlaces,
    ({ name }) => name.normalize("NFC").trim().toLowerCase(),
    "place-",
  );
}

/** Things are one where id and sign are the same, else where the sign is. */
function broughtThings<T extends { readonly id: string }>(
  here: readonly T[],
  there: readonly T[],
  signOf: (item: T) => string,
  prefix: string,
): Brought<T> {
  const byId = new Map(here.map((item) => [item.id, item]));
  const bySign = new Map(here.map((item) => [signOf(item), item]));
  const taken = new Set(byId.keys());
  const ids = new Map<string, string>();
  const coming: T[] = [];
  for (const item of there) {
    const same = byId.get(item.id);
    const twin = same && signOf(same) === signOf(item) ? same : bySign.get(signOf(item));
    if (twin) {
      ids.set(item.id, twin.id);
      continue;
    }
    const id = taken.has(item.id) ? nextId(prefix, taken) : item.id;
    taken.add(id);
    ids.set(item.id, id);
    coming.push({ ...item, id });
  }
  return { coming, idOf: (id) => ids.get(id) ?? id };
}
