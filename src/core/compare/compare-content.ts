/** What a drawing of one layout shows when it is held against another. */
import { type Difference, layoutDifferences } from "./layout-differences.ts";
import { outlineOf, shapeCentre } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Bed, Layout, Planting } from "../model/plan.ts";
import { type MapContent, type MapItem, mapContent } from "../map/map-items.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";

/** A difference with its number in the list. */
export interface NumberedDifference {
  readonly number: number;
  readonly difference: Difference;
}

export interface ComparedContent {
  readonly content: MapContent;
  /** From where a planting or bed lay to where it lies; old places are drawn only then. */
  readonly moves: readonly (readonly [Point, Point])[];
}

/** What a layout has otherwise than another, numbered from 1. */
export function numberedDifferences(from: Layout, to: Layout): readonly NumberedDifference[] {
  return layoutDifferences(from, to).map((difference, index) => ({
    number: index + 1,
    difference,
  }));
}

/**
 * The layout as a map has it, without lines of conflicts. What differs has a grey band and its
 * number beside the code; what was removed is drawn as it was.
 * @param against the layout it is held against, or null for none
 * @param isOverlaid whether the old places of what changed are drawn as well
 */
export function comparedContent(
  input: CheckedLayout,
  against: Layout | null,
  isOverlaid: boolean,
): ComparedContent {
  const plain = { ...mapContent(input), measured: [], picture: null };
  if (!against) return { content: plain, moves: [] };
  const changed = numberedDifferences(against, input.layout).map((entry) => ({
    ...entry,
    before: objectIn(against, entry.difference, entry.difference.fromCode),
    after: objectIn(input.layout, entry.difference, entry.difference.toCode),
  }));
  const numbers = new Map(changed.map(({ number, after }) => [after?.id ?? "", number]));
  const items = plain.items.map((item) => numberedItem(item, numbers));
  const band = (item: MapItem): readonly MapItem[] =>
    isNumbered(item, numbers) ? [{ ...item, ...BAND, id: `band ${item.id}` }] : [];
  const ofSort = (...sorts: readonly MapItem["what"][]) =>
    items.filter(({ what }) => sorts.includes(what));
  const old = changed.flatMap(({ number, difference, before, after }): readonly MapItem[] => {
    if (!before || (after && !(isOverlaid && isElsewhere(difference)))) return [];
    return [oldItem(before, after ? "surrounding" : difference.what, after ? null : number)];
  });
  return {
    content: {
      ...plain,
      // Bands lie under all of their sort, so that none hides a neighbour's line.
      items: [
        ...ofSort("site", "surrounding"),
        ...ofSort("bed").flatMap(band),
        ...ofSort("bed"),
        ...ofSort("planting").flatMap(band),
        ...ofSort("planting"),
        ...old,
      ],
    },
    moves: isOverlaid
      ? changed.flatMap(({ difference, before, after }) =>
          before && after && difference.changes.some(({ kind }) => kind === "moved")
            ? [[shapeCentre(before.outline), shapeCentre(after.outline)] as const]
            : [],
        )
      : [],
  };
}

const BAND = {
  what: "surrounding",
  style: "differs",
  hatch: null,
  group: null,
  label: "",
} as const satisfies Partial<MapItem>;

function isNumbered({ what, id }: MapItem, numbers: ReadonlyMap<string, number>): boolean {
  return (what === "bed" || what === "planting") && numbers.has(id);
}

function numberedItem(item: MapItem, numbers: ReadonlyMap<string, number>): MapItem {
  if (!isNumbered(item, numbers)) return item;
  return { ...item, label: `${item.label} (${numbers.get(item.id) ?? ""})` };
}

/** Whether its outline is another one than before. */
function isElsewhere({ changes }: Difference): boolean {
  return changes.some(({ kind }) => kind === "moved" || kind === "resized" || kind === "turned");
}

/** The object of a difference in one of the layouts: ids may differ where the code is the same. */
function objectIn(
  { beds, plantings }: Layout,
  { what, id }: Difference,
  code: string | null,
): Bed | Planting | undefined {
  const list: readonly (Bed | Planting)[] = what === "bed" ? beds : plantings;
  return list.find((item) => item.id === id) ?? list.find((item) => item.code === code);
}

function oldItem(
  { id, code, outline }: Bed | Planting,
  what: MapItem["what"],
  number: number | null,
) {
  return {
    id: `was ${id}`,
    what,
    outline: outlineOf(outline),
    style: "was" as const,
    hatch: null,
    group: null,
    label: number === null ? "" : `${code} (${number})`,
  };
}
