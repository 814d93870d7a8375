/** The order of what is told of two things each, by the ids of the two, without making those ids. */
import { counted } from "../lists/counted.ts";
import type { PairColumns } from "./pair-columns.ts";

/** What stands between two ids in the id of a finding. */
const BETWEEN = "|";

/** How things of a list stand by their ids. */
export interface IdRanks {
  /** Of the first of two: the id and what stands after it. */
  readonly first: Uint32Array;
  /** Of the second, after which nothing stands. */
  readonly second: Uint32Array;
}

/** Null where an id holds what stands between two: ranks do not tell the order then. */
export function idRanks(items: readonly { readonly id: string }[]): IdRanks | null {
  const ids = items.map(({ id }) => id);
  if (ids.some((id) => id.includes(BETWEEN))) return null;
  return { first: ranksOf(ids.map((id) => `${id}${BETWEEN}`)), second: ranksOf(ids) };
}

/** Texts by themselves are put in code-unit order many times faster than by a comparing function. */
function ranksOf(texts: readonly string[]): Uint32Array {
  const rankOf = new Map(texts.toSorted().map((text, rank) => [text, rank]));
  return Uint32Array.from(texts, (text) => rankOf.get(text) as number);
}

/** Which of two places holds the lesser id. */
export function isFirst({ second }: IdRanks, one: number, other: number): boolean {
  return (second[one] as number) < (second[other] as number);
}

/** Pairs by the lesser of their ids, then by the other. @param pairs their places in the columns */
export function inIdOrder(
  pairs: Uint32Array,
  { one, other }: Pick<PairColumns, "one" | "other">,
  ranks: IdRanks,
): Uint32Array {
  const { first, second } = ranks;
  const [lesser, greater] = [new Uint32Array(one.length), new Uint32Array(one.length)];
  for (const pair of pairs) {
    const [a, b] = [one[pair] as number, other[pair] as number];
    const isInOrder = isFirst(ranks, a, b);
    lesser[pair] = first[isInOrder ? a : b] as number;
    greater[pair] = second[isInOrder ? b : a] as number;
  }
  const bySecond = counted(pairs, (pair) => greater[pair] as number, second.length).order;
  return counted(bySecond, (pair) => lesser[pair] as number, first.length).order;
}
