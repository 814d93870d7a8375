/** An arrangement as a layout of its own. */
import { countBySeverity, runChecks } from "../checks/run-checks.ts";
import type { CropBook } from "../crops/crop-book.ts";
import type { Edit } from "../edits/edit.ts";
import { setOutline } from "../edits/move-objects.ts";
import { copyLayout } from "../edits/layout-edits.ts";
import { addPlantings } from "../edits/object-edits.ts";
import type { Plan, Planting, RectangleShape } from "../model/plan.ts";
import { type ArrangeProblem, type Place, shapeAt } from "./arrange-problem.ts";

export interface MovedPiece {
  readonly id: string;
  readonly outline: RectangleShape;
}

/** The pieces that do not lie where they lay, with their new outlines. */
export function movedPieces(
  problem: ArrangeProblem,
  places: readonly (Place | null)[],
): readonly MovedPiece[] {
  return problem.pieces.flatMap((piece, index) => {
    const place = places[index] ?? null;
    return place === null ? [] : [{ id: piece.id, outline: shapeAt(problem, piece, place) }];
  });
}

/** A copy of a layout with these plantings added and pieces moved; the layout itself stays as it is. */
export function arrangedLayout(
  sourceId: string,
  id: string,
  name: string,
  moved: readonly MovedPiece[],
  added: readonly Planting[] = [],
): Edit {
  const edits = [
    copyLayout(sourceId, id, name),
    addPlantings(id, added, ""),
    ...moved.map((piece) => setOutline(id, piece.id, piece.outline)),
  ];
  return {
    title: `Arrange as ${name}`,
    apply: (plan) => edits.reduce((next, edit) => edit.apply(next), plan),
  };
}

/** Conflicts the checks find in a copy of a layout with these pieces moved. */
export function conflictsArranged(
  plan: Plan,
  layoutId: string,
  moved: readonly MovedPiece[],
  book: CropBook,
): number {
  const newId = `${layoutId} arranged`;
  const after = arrangedLayout(layoutId, newId, "", moved).apply(plan);
  const layout = after.layouts.find(({ id }) => id === newId);
  return layout ? countBySeverity(runChecks(after, layout, book).findings).conflict : 0;
}
