/** What the kinds of things that can be hidden are called. */
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";

export const hideableWords: Readonly<Record<HideableKind, string>> = {
  surroundings: "surroundings",
  plantings: "plantings",
  "bed codes": "codes of beds",
  labels: "names and notes",
  rings: "isolation rings",
  "conflict lines": "lines between plantings",
  picture: "picture under the drawing",
  "earlier crops": "earlier crops",
  grid: "grid",
};

const hiddenNow = (things: string) => `Hidden: ${things}.`;
const shownNow = (things: string) => `Shown: ${things}.`;

/** Shows or hides one kind of things; what is hidden is not selected either. */
export function setHidden(kind: HideableKind, isHidden: boolean): void {
  const now = windowNow();
  const hidden = new Set(now.hidden);
  if (isHidden) hidden.add(kind);
  else hidden.delete(kind);
  now.hideKinds(hidden);
  if (isHidden) now.select(stillSeen(kind));
  now.announce((isHidden ? hiddenNow : shownNow)(hideableWords[kind]));
}

/** What of the selection can still be seen: nobody moves what is out of sight. */
function stillSeen(kind: HideableKind): readonly string[] {
  const { shown, layoutId } = planNow();
  const { selection } = windowNow();
  const lists = {
    plantings: layoutOf(shown, layoutId).plantings,
    surroundings: shown.surroundings,
  };
  if (kind !== "plantings" && kind !== "surroundings") return selection;
  const gone = new Set(lists[kind].map(({ id }) => id));
  return selection.filter((id) => !gone.has(id));
}

export function showAllKinds(): void {
  windowNow().showYear(null);
  windowNow().hideKinds(new Set());
  windowNow().announce("Everything is shown.");
}
