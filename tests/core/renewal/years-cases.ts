/** Made-up problems of years: small ones for all ways, large ones for time. */
import { seededRandom } from "../../../src/core/arrange/seeded.ts";
import type {
  CrossingSet,
  YearsItem,
  YearsProblem,
} from "../../../src/core/renewal/years-problem.ts";

export function item(index: number, over: Partial<YearsItem> = {}): YearsItem {
  return {
    id: `v${index}`,
    groundM2: 4,
    lead: 1,
    first: over.lead === 2 ? 1 : 0,
    deadline: Infinity,
    early: Infinity,
    isLate: false,
    keeps: 10,
    needM: 100,
    cover: "cage",
    isExposed: false,
    ...over,
  };
}

export function problemOf(
  items: readonly YearsItem[],
  over: Partial<YearsProblem> = {},
): YearsProblem {
  return {
    seasons: 3,
    items,
    sets: [],
    rests: [],
    groundM2: Infinity,
    landM2: over.groundM2 ?? Infinity,
    mostVarieties: Infinity,
    covers: { cage: 0, bag: 0 },
    byHand: items.map(() => ({ grown: 0, notGrown: 0 })),
    ...over,
  };
}

/** All of one set, with so many places apart. */
export function together(members: readonly number[], places = 1, metres = 100): CrossingSet {
  return { members, apart: [{ metres, places }] };
}

/** A collection by a seed. */
export function collection(
  seed: number,
  count: number,
  seasons: number,
  each: number,
): YearsProblem {
  const next = seededRandom(seed);
  const below = (most: number) => Math.floor(next() * most);
  const items = Array.from({ length: count }, (_, index) => {
    const lead = next() < 0.25 ? 2 : 1;
    const first = lead === 2 && next() < 0.7 ? 1 : 0;
    const isLate = next() < 0.12;
    return item(index, {
      lead,
      first,
      groundM2: 2 + below(8),
      isLate,
      deadline: isLate ? -1 : first + below(seasons + 3),
      early: first + below(seasons + 1) - 1,
      keeps: lead + below(6),
      needM: next() < 0.2 ? 300 : 100,
      cover: index % each === 0 ? "bag" : "cage",
      isExposed: next() < 0.05,
    });
  });
  const sets: CrossingSet[] = [];
  for (let from = 0; from < count; from += each) {
    const members = Array.from({ length: Math.min(each, count - from) }, (_, at) => from + at);
    const cover = next() < 0.3 ? "bag" : "cage";
    for (const member of members) {
      const one = items[member] as YearsItem;
      // Of a set that is bagged some take no cover at all.
      items[member] = { ...one, cover: cover === "bag" && member % 5 === 4 ? "none" : cover };
    }
    const far = 1 + below(2);
    sets.push({
      members,
      apart: [
        { metres: 100, places: far + below(2) },
        { metres: 300, places: far },
      ],
    });
  }
  const ground = items.reduce((sum, { groundM2 }) => sum + groundM2, 0);
  return problemOf(items, {
    seasons,
    sets,
    rests: sets
      .slice(0, 2)
      .map(({ members }) => ({ members, years: 1 + below(3), before: [below(9), below(9)] })),
    groundM2: (ground / seasons) * (1.4 + next()),
    mostVarieties: next() < 0.5 ? Infinity : Math.ceil(count / seasons) + 1 + below(3),
    covers: { cage: below(3), bag: below(2) },
  });
}
