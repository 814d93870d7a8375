/** Places where seed is kept. */
import type { Plan, StoragePlace } from "../model/plan.ts";
import { type Edit, mapItem, mapItems, nextId, patched } from "./edit.ts";
import * as steps from "../words/shelf-step-words.ts";

/** An id no storage place of the plan has. */
export function nextPlaceId(plan: Pick<Plan, "storagePlaces">): string {
  return nextId(
    "place-",
    plan.storagePlaces.map(({ id }) => id),
  );
}

/** Adds a place, or puts it in the place of the one with its id. */
export function putStoragePlace(place: StoragePlace): Edit {
  return {
    title: steps.changePlace(place.name),
    apply: (plan) => {
      const isKnown = plan.storagePlaces.some(({ id }) => id === place.id);
      const storagePlaces = isKnown
        ? mapItem(plan.storagePlaces, place.id, () => place)
        : [...plan.storagePlaces, place];
      return { ...plan, storagePlaces };
    },
  };
}

/** Removes a place; the stays of lots there go too, and where they lie is then not known. */
export function removeStoragePlace({ id, name }: Pick<StoragePlace, "id" | "name">): Edit {
  return {
    title: steps.deletePlace(name),
    apply: (plan) => {
      const storagePlaces = plan.storagePlaces.filter((place) => place.id !== id);
      if (storagePlaces.length === plan.storagePlaces.length) return plan;
      const lots = mapItems(plan.lots, (lot) => {
        if (!lot.stored?.some(({ place }) => place === id)) return lot;
        const stays = lot.stored.filter(({ place }) => place !== id);
        return patched(lot, { stored: stays.length === 0 ? undefined : stays });
      });
      return { ...plan, storagePlaces, lots };
    },
    note: (plan) => {
      const count = plan.lots.filter((lot) => lot.stored?.some(({ place }) => place === id)).length;
      return count === 0 ? null : steps.lotsLeft(count);
    },
  };
}
