import { describe, expect, test } from "vitest";
import { foundRows, inOrderOf } from "../../../src/panel/seed-list/seed-list-order.ts";
import type { SeedListRow } from "../../../src/panel/seed-list/seed-list-rows.ts";

function row(name: string, kindText: string, isShort = false, reason?: string): SeedListRow {
  const variety = { id: name, name, kind: "tomato", ...(reason === undefined ? {} : { reason }) };
  return {
    variety,
    kind: undefined,
    kindText,
    plantingIds: [],
    placedPlants: 0,
    placedText: "",
    isShort,
    hasLots: false,
  };
}

const rows = [
  row("Old Ferry", "tomato, regular-leaf"),
  row("Kettle Dun", "common bean", true),
  row("Béla Dune", "carrot"),
  row("Amber 10", "tomato", true, "Grown out in 2019"),
  row("Amber 9", "tomato"),
];
const names = (listed: readonly SeedListRow[]) => listed.map(({ variety }) => variety.name);

describe("the order of the seed list", () => {
  test("what is still to place comes first, else the order stays", () => {
    expect(names(inOrderOf(rows, "to-place"))).toEqual([
      "Kettle Dun",
      "Amber 10",
      "Old Ferry",
      "Béla Dune",
      "Amber 9",
    ]);
  });
  test("names are read with their numbers and accents", () => {
    expect(names(inOrderOf(rows, "name"))).toEqual([
      "Amber 9",
      "Amber 10",
      "Béla Dune",
      "Kettle Dun",
      "Old Ferry",
    ]);
  });
  test("by kind, and as they were added", () => {
    expect(names(inOrderOf(rows, "kind"))[0]).toBe("Béla Dune");
    expect(inOrderOf(rows, "listed")).toBe(rows);
  });
});

test("a variety is found by its name, kind or reason, without accents", () => {
  expect(names(foundRows(rows, "bela"))).toEqual(["Béla Dune"]);
  expect(names(foundRows(rows, "tomato amber"))).toEqual(["Amber 10", "Amber 9"]);
  expect(names(foundRows(rows, "2019"))).toEqual(["Amber 10"]);
  expect(foundRows(rows, "  ")).toBe(rows);
  expect(foundRows(rows, "squash")).toEqual([]);
});
