/** The seed list: what is to be placed, and how much of it is. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import type { Layout, Plan, Planting, Variety } from "../../core/model/plan.ts";
import * as words from "./words.ts";

/** In the place of the count, of a variety that is grown out in another year. */
const WAITS = words.waits;

export interface SeedListRow {
  readonly variety: Variety;
  readonly kind: Kind | undefined;
  /** `tomato, long-styled`. */
  readonly kindText: string;
  readonly plantingIds: readonly string[];
  readonly placedPlants: number;
  /** `40 of 40`, or `40 plants` when no number is wanted. */
  readonly placedText: string;
  readonly isShort: boolean;
  /** Whether lots of it are on the shelf, whatever their state. */
  readonly hasLots: boolean;
}

interface Made {
  readonly of: readonly unknown[];
  readonly plantings: readonly Planting[];
  readonly rows: readonly SeedListRow[];
}
let last: Made | null = null;

/** The same rows as before where nothing they tell of has changed, as while plantings are moved. */
export function seedListRows(plan: Plan, layout: Layout, book: CropBook): readonly SeedListRow[] {
  const of = [plan.varieties, plan.lots, book];
  const { plantings } = layout;
  const known = last;
  if (known && of.every((part, at) => part === known.of[at]) && areAlike(plantings, known)) {
    return known.rows;
  }
  last = { of, plantings, rows: rowsOf(plan, layout, book) };
  return last.rows;
}

function areAlike(plantings: readonly Planting[], known: Made): boolean {
  return (
    plantings.length === known.plantings.length &&
    plantings.every((planting, at) => {
      const was = known.plantings[at];
      if (planting === was) return true;
      const { id, variety, plants } = planting;
      return id === was?.id && variety === was.variety && plants === was.plants;
    })
  );
}

function rowsOf(plan: Plan, layout: Layout, book: CropBook): readonly SeedListRow[] {
  const placed = new Map<string, { ids: string[]; plants: number }>();
  for (const planting of layout.plantings) {
    const entry = placed.get(planting.variety) ?? { ids: [], plants: 0 };
    entry.ids.push(planting.id);
    entry.plants += planting.plants ?? 0;
    placed.set(planting.variety, entry);
  }
  const withLots = new Set(plan.lots.map(({ variety }) => variety));
  return plan.varieties.map((variety) => {
    const kind = book.kind(variety.kind);
    const entry = placed.get(variety.id);
    const plants = entry?.plants ?? 0;
    const wanted = variety.wantedPlants;
    const isWaiting = variety.waits === true && entry === undefined;
    return {
      variety,
      kind,
      kindText: kindText(variety, kind),
      plantingIds: entry?.ids ?? [],
      placedPlants: plants,
      placedText: isWaiting ? WAITS : placedText(plants, wanted),
      isShort: !isWaiting && (wanted === undefined ? entry === undefined : plants < wanted),
      hasLots: withLots.has(variety.id),
    };
  });
}

function placedText(plants: number, wanted: number | undefined): string {
  return wanted === undefined ? words.plantCount(plants) : words.placedOf(plants, wanted);
}

/** Kind and, where it matters, flower form: `tomato, long-styled`. */
export function kindText(variety: Variety, kind: Kind | undefined): string {
  const form = kind?.forms?.find((entry) => entry.id === variety.form)?.name;
  const name = kind?.name ?? words.unknownKind(variety.kind);
  return [name, form, variety.hybrid === true ? words.hybrid : undefined]
    .filter((part) => part !== undefined)
    .join(", ");
}

/** `9 varieties, 1 still to place`. */
export function seedListSummary(rows: readonly SeedListRow[]): string {
  if (rows.length === 0) return words.noVarietiesYet;
  const short = rows.filter((row) => row.isShort).length;
  return short === 0 ? words.allPlaced(rows.length) : words.stillToPlace(rows.length, short);
}
