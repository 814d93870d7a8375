/** Names with letters that no face at hand has: to be told before they are printed. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { TextRuler } from "../page/scene.ts";
import { sheetWords } from "./map-words.ts";

/** Names that cannot be set, each once, the varieties' first. */
export function unsetNames(
  { plan, layout, book }: CheckedLayout,
  ruler: TextRuler,
): readonly string[] {
  const planted = new Set(layout.plantings.map(({ variety }) => variety));
  const inStock = plan.lots.filter(({ state }) => state === "in stock");
  const used = new Set([...planted, ...inStock.map(({ variety }) => variety)]);
  const varieties = plan.varieties.filter(({ id }) => used.has(id));
  const kinds = varieties.flatMap(({ kind }) => book.kind(kind)?.name ?? []);
  const names = [
    ...varieties.map(({ name }) => name),
    ...kinds,
    plan.site.name,
    plan.title,
    plan.season.name,
    layout.name,
    ...layout.beds.map(({ code }) => code),
    ...layout.plantings.map(({ code }) => code),
    ...plan.surroundings.map(({ label }) => label),
    ...inStock.map(({ code }) => code),
  ];
  return [...new Set(names)].filter((name) => !ruler.canShow(name));
}

const MOST_NAMED = 12;

/** `No letters for 2 names: ...`; empty where all can be set. */
export function unsetWords(names: readonly string[]): string {
  if (names.length === 0) return "";
  const shown = names.slice(0, MOST_NAMED).map((name) => `"${name}"`);
  const more = names.length - shown.length;
  const list = shown.join(", ");
  return sheetWords.unset(names.length, more > 0 ? sheetWords.andMore(list, more) : list);
}
