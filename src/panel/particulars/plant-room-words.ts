/** How many plants fit, in words, with the spacing that says so. */
import { citedAs } from "../../core/kinds/sources.ts";
import type { PlantRoom } from "../../core/beds/plant-room.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import { type Noun, counted, formOf } from "../../core/words/plurals.ts";

const rowNoun: Noun = { one: "row", other: "rows" };

/** @param rows the rows the planting has, when it says so */
export function plantRoomWords(
  room: PlantRoom,
  rows: number | undefined,
  unit: LengthUnit,
): string {
  const { grid, inRowM, betweenRowsM, source, plants } = room;
  const from = source === null ? "assumed: its kind names no spacing" : citedAs(source);
  const spacing = `${formatLength(inRowM, unit)} in the row, ${formatLength(betweenRowsM, unit)} between rows (${from})`;
  const fit = formOf(plants, { one: `${plants} plant fits`, other: `${plants} plants fit` });
  if (grid === null) return `${fit} by area at ${spacing}.`;
  const inRows = `${fit} in ${counted(grid.rows, rowNoun)} of ${grid.perRow}`;
  return rows !== undefined && rows > 0 && rows !== grid.rows
    ? `${inRows}; in ${counted(rows, rowNoun)} ${rows * grid.perRow}, at ${spacing}.`
    : `${inRows}, at ${spacing}.`;
}
