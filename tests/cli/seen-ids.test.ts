/** Duplicate ids found in little memory, against a plain map of the ids. */
import { array, assert, property, string } from "fast-check";
import { expect, test } from "vitest";
import { idNumber, seenIds } from "../../src/cli/register/seen-ids.ts";

/** What a map of whole ids says. */
function plainly(ids: readonly string[]): readonly (number | null)[] {
  const first = new Map<string, number>();
  return ids.map((id, place) => {
    const earlier = first.get(id) ?? null;
    if (earlier === null) first.set(id, place);
    return earlier;
  });
}

function noted(ids: readonly string[], numberOf: (id: string) => number) {
  const seen = seenIds((place, other) => ids[place] === ids[other]);
  return ids.map((id) => seen.note(numberOf(id)));
}

test("the first feature with an id is named for each later one", () => {
  assert(
    property(array(string({ maxLength: 2 }), { maxLength: 60 }), (ids) => {
      expect(noted(ids, idNumber)).toEqual(plainly(ids));
    }),
  );
});

test("ids of one number are told apart, also when the table grows", () => {
  const ids = Array.from({ length: 2500 }, (_, index) => `plot-${index % 2200}`);
  expect(noted(ids, idNumber)).toEqual(plainly(ids));
  expect(noted(ids, (id) => id.length)).toEqual(plainly(ids));
});

/** Test vectors that Fowler, Noll and Vo published for FNV-1a of 32 bits, from memory. */
test.each([
  ["", 0x811c9dc5],
  ["a", 0xe40c292c],
  ["foobar", 0xbf9cf968],
])("the number of %j", (id, number) => {
  expect(idNumber(id)).toBe(number);
});
