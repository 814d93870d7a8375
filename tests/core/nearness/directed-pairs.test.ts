import { expect, test } from "vitest";
import { byRank, keptPairs, pairsAmong } from "../../../src/core/nearness/directed-pairs.ts";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { pointOutline } from "../../../src/core/geometry/outline.ts";
import { compareText } from "../../../src/core/checks/finding.ts";
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

test("any two are looked at once, and what is found is in the order of the list", () => {
  let [oneWay, bothWays] = [0, 0];
  for (const count of [0, 1, 30, 300]) {
    const items = posts(count, count + 1);
    const looked: string[] = [];
    const { directed, ways } = pairsAmong<Post, Way>(items, (from, to, isAskedBefore) => {
      if (!reaches(from, to)) return null;
      if (!reaches(to, from)) {
        looked.push([from.id, to.id].sort(compareText).join("|"));
        return [way(from, to)];
      }
      if (isAskedBefore) return null;
      looked.push([from.id, to.id].sort(compareText).join("|"));
      return [way(from, to), way(to, from)];
    });
    expect(new Set(looked).size).toBe(looked.length);
    const expected = items.flatMap((from) =>
      items.filter((to) => reaches(from, to)).map((to) => way(from, to)),
    );
    expect(directed.items).toEqual(expected);
    for (const [place, { id }] of items.entries()) {
      const own = directed.items.slice(directed.starts[place], directed.starts[place + 1]);
      expect(own).toEqual(expected.filter(({ seedParent }) => seedParent === id));
    }
    const keys = ways.map(([first]) =>
      [first?.seedParent ?? "", first?.pollenSource ?? ""].sort(compareText).join("|"),
    );
    expect(keys).toEqual(looked);
    oneWay += ways.filter(({ length }) => length === 1).length;
    bothWays += ways.filter(({ length }) => length === 2).length;
  }
  expect(oneWay).toBeGreaterThan(100);
  expect(bothWays).toBeGreaterThan(100);
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
