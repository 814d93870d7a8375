/** What lies on the sheet, in drawing order, with a spatial index over it. */
import Flatbush from "flatbush";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { type Hatch, hatchByGroup } from "../../core/page/hatch.ts";
import type { Bounds } from "../../core/geometry/bounds.ts";
import { type Outline, outlineOf } from "../../core/geometry/outline.ts";
import type { Bed, Layout, Plan, Planting, Shape, Surrounding } from "../../core/model/plan.ts";

interface ItemBase {
  readonly id: string;
  readonly shape: Shape;
  readonly outline: Outline;
  /** Hatch of the crossing group, for plantings and pollen sources of a known kind. */
  readonly hatch: Hatch | null;
}

export interface SurroundingItem extends ItemBase {
  readonly what: "surrounding";
  readonly surrounding: Surrounding;
}

export interface BedItem extends ItemBase {
  readonly what: "bed";
  readonly bed: Bed;
}

export interface PlantingItem extends ItemBase {
  readonly what: "planting";
  readonly planting: Planting;
}

export type SheetItem = SurroundingItem | BedItem | PlantingItem;

export interface SheetItems {
  /** The lowest first. */
  readonly list: readonly SheetItem[];
  readonly byId: ReadonlyMap<string, SheetItem>;
  /** Positions in the list of what touches a box, in drawing order. */
  readonly within: (bounds: Bounds) => readonly SheetItem[];
}

type HatchOf = (kind: string | undefined) => Hatch | null;

let hatchMemo: {
  readonly varieties: Plan["varieties"];
  readonly surroundings: Plan["surroundings"];
  readonly book: CropBook;
  readonly hatchOf: HatchOf;
} | null = null;

function hatchesOf(plan: Plan, book: CropBook): HatchOf {
  const { varieties, surroundings } = plan;
  if (
    hatchMemo?.varieties === varieties &&
    hatchMemo.surroundings === surroundings &&
    hatchMemo.book === book
  ) {
    return hatchMemo.hatchOf;
  }
  const groupOf = (kind: string) => book.kind(kind)?.group;
  const hatches = hatchByGroup(plan, groupOf);
  const hatchOf: HatchOf = (kind) => hatches.get(groupOf(kind ?? "") ?? "") ?? null;
  hatchMemo = { varieties, surroundings, book, hatchOf };
  return hatchOf;
}

const kindMemo = new WeakMap<Plan["varieties"], ReadonlyMap<string, string>>();

/** Kinds by the ids of their varieties, made once for each list. */
function kindsOf(varieties: Plan["varieties"]): ReadonlyMap<string, string> {
  const known = kindMemo.get(varieties);
  if (known) return known;
  const kinds = new Map(varieties.map((variety) => [variety.id, variety.kind]));
  kindMemo.set(varieties, kinds);
  return kinds;
}

/** The items of a layout and its surroundings; with ids, only those. */
export function itemsOf(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  ids?: ReadonlySet<string>,
): readonly SheetItem[] {
  const hatchOf = hatchesOf(plan, book);
  if (ids?.size === 0) return [];
  const kinds = kindsOf(plan.varieties);
  const wanted = <T extends { readonly id: string }>(list: readonly T[]) =>
    ids ? list.filter((entry) => ids.has(entry.id)) : list;
  return [
    ...wanted(plan.surroundings).map((surrounding): SheetItem => ({
      what: "surrounding",
      ...placed(surrounding),
      hatch: surrounding.what === "pollen" ? hatchOf(surrounding.kind) : null,
      surrounding,
    })),
    ...wanted(layout.beds).map((bed): SheetItem => ({
      what: "bed",
      ...placed(bed),
      hatch: null,
      bed,
    })),
    ...wanted(layout.plantings).map((planting): SheetItem => ({
      what: "planting",
      ...placed(planting),
      hatch: hatchOf(kinds.get(planting.variety)),
      planting,
    })),
  ];
}

function placed({ id, outline }: { readonly id: string; readonly outline: Shape }) {
  return { id, shape: outline, outline: outlineOf(outline) };
}

const itemMemo = new WeakMap<Plan, Map<Layout, SheetItems>>();

/** The items of a plan's layout, indexed; made once for each plan and layout object. */
export function sheetItems(plan: Plan, layout: Layout, book: CropBook): SheetItems {
  const known = itemMemo.get(plan) ?? new Map<Layout, SheetItems>();
  itemMemo.set(plan, known);
  const items = known.get(layout) ?? indexed(itemsOf(plan, layout, book));
  known.set(layout, items);
  return items;
}

function indexed(list: readonly SheetItem[]): SheetItems {
  const byId = new Map(list.map((item) => [item.id, item]));
  if (list.length === 0) return { list, byId, within: () => [] };
  const index = new Flatbush(list.length);
  for (const { outline } of list) {
    const { minX, minY, maxX, maxY } = outline.bounds;
    index.add(minX, minY, maxX, maxY);
  }
  index.finish();
  return {
    list,
    byId,
    within: ({ minX, minY, maxX, maxY }) =>
      index
        .search(minX, minY, maxX, maxY)
        .sort((a, b) => a - b)
        .map((position) => list[position] as SheetItem),
  };
}
