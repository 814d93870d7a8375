/** What the menu of objects offers, in groups of command ids. */
import type { Layout, Plan } from "../../core/model/plan.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import type { Command } from "../commands/command.ts";
import type { CommandId } from "./all-commands.ts";
import { hideableWords, setHidden } from "./hidden-words.ts";
import { selectedObjects } from "../state/selected-objects.ts";
import * as words from "./words.ts";

/** On the empty sheet. */
export const sheetMenuIds: readonly (readonly CommandId[])[] = [
  ["paste", "select-all"],
  ["new-bed", "bed-rows", "new-ground", "place"],
  ["fit-all", "unlock-all", "commands"],
];

/** Only what can ever be done to such objects: several cannot be renamed, one cannot be lined up. */
export function objectMenuIds(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
): readonly (readonly CommandId[])[] {
  const { beds, plantings } = selectedObjects(plan, layout, ids);
  const isOne = ids.length === 1;
  const isLocked = [...layout.beds, ...layout.plantings, ...plan.surroundings].some(
    ({ id, locked }) => ids.includes(id) && locked === true,
  );
  const ofOneBed: readonly CommandId[] =
    isOne && beds.length === 1 ? ["place", "share-bed", "cut-bed"] : [];
  const ofPlantings: readonly CommandId[] =
    plantings.length > 0 ? ["select-variety", "select-bed"] : [];
  const lineUp: readonly CommandId[] = ["line-up", "spread-across", "spread-along"];
  return [
    [...(isOne ? (["rename"] as const) : []), ...ofOneBed, "duplicate", "array"],
    ...(isOne ? [] : [lineUp]),
    ["cut", "copy", "paste"],
    [isLocked ? "unlock" : "lock", "select-kind", ...ofPlantings],
    ["show-selection"],
    ["delete"],
  ];
}

/** Hides everything of the one kind that is chosen; null where it has no switch or they differ. */
export function hideChosenCommand(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
): Command | null {
  const { beds, plantings, surroundings } = selectedObjects(plan, layout, ids);
  const kinds: readonly (HideableKind | null)[] = [
    ...(beds.length > 0 ? [null] : []),
    ...(plantings.length > 0 ? ["plantings" as const] : []),
    ...(surroundings.length > 0 ? ["surroundings" as const] : []),
  ];
  const [kind] = kinds;
  if (kinds.length !== 1 || !kind) return null;
  return {
    id: "hide-chosen",
    name: words.hideAll(hideableWords[kind]),
    group: "view",
    run: () => setHidden(kind, true),
  };
}
