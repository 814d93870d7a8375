import { expect, test } from "vitest";
import { isSameLot, type Stand } from "../../../src/core/checks/stand.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { type Crosser, crossingsOf } from "../../../src/core/nearness/crossings.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

const book = cropBook();
// Kinds of one group that cross freely, rarely, one way only, and not at all.
const kinds = book.kinds.filter(({ group }) =>
  ["brassica-oleracea", "squash", "cucurbita", "brassica"].some((name) => group.includes(name)),
);

function crossers(count: number, seed: number): readonly Crosser[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => ({
    kind: random.pick(kinds),
    varietyKey: random.pick([null, "beet|a", "beet|b"]),
    keepApart: random.chance(0.2),
    isSeedParent: random.chance(0.7),
    shedsPollen: random.chance(0.7),
  }));
}

test("what is told of two is what the book says of their kinds, less one lot and what takes or sheds none", () => {
  const told = new Map<string, number>();
  const things = crossers(150, 4);
  const crossings = crossingsOf(things, book);
  for (const [place, parent] of things.entries()) {
    for (const [at, source] of things.entries()) {
      const mayCross =
        parent.isSeedParent && source.shedsPollen && !isSameLot(parent as Stand, source as Stand);
      const expected = mayCross ? book.relation(parent.kind, source.kind).relation : "no";
      if (place === at) continue;
      expect(crossings(place, at)).toBe(expected);
      told.set(expected, (told.get(expected) ?? 0) + 1);
    }
  }
  expect([...told.keys()].sort()).toEqual(["freely", "no", "rarely", "sometimes"]);
});
