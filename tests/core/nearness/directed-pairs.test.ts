import { expect, test } from "vitest";
import { byRank, keptPairs, meetings } from "../../../src/core/nearness/directed-pairs.ts";
import { boxesOf } from "../../../src/core/geometry/boxes.ts";
import { PairColumns } from "../../../src/core/nearness/pair-columns.ts";
import { WayLists } from "../../../src/core/nearness/way-lists.ts";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { pointOutline } from "../../../src/core/geometry/outline.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

interface Post {
  readonly id: string;
  readonly kind: { readonly group: string };
  readonly isSeedParent: boolean;
  readonly reachM: number;
  readonly outline: ReturnType<typeof pointOutline>;
}

interface Way {
  readonly seedParent: string;
  readonly pollenSource: string;
}

/** Posts in a field; their ids are such that one may begin with all of another. */
function posts(count: number, seed: number): readonly Post[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, place) => ({
    id: `p${(place * 7) % count}`,
    kind: { group: random.pick(["beet", "maize"]) },
    isSeedParent: random.chance(0.8),
    reachM: random.pick([0, 5, 20, 60, Infinity]),
    outline: pointOutline({ x: random.between(0, 200), y: random.between(0, 200) }),
  }));
}

const reaches = (from: Post, to: Post) =>
  from !== to &&
  from.isSeedParent &&
  from.kind.group === to.kind.group &&
  boundsGap(from.outline.bounds, to.outline.bounds) < from.reachM;

const way = (from: Post, to: Post): Way => ({ seedParent: from.id, pollenSource: to.id });

/** How a way stands in the columns of these tests. */
const LONG = 1;
const SHORT = 2;

/** All ways of some posts, in columns; which way a pair is met from is told by `there`. */
function columnsOf(items: readonly Post[]) {
  const columns = new PairColumns();
  const codeOf = (from: Post) => (from.reachM > 20 ? LONG : SHORT);
  meetings(items, boxesOf(items.map(({ outline }) => outline)), (from, to, isMutual) => {
    const [one, other] = [items[from] as Post, items[to] as Post];
    const at = columns.nextGap();
    columns.gaps[at] = boundsGap(one.outline.bounds, other.outline.bounds);
    columns.add(from, to, codeOf(one), isMutual ? codeOf(other) : 0);
  });
  return columns;
}

/** The ways of the columns as objects, and how many were made. */
function listsOf(items: readonly Post[], columns: PairColumns) {
  const counted = { made: 0 };
  const idAt = (place: number | undefined) => items[place ?? -1]?.id ?? "";
  const lists = new WayLists<Way>(columns, items.length, (number) => {
    counted.made += 1;
    const [one, other] = [idAt(columns.one[number >> 1]), idAt(columns.other[number >> 1])];
    const isBack = number % 2 === 1;
    return { seedParent: isBack ? other : one, pollenSource: isBack ? one : other };
  });
  return { lists, counted };
}

test("any two meet once, and their ways are told in the order of the list", () => {
  let [oneWay, bothWays] = [0, 0];
  for (const count of [0, 1, 30, 300]) {
    const items = posts(count, count + 1);
    const expected = items.flatMap((from) =>
      items.filter((to) => reaches(from, to)).map((to) => way(from, to)),
    );
    const columns = columnsOf(items);
    const met = Array.from({ length: columns.length }, (_, pair) =>
      [columns.one[pair] ?? 0, columns.other[pair] ?? 0].sort((a, b) => a - b).join(),
    );
    expect(new Set(met).size).toBe(met.length);
    const { lists } = listsOf(items, columns);
    for (const [place, { id, isSeedParent }] of items.entries()) {
      const own = expected.filter(({ seedParent }) => seedParent === id);
      expect(lists.from(place)).toEqual(own);
      const pages = lists.pages((at) => items[at]?.isSeedParent === true);
      expect(pages.at(place)).toEqual(isSeedParent ? own : undefined);
    }
    expect(lists.all).toEqual(expected);
    const reachOf = (id: string) => items.find((post) => post.id === id)?.reachM ?? 0;
    const short = expected.filter(({ seedParent }) => reachOf(seedParent) <= 20);
    expect(lists.those((code) => code === SHORT)).toEqual(short);
    const both = lists.both((code) => code === SHORT);
    expect(both.flat().filter(({ seedParent }) => reachOf(seedParent) <= 20)).toHaveLength(
      short.length,
    );
    oneWay += both.filter(({ length }) => length === 1).length;
    bothWays += both.filter(({ length }) => length === 2).length;
  }
  expect(oneWay).toBeGreaterThan(100);
  expect(bothWays).toBeGreaterThan(50);
});

test("nothing is made before it is read, and nothing twice", () => {
  const items = posts(300, 7);
  const columns = columnsOf(items);
  const { lists, counted } = listsOf(items, columns);
  const pages = lists.pages(() => true);
  expect(counted.made).toBe(0);
  const place = items.findIndex(({ isSeedParent, reachM }) => isSeedParent && reachM === 60);
  const other = place + 1;
  const own = pages.at(place);
  expect(counted.made).toBe(own?.length);
  expect(counted.made).toBeGreaterThan(0);
  // A list with other items at some places goes on making the others when they are read.
  const changed = pages.with(new Map([[other, []]]));
  expect(counted.made).toBe(own?.length);
  expect(changed.at(other)).toEqual([]);
  expect(changed.at(place)).toBe(own);
  expect(pages.at(300)).toBeUndefined();
  expect(lists.all.length).toBeGreaterThan(1000);
  expect(counted.made).toBe(lists.all.length);
  expect(changed.all[place]).toBe(own);
});

test("lists of pairs are kept as they are where nothing is to be done", () => {
  const pairs = ["b", "a"].map((pollenSource) => ({ seedParent: "p", pollenSource }));
  expect(keptPairs(pairs, new Set(["c"]))).toBe(pairs);
  expect(keptPairs(pairs, new Set(["a"]))).toEqual([pairs[0]]);
  const rank = new Map([
    ["a", 1],
    ["b", 0],
  ]);
  expect(byRank(pairs, rank)).toBe(pairs);
  expect(byRank(pairs.toReversed(), rank)).toEqual(pairs);
});
