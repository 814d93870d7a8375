/** How many plants fit, in words, with the spacing that says so. */
import { citedAs } from "../../core/kinds/sources.ts";
import type { PlantRoom } from "../../core/beds/plant-room.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";

/** @param rows the rows the planting has, when it says so */
export function plantRoomWords(
  room: PlantRoom,
  rows: number | undefined,
  unit: LengthUnit,
): string {
  const { grid, inRowM, betweenRowsM, source } = room;
  const from = source === null ? "assumed: its kind names no spacing" : citedAs(source);
  const spacing = `${formatLength(inRowM, unit)} in the row, ${formatLength(betweenRowsM, unit)} between rows (${from})`;
  if (grid === null) return `${room.plants} plants fit by area at ${spacing}.`;
  const own =
    rows !== undefined && rows > 0 && rows !== grid.rows
      ? `; in ${rows} ${rows === 1 ? "row" : "rows"} ${rows * grid.perRow}`
      : "";
  return `${room.plants} plants fit in ${grid.rows} ${grid.rows === 1 ? "row" : "rows"} of ${grid.perRow}${own}, at ${spacing}.`;
}
