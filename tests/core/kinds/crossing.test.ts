/** What crosses with what, and that it holds both ways. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { crossingGroups, knownSeparations } from "../../../src/core/kinds/groups.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";

const book = cropBook();

function kindOf(id: string): Kind {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

test("crossing is the same both ways for every pair of kinds but endive and chicory", () => {
  const differing = kinds.flatMap((a) =>
    kinds
      .filter((b) => a.id < b.id && book.relation(a, b).relation !== book.relation(b, a).relation)
      .map((b) => [a.id, b.id]),
  );
  expect(differing).toEqual([["chicory", "endive"]]);
});

// The Manual of Seed Saving, endive; DIY Seeds, chicory; Southern Seed Exchange.
test("chicory takes pollen of endive, endive none of chicory", () => {
  expect(book.relation(kindOf("chicory"), kindOf("endive")).relation).toBe("sometimes");
  expect(book.relation(kindOf("endive"), kindOf("chicory")).relation).toBe("no");
});

test.each([
  ["potato onion", "onion"],
  ["pearl onion", "onion"],
  ["welsh onion", "bunching-onion"],
  ["tomatillo", "tomatillo"],
  ["scotch bonnet", "habanero"],
  ["weed beet", "sea-beet"],
  ["gherkin", "cucumber"],
  ["bur gherkin", "west-india-gherkin"],
  ["callaloo", undefined],
])("the name %s means %s", (name, id) => {
  expect(book.find(name)?.id).toBe(id);
});

test("a kind crosses freely with itself, and kinds of different groups do not cross", () => {
  for (const a of kinds) {
    expect(book.relation(a, a).relation).toBe("freely");
    for (const b of kinds) if (a.group !== b.group) expect(book.relation(a, b).relation).toBe("no");
  }
});

test("no pair stands twice in the tables, and rows name species that are carried", () => {
  const species = new Set(kinds.map((kind) => kind.species));
  const rows = [...crossingGroups.flatMap((group) => group.relations), ...knownSeparations];
  const keys = rows.map(({ between, oneWay }) =>
    (oneWay === true ? [...between] : [...between].sort()).join("|"),
  );
  expect(keys).toEqual([...new Set(keys)]);
  expect(rows.flatMap(({ between }) => between).filter((name) => !species.has(name))).toEqual([]);
  expect(knownSeparations.every((row) => row.relation === "no")).toBe(true);
});

test("relations of a group are between species of that group", () => {
  for (const group of crossingGroups) {
    const members = new Set(
      kinds.filter((kind) => kind.group === group.id).map((kind) => kind.species),
    );
    const strangers = group.relations.flatMap(({ between }) =>
      between.filter((name) => !members.has(name)),
    );
    expect([group.id, strangers]).toEqual([group.id, []]);
  }
});

describe("the pairs growers ask about", () => {
  test.each([
    ["beet", "chard", "freely"],
    ["beet", "sugar-beet", "freely"],
    ["beet", "spinach", "no"],
    ["carrot", "wild-carrot", "freely"],
    ["carrot", "parsnip", "no"],
    ["summer-squash", "ornamental-gourd", "freely"],
    ["summer-squash", "pumpkin", "freely"],
    ["summer-squash", "winter-squash", "no"],
    ["summer-squash", "butternut", "rarely"],
    ["winter-squash", "butternut", "rarely"],
    ["butternut", "cushaw", "sometimes"],
    ["cucumber", "melon", "no"],
    ["cabbage", "kale", "freely"],
    ["cabbage", "turnip", "no"],
    ["mizuna", "mustard", "sometimes"],
    ["leaf-amaranth", "grain-amaranth", "rarely"],
    ["tomatillo", "husk-tomato", "rarely"],
    ["turnip", "pak-choi", "freely"],
    ["turnip", "rutabaga", "sometimes"],
    ["rutabaga", "cabbage", "rarely"],
    ["kale", "siberian-kale", "rarely"],
    ["mustard", "oilseed-rape", "sometimes"],
    ["radish", "wild-radish", "freely"],
    ["radish", "cabbage", "no"],
    ["pepper", "hot-pepper", "freely"],
    ["pepper", "habanero", "sometimes"],
    ["pepper", "rocoto", "no"],
    ["common-bean", "runner-bean", "rarely"],
    ["lettuce", "prickly-lettuce", "sometimes"],
    ["sunflower", "wild-sunflower", "freely"],
    ["onion", "leek", "no"],
    ["onion", "bunching-onion", "rarely"],
    ["leek", "elephant-garlic", "freely"],
    ["tomato", "currant-tomato", "freely"],
    ["sweet-corn", "popcorn", "freely"],
    ["sorghum", "johnsongrass", "sometimes"],
  ] as const)("%s and %s: %s", (a, b, relation) => {
    const found = book.relation(kindOf(a), kindOf(b));
    expect(found.relation).toBe(relation);
  });

  test("a pair of one group of which nothing is known counts in full, and says so", () => {
    const found = book.relation(kindOf("blood-amaranth"), kindOf("grain-amaranth"));
    expect(found).toMatchObject({ relation: "sometimes", source: null });
    expect(found.note).toContain("nothing published was found");
  });
});
