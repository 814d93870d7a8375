/** What a conflict ties up, by name, for what is allowed of it. */
import { type CheckedLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import { tiedStands } from "../../core/remedies/candidate-ways.ts";

export interface Named {
  readonly id: string;
  readonly name: string;
}

/** Plantings and pollen sources. */
export function tiedObjects(kept: CheckedLayout): readonly Named[] {
  const { nameOf } = wordingOf(kept);
  return tiedStands(kept).map(({ id }) => ({ id, name: nameOf(id) }));
}

export function tiedVarieties(kept: CheckedLayout): readonly Named[] {
  const varieties = tiedStands(kept).flatMap(({ variety }) => variety ?? []);
  return [...new Map(varieties.map(({ id, name }) => [id, { id, name }])).values()];
}
