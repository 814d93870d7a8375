/** Words of the dialog that places a variety. */
import type { FoundPlace } from "../../core/beds/find-place.ts";
import { freeStretches } from "../../core/beds/place-planting.ts";
import { plantRoom } from "../../core/beds/plant-room.ts";
import { outlineArea, outlineOf } from "../../core/geometry/outline.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { shortDate } from "../../core/model/day.ts";
import { type LengthUnit, formatArea, formatLength } from "../../core/model/length.ts";
import type { Bed, Layout } from "../../core/model/plan.ts";
import { formOf } from "../../core/words/plurals.ts";

/** Conflicts named before the rest is counted. */
const MOST_NAMED = 3;

/** What the plants will take, and how many do not fit. */
export function placeWords(
  found: FoundPlace | null,
  count: number,
  kind: Kind | undefined,
  unit: LengthUnit,
): string {
  if (!found) return "This bed has no free ground.";
  const { plants, rows, outline } = found.placed;
  const spacing = kind ? `, ${spacingWords(kind, found, unit)}` : "";
  const inRows = `in ${rows} ${formOf(rows, { one: "row", other: "rows" })}${spacing}`;
  if (outline.shape !== "rectangle") {
    const ground = formatArea(outlineArea(outlineOf(outline)), unit);
    return plants < count
      ? `Only ${plants} of ${count} fit in one piece: ${ground} ${inRows}.`
      : `They take ${ground} across the bed, ${inRows}.`;
  }
  const length = formatLength(outline.lengthM, unit);
  return plants < count
    ? `Only ${plants} of ${count} fit: they take ${length} of the bed, the longest free stretch, ${inRows}.`
    : `They take ${length} of the bed, ${inRows}.`;
}

function spacingWords(kind: Kind, { placed }: FoundPlace, unit: LengthUnit): string {
  const { inRowM, betweenRowsM } = plantRoom(kind, placed.outline);
  return `${formatLength(inRowM, unit)} in the row, ${formatLength(betweenRowsM, unit)} between rows`;
}

/** `After A01-1: it starts on 12 Jul, when that is cleared.`; empty on free ground. */
export function followsWords(found: FoundPlace | null): string {
  if (!found?.after || !found.start) return "";
  return `After ${found.after.code}: it starts on ${shortDate(found.start.date)}, when that is cleared.`;
}

/** Whether it would bring conflicts there, and which. */
export function conflictWords(conflicts: readonly string[], isUnsure: boolean): string {
  if (conflicts.length === 0) {
    return isUnsure
      ? "No new conflict found there, but not all is known: see the findings once it is placed."
      : "No new conflict there.";
  }
  const more = conflicts.length - MOST_NAMED;
  const named = conflicts.slice(0, MOST_NAMED).join("; ");
  return `✕ ${named}${more > 0 ? `; and ${more} more` : ""}.`;
}

/** `A01, 3.2 m free`. */
export function bedLabel(layout: Layout, bed: Bed, unit: LengthUnit): string {
  if (bed.outline.shape !== "rectangle") return bed.code;
  const free = freeStretches(layout, bed).reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
  return free === 0 ? `${bed.code}, full` : `${bed.code}, ${formatLength(free, unit)} free`;
}
