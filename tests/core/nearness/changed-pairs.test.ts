/** Lists of pairs brought up to date for things that changed, against lists made anew. */
import { expect, test } from "vitest";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { Pages } from "../../../src/core/lists/pages.ts";
import { placesById } from "../../../src/core/lists/placed-map.ts";
import { changedPairLists } from "../../../src/core/nearness/changed-pairs.ts";
import {
  type Reacher,
  changedReachIndex,
  reachIndexOf,
} from "../../../src/core/nearness/reach-index.ts";
import { type SeededRandom, seededRandom } from "../../properties/seeded-random.ts";

interface Thing extends Reacher {
  readonly id: string;
}

function thing(random: SeededRandom, place: number): Thing {
  const [minX, minY] = [random.between(0, 200), random.between(0, 200)];
  return {
    id: `t${place}`,
    kind: { group: place % 4 === 0 ? "one" : "two" },
    isSeedParent: random.chance(0.7),
    reachM: random.pick([0, 4, 15, 15, 60, Infinity]),
    outline: { bounds: { minX, minY, maxX: minX + random.between(0, 9), maxY: minY + 2 } },
  };
}

interface Way {
  readonly seedParent: string;
  readonly pollenSource: string;
  readonly apartM: number;
}

function way(parent: Thing, source: Thing): Way | null {
  const apartM = boundsGap(parent.outline.bounds, source.outline.bounds);
  const isPair = parent.isSeedParent && parent !== source && apartM < parent.reachM;
  return isPair ? { seedParent: parent.id, pollenSource: source.id, apartM } : null;
}

function anew(items: readonly Thing[]): readonly (readonly Way[] | undefined)[] {
  return items.map((parent) =>
    parent.isSeedParent
      ? items.flatMap((source) =>
          source.kind.group === parent.kind.group ? (way(parent, source) ?? []) : [],
        )
      : undefined,
  );
}

test("however many change, near or far, the lists are those made anew", () => {
  const random = seededRandom(11);
  let items = Array.from({ length: 130 }, (_, place) => thing(random, place));
  const placeOf = placesById(items);
  let reach = reachIndexOf(items);
  let pairs = Pages.of(anew(items));
  let [asked, seen] = [0, 0];
  for (let step = 0; step < 80; step += 1) {
    const next = items.slice();
    const count = random.pick([0, 1, 2, 10, 30]);
    const places = [...new Set(Array.from({ length: count }, () => random.whole(0, 129)))];
    for (const place of places) {
      const before = items[place] as Thing;
      const { minX, minY, maxX, maxY } = before.outline.bounds;
      const by = random.between(-3, 3);
      const bounds = { minX: minX + by, minY, maxX: maxX + by, maxY };
      // A little aside, as in a drag, or another thing elsewhere.
      next[place] = random.chance(0.6) ? { ...before, outline: { bounds } } : thing(random, place);
    }
    const changes = places
      .toSorted((a, b) => a - b)
      .map((place) => ({ place, before: items[place] as Thing, after: next[place] as Thing }));
    const stands = Pages.of(next);
    reach = changedReachIndex(reach, stands, places);
    const measured = new Set<string>();
    const waysBetween = (one: Thing, other: Thing) => {
      const key = [one.id, other.id].sort().join(" ");
      expect(measured.has(key), "two are measured once").toBe(false);
      measured.add(key);
      asked += 1;
      return [way(one, other), way(other, one)] as const;
    };
    const lists = changedPairLists(changes, { stands, placeOf, reach, pairs, waysBetween });
    const fresh = anew(next);
    const now = pairs.with(lists);
    expect(now.all).toEqual(fresh);
    for (const [place, list] of fresh.entries()) {
      if (!lists.has(place)) expect(now.at(place)).toBe(pairs.at(place));
      seen += list?.length ?? 0;
    }
    [items, pairs] = [next, now];
  }
  expect(asked).toBeGreaterThan(1000);
  expect(seen).toBeGreaterThan(1000);
});
