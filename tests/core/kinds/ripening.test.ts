/** Ripening and gene-bank numbers against the rows they were read from. */
import { describe, expect, test } from "vitest";
import { populationAdvice } from "../../../src/core/generations/advice.ts";
import { geneBankNumber } from "../../../src/core/generations/gene-banks.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { finishOf, frostLimit } from "../../../src/core/kinds/finish-ripening.ts";
import { findSource } from "../../../src/core/kinds/sources.ts";

const book = cropBook();
const kind = (id: string) => {
  const found = book.kind(id);
  if (!found) throw new Error(`no kind ${id}`);
  return found;
};

/** Days from the flower, each with who measured them. */
const MEASURED = [
  ["cabbage", 80, "most seed: J. Hort. Sci. 60:65-75, 1985"],
  ["cabbage", 94, "best seed, 80 and two weeks: the same"],
  ["cabbage", 101, "best seed, 80 and three weeks: the same"],
  ["carrot", 35, "mass maturity, Brazil: Cienc. Agrotec. 2017"],
  ["carrot", 55, "85 % germination, Tasmania: CQU"],
  ["carrot", 87, "85 % germination, Tasmania: CQU"],
  ["carrot", 90, "embryos still grow, Tasmania: CQU"],
  ["onion", 45, "single flowers: Flowering and seed maturation of the onion crop"],
  ["onion", 60, "field cut after first bloom: the same"],
  ["watermelon", 40, "best keeping, cool site: crop of 2002"],
  ["watermelon", 45, "best keeping, warm site: crop of 2002"],
  ["cucumber", 49, "oldest fruit tried: fruit age and fermentation"],
  ["cucumber", 54, "oldest fruit tried: fruit age and fermentation"],
  ["melon", 54, "oldest fruit tried: fruit age and fermentation"],
  ["summer-squash", 54, "oldest fruit tried: fruit age and fermentation"],
  ["pepper", 56, "8th week: Rev. FCA UNCUYO 49(2)"],
  ["pepper", 75, "wholly red: Sci. Agric. 68(5)"],
] as const;

test.each(MEASURED)("%s may take the %i days measured (%s)", (id, days) => {
  const figure = kind(id).timing.flowerToSeed;
  const [least = 0, most = 0] = figure?.value ?? [];
  expect(findSource(figure?.source ?? "")?.trust).toBe("seen");
  expect(days).toBeGreaterThanOrEqual(least);
  expect(days).toBeLessThanOrEqual(most);
});

/** Plants of one accession, by the gene banks' own pages. */
test.each([
  ["spinach", 80],
  ["onion", 250],
  ["leek", 80],
  ["turnip", 50],
  ["radish", 50],
  ["cabbage", 100],
  ["tomato", 7],
] as const)("gene banks grow at least so many %s plants: %i", (id, plants) => {
  expect(geneBankNumber(kind(id))?.plants).toBe(plants);
});

describe("who is named first", () => {
  test("gene banks for what crosses, handbooks for what selfs", () => {
    expect(populationAdvice(kind("kale")).map(({ by, plants }) => [by, plants])).toEqual([
      ["gene banks", 100],
      ["handbooks", 20],
    ]);
    expect(populationAdvice(kind("tomato")).map(({ by }) => by)).toEqual([
      "handbooks",
      "gene banks",
    ]);
  });

  test("nothing from memory where anything was read, and no floor from memory at all", () => {
    for (const each of book.kinds) {
      const advice = populationAdvice(each);
      const isRead = advice.some(({ by }) => by !== "from memory");
      expect(isRead && advice.some(({ by }) => by === "from memory"), each.id).toBe(false);
      const viable = each.population?.viable;
      expect(viable && findSource(viable.source)?.trust, each.id).not.toBe("from memory");
    }
  });

  test("a number of handbooks goes before the gene banks' as the one that is asked", () => {
    expect(kind("onion").population?.maintenance?.value).toBe(15);
    expect(populationAdvice(kind("turnip")).map(({ by, plants }) => [by, plants])).toEqual([
      ["gene banks", 50],
    ]);
  });
});

describe("ways out of a frost", () => {
  test.each(["tomato", "watermelon", "hot-pepper", "butternut", "cucumber", "eggplant"])(
    "%s can be cut and rested",
    (id) => {
      expect(finishOf(kind(id))).toMatchObject({ by: "fruit" });
    },
  );

  test.each(["common-bean", "carrot", "lettuce", "maize", "okra", "tobacco", "luffa"])(
    "%s cannot",
    (id) => {
      expect(finishOf(kind(id))).toEqual({ by: "dry" });
    },
  );

  test("what frost does is told where it was measured, and nowhere else", () => {
    const told = book.kinds.filter((each) => frostLimit(each) !== undefined).map(({ id }) => id);
    expect(told.sort()).toEqual(["maize", "popcorn", "soybean", "sweet-corn"]);
  });
});
