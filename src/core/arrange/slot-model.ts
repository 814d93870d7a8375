/**
 * The slots as a mixed-integer model: a yes or no for each slot, just one yes for each piece, and
 * a yes for each pair of pieces that ends up too near. Two on the same ground are forbidden.
 */
import type { ModelData } from "highs";
import { type Row, modelData } from "../solving/model-data.ts";
import { type Clash, type SlotClashes, slotClashes } from "./slot-clashes.ts";
import { type CliqueGroup, cliqueGroups, sharedGrounds } from "./slot-cliques.ts";
import type { ArrangeProblem } from "./arrange-problem.ts";
import type { Slot } from "./slots.ts";

/** Cliques with more pieces than this are bounded from below a little loosely. */
const MOST_IN_CLIQUE = 12;

/** A model as it grows. Columns: the slots piece by piece, then pairs, then cliques. */
interface Draft {
  readonly rows: Row[];
  /** What a one in each column costs, in conflicts. */
  readonly costs: number[];
  readonly columnOf: (piece: number, slot: number) => number;
}

export function slotModel(
  problem: ArrangeProblem,
  slots: readonly (readonly Slot[])[],
): ModelData & { readonly numSlots: number } {
  const clashes = slotClashes(problem, slots);
  const draft = draftOf(slots);
  const numSlots = draft.costs.length;
  for (const ground of sharedGrounds(slots, clashes)) {
    const terms = ground.map(({ piece, slot }) => [draft.columnOf(piece, slot), 1] as const);
    draft.rows.push({ terms, lower: -Infinity, upper: 1 });
  }
  const pairs = addPairs(draft, slots, clashes);
  const numWhole = draft.costs.length;
  for (const group of cliqueGroups(slots, clashes)) addCliques(draft, group, pairs);
  // The first are yes or no; what cliques count follows from those.
  const columns = draft.costs.map((cost, column) => {
    const isWhole = column < numWhole;
    return { cost, most: isWhole ? 1 : Infinity, isWhole };
  });
  return { ...modelData(columns, draft.rows), numSlots };
}

/** A column for each slot, and just one yes for each piece. */
function draftOf(slots: readonly (readonly Slot[])[]): Draft {
  const first: number[] = [];
  let count = 0;
  for (const list of slots) {
    first.push(count);
    count += list.length;
  }
  const columnOf = (piece: number, slot: number) => (first[piece] as number) + slot;
  return {
    rows: slots.map((list, piece) => ({
      terms: list.map((_, slot) => [columnOf(piece, slot), 1]),
      lower: 1,
      upper: 1,
    })),
    costs: slots.flat().map(({ conflicts }) => conflicts),
    columnOf,
  };
}

/** Pairs that can end up too near, by `a b`: their columns. Pairs on the same ground are forbidden. */
function addPairs(
  { rows, costs, columnOf }: Draft,
  slots: readonly (readonly Slot[])[],
  clashes: SlotClashes,
): ReadonlyMap<string, number> {
  const pairs = new Map<string, number>();
  for (let a = 0; a < slots.length; a += 1) {
    for (let b = a + 1; b < slots.length; b += 1) {
      const addRows = (groups: readonly Crossing[], excuse: readonly [number, number][]) => {
        for (const { left, right } of groups) {
          const terms = [
            ...left.map((slot) => [columnOf(a, slot), 1] as const),
            ...right.map((slot) => [columnOf(b, slot), 1] as const),
          ];
          rows.push({ terms: [...terms, ...excuse], lower: -Infinity, upper: 1 });
        }
      };
      addRows(crossings(slots, clashes, [a, b], "over"), []);
      const near = crossings(slots, clashes, [a, b], "near");
      if (near.length === 0) continue;
      const pair = costs.push(1) - 1;
      pairs.set(`${a} ${b}`, pair);
      addRows(near, [[pair, -1]]);
    }
  }
  return pairs;
}

/** A group meets at least as often as its pieces share cliques: this is what tightens the proof. */
function addCliques(
  { rows, costs, columnOf }: Draft,
  { pieces, cliques }: CliqueGroup,
  pairs: ReadonlyMap<string, number>,
): void {
  const own = pieces.flatMap((a) => pieces.flatMap((b) => pairs.get(`${a} ${b}`) ?? []));
  const cliqueColumns = cliques.map((clique) => {
    const column = costs.push(0) - 1;
    const terms = clique.map(({ piece, slot }) => [columnOf(piece, slot), -1] as const);
    // n in a clique meet n (n - 1) / 2 times, which is at least k n - k (k + 1) / 2 for every k.
    for (let k = 1; k < Math.min(pieces.length, MOST_IN_CLIQUE); k += 1) {
      rows.push({
        terms: [[column, 1], ...terms.map(([at]) => [at, -k] as const)],
        lower: (-k * (k + 1)) / 2,
        upper: Infinity,
      });
    }
    return column;
  });
  rows.push({
    terms: [
      ...own.map((column) => [column, 1] as const),
      ...cliqueColumns.map((column) => [column, -1] as const),
    ],
    lower: 0,
    upper: Infinity,
  });
}

interface Crossing {
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/**
 * Groups such that every slot on the left clashes with every one on the right, all clashes of
 * that sort covered: one row a group is both shorter and tighter than one for each clash.
 */
function crossings(
  slots: readonly (readonly Slot[])[],
  { between }: SlotClashes,
  [a, b]: readonly [number, number],
  sort: Clash,
): readonly Crossing[] {
  const clashing = (slots[a] ?? []).map(
    (_, here) =>
      new Set(
        (slots[b] ?? []).flatMap((__, there) =>
          between(a, here, b, there) === sort ? [there] : [],
        ),
      ),
  );
  const groups = new Map<string, Crossing>();
  for (const these of clashing) {
    const key = [...these].join();
    if (these.size === 0 || groups.has(key)) continue;
    const alike = clashing.flatMap((those, index) =>
      [...these].every((slot) => those.has(slot)) ? [index] : [],
    );
    groups.set(key, { left: alike, right: [...these] });
  }
  return [...groups.values()];
}
