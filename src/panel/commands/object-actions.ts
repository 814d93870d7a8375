/** What commands do to the selected objects. Loaded when the first of them is used. */
import { type AlignFrame, type AlignSide, alignObjects } from "../../core/edits/align.ts";
import { duplicateObjects } from "../../core/edits/array.ts";
import { type SpreadAxis, distributeObjects, spreadProblem } from "../../core/edits/distribute.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { setLocked, unlockAll } from "../../core/edits/lock.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { lineUpTitle } from "./align-step-words.ts";
import { alike, newIds } from "../state/chosen-objects.ts";
import { commandNow, commit, planNow, windowNow } from "../state/plan-actions.ts";
import { objectNames } from "../../core/model/object-names.ts";
import * as said from "./command-words.ts";

function chosen() {
  const { plan, layoutId, selection } = commandNow();
  const layout = layoutOf(plan, layoutId);
  return { plan, layout, layoutId, selection, names: objectNames(plan, layout, selection) };
}

/** Keeps an edit that adds objects, and selects them. */
export function commitNew(edit: Edit): void {
  const before = planNow();
  commit(edit);
  const after = planNow();
  const ids = newIds(before.plan, after.plan, after.layoutId);
  if (ids.length > 0) windowNow().select(ids);
}

export function duplicateSelection(): void {
  const { layoutId, selection, names } = chosen();
  commitNew(duplicateObjects(layoutId, selection, said.duplicateObjects(names)));
}

export function lockSelection(isLocked: boolean): void {
  const { layoutId, selection, names } = chosen();
  commit(
    setLocked(
      layoutId,
      selection,
      isLocked,
      (isLocked ? said.lockObjects : said.unlockObjects)(names),
    ),
  );
}

export function unlockEverything(): void {
  commit(unlockAll(planNow().layoutId));
}

export function alignSelection(side: AlignSide, frame: AlignFrame): void {
  const { layoutId, selection, names } = chosen();
  const title = lineUpTitle(side, names);
  commit(alignObjects(layoutId, selection, side, frame, title));
}

/** Spaces the selection, or says why it cannot be spaced; that reason is handed back as well. */
export function spreadSelection(
  axis: SpreadAxis,
  frame: AlignFrame,
  gapM: number | null,
): string | null {
  const { plan, layout, layoutId, selection, names } = chosen();
  const problem = spreadProblem(plan, layout, selection, { axis, frame, gapM });
  if (problem === null) {
    commit(distributeObjects(layoutId, selection, { axis, frame, gapM }, said.spaceObjects(names)));
  } else windowNow().announce(said.notSpaced(problem));
  return problem;
}

export function selectAll(): void {
  const { layout } = chosen();
  const ids = [...layout.beds, ...layout.plantings].map(({ id }) => id);
  windowNow().select(ids);
  windowNow().announce(said.selectedCount(ids.length));
}

/** Selects whatever is of the same kind, of the same variety or in the same bed. */
export function selectAlike(what: "kind" | "variety" | "bed"): void {
  const { plan, layout, selection } = chosen();
  const ids = alike(plan, layout, selection, what);
  windowNow().select(ids);
  windowNow().announce(said.selectedCount(ids.length));
}

/** Asked for by key: the menu opens at the focus, or in the middle of the sheet. */
export function openMenuOfSelection(): void {
  const focused = document.activeElement;
  const sheet = document.querySelector(".sheet[data-view]");
  const isSheet = focused === null || focused === document.body || focused === sheet;
  const box = (isSheet ? sheet : focused)?.getBoundingClientRect();
  const { selection, askObjectMenu } = windowNow();
  askObjectMenu({
    ids: selection,
    xPx: box ? box.left + (isSheet ? box.width / 2 : 0) : 0,
    yPx: box ? (isSheet ? box.top + box.height / 2 : box.bottom) : 0,
  });
}
