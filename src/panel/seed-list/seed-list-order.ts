/** Which varieties of the seed list are in sight, and in what order. */
import { foldedText } from "../form/folded-text.ts";
import type { SeedListRow } from "./seed-list-rows.ts";
import { orderNames } from "./words.ts";

/** `to-place`: those that are still to place first; `listed`: as they were added. */
export const seedListOrders = ["to-place", "name", "kind", "listed"] as const;
export type SeedListOrder = (typeof seedListOrders)[number];

export const orderWords: Readonly<Record<SeedListOrder, string>> = {
  "to-place": orderNames.toPlace,
  name: orderNames.name,
  kind: orderNames.kind,
  listed: orderNames.listed,
};

/** Rows in the order asked for; those alike stay in the order of the list. */
export function inOrderOf(
  rows: readonly SeedListRow[],
  order: SeedListOrder,
): readonly SeedListRow[] {
  if (order === "listed") return rows;
  if (order === "to-place") {
    return [...rows].sort((a, b) => Number(b.isShort) - Number(a.isShort));
  }
  const { compare } = new Intl.Collator("en", { numeric: true });
  const keyOf = (row: SeedListRow) => (order === "name" ? row.variety.name : row.kindText);
  return [...rows].sort((a, b) => compare(keyOf(a), keyOf(b)));
}

/** Rows in whose name, kind or reason every typed word is found, large or small, with or without accents. */
export function foundRows(rows: readonly SeedListRow[], typed: string): readonly SeedListRow[] {
  const words = foldedText(typed)
    .split(" ")
    .filter((word) => word !== "");
  if (words.length === 0) return rows;
  return rows.filter(({ variety, kindText }) => {
    const text = foldedText(`${variety.name} ${kindText} ${variety.reason ?? ""}`);
    return words.every((word) => text.includes(word));
  });
}
