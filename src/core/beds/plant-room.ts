/** How many plants a piece of ground takes at its kind's spacing, and what plants in rows need. */
import type { Kind } from "../kinds/crop.ts";
import { outlineArea, outlineOf } from "../geometry/outline.ts";
import type { AreaShape } from "../model/plan.ts";
import { plantsInRows, rowsDirection, turnedRings } from "./rows-on-ground.ts";
import { FALLBACK_SPACING_M } from "./stretch.ts";

export interface PlantRoom {
  /** Between plants in the row and between rows, metres. */
  readonly inRowM: number;
  readonly betweenRowsM: number;
  /** Id of the source of the spacing; null where the kind names none and ours is assumed. */
  readonly source: string | null;
  /** Rows beside each other and plants in each; null where the ground is no rectangle. */
  readonly grid: { readonly rows: number; readonly perRow: number } | null;
  /** Plants that fit, at least one. */
  readonly plants: number;
}

/** Rounding of typed lengths must not cost a plant. */
const EPSILON = 1e-6;

/** Rows run along the length of a rectangle; other ground takes what stands in rows on it, or by its area. */
export function plantRoom(kind: Kind, shape: AreaShape): PlantRoom {
  const inRowM = kind.spacing?.inRowM.value ?? FALLBACK_SPACING_M.inRow;
  const betweenRowsM = kind.spacing?.betweenRowsM.value ?? FALLBACK_SPACING_M.betweenRows;
  const source = kind.spacing?.inRowM.source ?? null;
  const fitting = (metres: number, spacingM: number) =>
    Math.max(1, Math.floor(metres / spacingM + EPSILON));
  if (shape.shape === "rectangle") {
    const grid = {
      rows: fitting(shape.widthM, betweenRowsM),
      perRow: fitting(shape.lengthM, inRowM),
    };
    return { inRowM, betweenRowsM, source, grid, plants: grid.rows * grid.perRow };
  }
  const byArea = fitting(outlineArea(outlineOf(shape)), inRowM * betweenRowsM);
  const rings = turnedRings(shape, rowsDirection(shape));
  const plants = Math.max(byArea, plantsInRows(rings, inRowM, betweenRowsM).plants);
  return { inRowM, betweenRowsM, source, grid: null, plants };
}

/** Length that plants take when they stand in so many rows, metres. */
export function rowLength(room: PlantRoom, plants: number, rows: number): number {
  return Math.max(1, plantsInRow(plants, rows)) * room.inRowM;
}

/** Plants in each row; where they do not divide, the last row holds fewer. */
export function plantsInRow(plants: number, rows: number): number {
  return Math.ceil(plants / Math.max(1, rows));
}
