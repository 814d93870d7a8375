/** An arrangement as a layout of its own. */
import { type CheckedLayout, checkLayout } from "../checks/checked-layout.ts";
import { countBySeverity } from "../checks/finding.ts";
import type { Edit } from "../edits/edit.ts";
import { setOutline } from "../edits/move-objects.ts";
import { copyLayout } from "../edits/layout-edits.ts";
import { addPlantings } from "../edits/object-edits.ts";
import type { Plan, Planting, RectangleShape } from "../model/plan.ts";
import { type ArrangeProblem, type Place, shapeAt } from "./arrange-problem.ts";
import { rotationWishes, wishesMissed } from "./rotation-wishes.ts";
import * as steps from "../words/shelf-step-words.ts";

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
    title: steps.arrangeAs(name),
    apply: (plan) => edits.reduce((next, edit) => edit.apply(next), plan),
  };
}

/** What the checks say of a layout, as the arranger tells it. */
export interface ArrangedCounts {
  readonly conflicts: number;
  /** Plantings where volunteers may come up, accepted or not. */
  readonly volunteers: number;
  /** Plantings on ground marked with a disease that harms them. */
  readonly marks: number;
  /** Plantings that follow hosts of their diseases too soon, those with volunteers left out. */
  readonly kin: number;
  /** Plantings without an isolation distance that something near may cross with. */
  readonly untold: number;
}

export function arrangedCounts({ plan, result }: CheckedLayout): ArrangedCounts {
  const { stands, findings } = result;
  const missed = stands
    .filter(({ planting }) => planting !== null)
    .map((stand) => wishesMissed(rotationWishes(stand, plan), stand.outline));
  return {
    conflicts: countBySeverity(findings).conflict,
    volunteers: missed.filter(({ volunteers }) => volunteers === 1).length,
    marks: missed.filter(({ marks }) => marks === 1).length,
    kin: missed.filter(({ kin, volunteers }) => kin === 1 && volunteers === 0).length,
    untold: findings.filter(({ check }) => check === "missing-figure").length,
  };
}

/** The same of a copy of a layout with these pieces moved. */
export function countsArranged(
  plan: Plan,
  layoutId: string,
  moved: readonly MovedPiece[],
): ArrangedCounts {
  const newId = `${layoutId}-arranged`;
  const after = arrangedLayout(layoutId, newId, "", moved).apply(plan);
  return arrangedCounts(checkLayout(after, newId));
}
