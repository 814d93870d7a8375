/** Rows of the tables: every object of the layout in words and numbers. */
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { shapeCentre } from "../../core/geometry/outline.ts";
import { shortDate } from "../../core/model/day.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import type { Layout, Plan, Shape } from "../../core/model/plan.ts";
import { foldedText } from "../form/folded-text.ts";
import { turnText } from "../form/number-text.ts";
import {
  bedColumns,
  plantingColumns,
  startMethods,
  surroundingColumns,
  tableNames,
} from "./table-words.ts";
import { purposeWords, surroundingWords } from "../state/plan-words.ts";

export interface TableRow {
  readonly id: string;
  /** Texts in the order of the table's columns; the first names the object. */
  readonly cells: readonly string[];
  /** By what a column sorts whose texts have another order, such as days; by its place. */
  readonly keys?: ReadonlyMap<number, number>;
}

export interface ObjectTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
}

/** `1.2 m × 10 m`, or the number of corners. */
function sizeText(shape: Shape, unit: LengthUnit): string {
  switch (shape.shape) {
    case "rectangle":
      return `${formatLength(shape.widthM, unit)} × ${formatLength(shape.lengthM, unit)}`;
    case "polygon":
      return tableNames.corners(shape.corners.length);
    case "point":
      return tableNames.point;
  }
}

function placeTexts(shape: Shape, unit: LengthUnit): readonly [string, string, string] {
  const { x, y } = shapeCentre(shape);
  const turn = shape.shape === "rectangle" ? turnText(shape.turnDeg) : "";
  return [turn, formatLength(x, unit), formatLength(y, unit)];
}

function lockedText(locked: boolean | undefined): string {
  return locked === true ? tableNames.locked : "";
}

export function bedTable(plan: Plan, layout: Layout): ObjectTable {
  const planted = new Map<string, number>();
  for (const { bed } of layout.plantings) {
    if (bed !== undefined) planted.set(bed, (planted.get(bed) ?? 0) + 1);
  }
  return {
    caption: tableNames.beds,
    columns: Object.values(bedColumns),
    rows: layout.beds.map(({ id, code, outline, locked }) => ({
      id,
      cells: [
        code,
        sizeText(outline, plan.units),
        ...placeTexts(outline, plan.units),
        String(planted.get(id) ?? 0),
        lockedText(locked),
      ],
    })),
  };
}

export function plantingTable(plan: Plan, layout: Layout, result: CheckResult): ObjectTable {
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety.name]));
  const beds = new Map(layout.beds.map((bed) => [bed.id, bed.code]));
  const conflicts = conflictCounts(result);
  return {
    caption: tableNames.plantings,
    columns: Object.values(plantingColumns),
    rows: layout.plantings.map((planting) => {
      const stand = result.standById.get(planting.id);
      const [turn, right, up] = placeTexts(planting.outline, plan.units);
      const { start } = planting;
      const flower = stand?.bloom?.likely.first;
      const cells: Readonly<Record<PlantingColumn, string>> = {
        code: planting.code,
        variety: varieties.get(planting.variety) ?? "unknown",
        kind: stand?.kind.name ?? "unknown",
        purpose: purposeWords[planting.purpose],
        bed: beds.get(planting.bed ?? "") ?? "none",
        plants: planting.plants === undefined ? "" : String(planting.plants),
        start: start ? `${startMethods[start.method]} ${shortDate(start.date)}` : "",
        flower: flower === undefined ? "" : shortDate(flower),
        conflicts: String(conflicts.get(planting.id) ?? 0),
        size: sizeText(planting.outline, plan.units),
        turn,
        right,
        up,
        locked: lockedText(planting.locked),
      };
      const days = [
        [plantingColumn("start"), start?.date],
        [plantingColumn("flower"), flower],
      ] as const;
      const known = days.flatMap(([column, day]) =>
        day === undefined ? [] : [[column, day] as const],
      );
      return {
        id: planting.id,
        cells: plantingOrder.map((column) => cells[column]),
        keys: new Map(known),
      };
    }),
  };
}

export type PlantingColumn = keyof typeof plantingColumns;
const plantingOrder = Object.keys(plantingColumns) as readonly PlantingColumn[];

/** The place of a column in the table of plantings. */
export function plantingColumn(column: PlantingColumn): number {
  return plantingOrder.indexOf(column);
}

function conflictCounts({ findings }: CheckResult): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { severity, subjects } of findings) {
    if (severity !== "conflict") continue;
    for (const id of subjects) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return counts;
}

export function surroundingTable(plan: Plan, kindName: (id: string) => string): ObjectTable {
  return {
    caption: tableNames.surroundings,
    columns: Object.values(surroundingColumns),
    rows: plan.surroundings.map(({ id, label, what, kind, outline, locked }) => {
      const [, right, up] = placeTexts(outline, plan.units);
      return {
        id,
        cells: [
          label,
          surroundingWords[what],
          kind === undefined ? "" : kindName(kind),
          sizeText(outline, plan.units),
          right,
          up,
          lockedText(locked),
        ],
      };
    }),
  };
}

export interface Sorting {
  readonly column: number;
  readonly isDescending: boolean;
}

/** Numbers inside texts count as numbers: `B2` before `B10`, `2 m` before `10 m`. */
const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** The rows by one column, those alike in their given order; as given when nothing is asked. */
export function sortedRows(
  rows: readonly TableRow[],
  sorting: Sorting | null,
): readonly TableRow[] {
  if (sorting === null) return rows;
  const { column, isDescending } = sorting;
  const direction = isDescending ? -1 : 1;
  return [...rows].sort((a, b) => {
    const [from, to] = [a.keys?.get(column), b.keys?.get(column)];
    if (from !== undefined && to !== undefined) return direction * (from - to);
    const [left, right] = [a.cells[column] ?? "", b.cells[column] ?? ""];
    // What has nothing in the column comes last, whichever way it is sorted.
    if (left === "" || right === "") return Number(left === "") - Number(right === "");
    return direction * collator.compare(left, right);
  });
}

/** Rows that have every word somewhere in their texts. */
export function foundRows(rows: readonly TableRow[], query: string): readonly TableRow[] {
  const words = foldedText(query)
    .split(" ")
    .filter((word) => word !== "");
  if (words.length === 0) return rows;
  return rows.filter(({ cells }) => {
    const text = foldedText(cells.join(" "));
    return words.every((word) => text.includes(word));
  });
}
