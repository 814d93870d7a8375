/** A plan's own kinds: added, changed, and removed while nothing needs them. */
import { cropBook } from "../kinds/crop-book.ts";
import type { OwnKind, Plan } from "../model/plan.ts";
import { type Edit, mapItem } from "./edit.ts";
import * as steps from "../words/shelf-step-words.ts";

export function addOwnKind(kind: OwnKind): Edit {
  return {
    title: steps.addKind(kind.name),
    apply: (plan) => ({ ...plan, ownKinds: [...plan.ownKinds, kind] }),
  };
}

/** Puts a kind in the place of the own kind with its id. */
export function changeOwnKind(kind: OwnKind): Edit {
  return {
    title: steps.changeKind(kind.name),
    apply: (plan) => ({ ...plan, ownKinds: mapItem(plan.ownKinds, kind.id, () => kind) }),
  };
}

/** Removes an own kind; nothing happens while something needs it. */
export function removeOwnKind(kind: Pick<OwnKind, "id" | "name">): Edit {
  return {
    title: steps.deleteKind(kind.name),
    apply: (plan) =>
      ownKindRefusal(plan, kind) === null
        ? { ...plan, ownKinds: plan.ownKinds.filter(({ id }) => id !== kind.id) }
        : plan,
  };
}

/**
 * Why an own kind cannot be removed, or null when it can: nothing is of that kind, or a built-in
 * kind of the same id comes back in its place.
 */
export function ownKindRefusal(plan: Plan, kind: Pick<OwnKind, "id" | "name">): string | null {
  if (cropBook().kind(kind.id)) return null;
  const users = [
    ...plan.varieties.filter((variety) => variety.kind === kind.id).map(({ name }) => name),
    ...plan.surroundings.filter((item) => item.kind === kind.id).map(({ label }) => label),
    ...plan.earlierCrops
      .filter((crop) => crop.kind === kind.id)
      .map(({ year }) => steps.crop(year)),
    ...plan.groundMarks
      .filter(({ kinds }) => kinds?.includes(kind.id) === true)
      .map((mark) => steps.mark(mark.name ?? mark.disease)),
  ];
  return users.length === 0 ? null : steps.stays(kind.name, users);
}
