/** The default rule, step by step. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { IsolationFigure, Kind, Level } from "../../../src/core/kinds/crop.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { levelOfClass, levelOrder } from "../../../src/core/kinds/levels.ts";
import { requiredDistance } from "../../../src/core/distances/required-distance.ts";
import { findSource } from "../../../src/core/kinds/sources.ts";

const book = cropBook();

function kindOf(id: string): Kind {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

function metres(id: string, level: Level, form?: string): number | undefined {
  return requiredDistance(kindOf(id), form, level)?.figure.metres;
}

/** A made-up kind with these figures. */
function kindWith(...isolation: readonly IsolationFigure[]): Kind {
  return { ...kindOf("lettuce"), isolation };
}

function figure(
  id: string,
  figureClass: IsolationFigure["figureClass"],
  distanceM: number,
  source: string,
  more: Partial<IsolationFigure> = {},
): IsolationFigure {
  return { id, figureClass, metres: distanceM, published: `${distanceM} m`, source, ...more };
}

describe("tomato at home", () => {
  const FIFTEEN_FEET_M = 4.572;

  test("a regular-leaf tomato needs about 10 ft, a potato-leaf one about 25 ft", () => {
    expect(metres("tomato", "home", "regular")).toBeCloseTo(3.048, 9);
    expect(metres("tomato", "home", "potato-leaf")).toBeCloseTo(7.62, 9);
  });

  test("at 15 ft the potato-leaf seed parent is at risk and the regular one is not", () => {
    expect(metres("tomato", "home", "regular")).toBeLessThan(FIFTEEN_FEET_M);
    expect(metres("tomato", "home", "potato-leaf")).toBeGreaterThan(FIFTEEN_FEET_M);
  });

  test("a variety without a form is taken as regular-leaf", () => {
    expect(metres("tomato", "home")).toBeCloseTo(3.048, 9);
  });

  test("both are marked common practice and say which form they hold for", () => {
    const found = requiredDistance(kindOf("tomato"), "potato-leaf", "home");
    expect(findSource(found?.figure.source ?? "")?.trust).toBe("common practice");
    expect(found?.why).toBe("home practice, about 25 ft; for potato-leaf or long-styled plants");
  });

  test("a form without figures of its own at a level takes those for any form", () => {
    expect(requiredDistance(kindOf("tomato"), "potato-leaf", "sale")?.figure.id).toBe(
      "india-certified",
    );
    expect(metres("tomato", "stock", "potato-leaf")).toBeCloseTo(60.96, 9);
  });
});

describe("the rule", () => {
  test("takes seed law before a book before a page, however large", () => {
    const page = figure("page", "handbook commercial", 900, "garden-chart");
    const paper = figure("paper", "handbook commercial", 500, "manual-seed-saving");
    const law = figure("law", "eu certified", 100, "eu-2002-55");
    expect(requiredDistance(kindWith(page, paper, law), undefined, "sale")?.figure).toBe(law);
    expect(requiredDistance(kindWith(page, paper), undefined, "sale")?.figure).toBe(paper);
    expect(requiredDistance(kindWith(page), undefined, "sale")?.figure).toBe(page);
  });

  test("takes the largest of the best rank and gives the range of all ranks", () => {
    const found = requiredDistance(
      kindWith(
        figure("a", "eu certified", 300, "eu-2002-55"),
        figure("b", "india certified", 500, "icar-ecourse"),
        figure("c", "handbook commercial", 1500, "manual-seed-saving"),
        figure("d", "us foundation", 9, "cfr-201-76"),
      ),
      undefined,
      "sale",
    );
    expect(found?.figure.id).toBe("b");
    expect(found?.range).toEqual({ leastM: 300, mostM: 1500 });
    expect(found?.level).toBe("sale");
    expect(found?.levelUsed).toBe("sale");
  });

  test("takes home practice at the home level even where a book asks more", () => {
    const practice = figure("practice", "practice home", 3, "home-practice");
    const paper = figure("paper", "handbook home", 60, "manual-seed-saving");
    expect(requiredDistance(kindWith(paper, practice), undefined, "home")?.figure).toBe(practice);
  });

  test("goes to the next stricter level where there is no figure, and says so", () => {
    const law = figure("law", "us certified", 30, "cfr-201-76");
    const stock = figure("stock", "us foundation", 200, "cfr-201-76");
    const found = requiredDistance(kindWith(stock, law), undefined, "home");
    expect(found?.figure).toBe(law);
    expect(found?.levelUsed).toBe("sale");
    expect(found?.why).toContain("no figure for the home level, so that for sale");
    expect(requiredDistance(kindWith(stock), undefined, "home")?.levelUsed).toBe("stock");
  });

  test("never goes to a laxer level", () => {
    const home = figure("home", "handbook home", 30, "manual-seed-saving");
    expect(requiredDistance(kindWith(home), undefined, "sale")).toBeNull();
    expect(requiredDistance(kindWith(home), undefined, "stock")).toBeNull();
    expect(requiredDistance(kindWith(), undefined, "home")).toBeNull();
  });

  test("never asks less of stock seed than of seed for sale", () => {
    const sale = figure("sale", "washington rule", 3000, "wac-16-326-040");
    const stock = figure("stock", "eu basic", 1000, "eu-2002-55");
    const found = requiredDistance(kindWith(sale, stock), undefined, "stock");
    expect(found?.figure).toBe(sale);
    expect(found?.why).toContain("which asks more than that for stock");
    for (const kind of kinds) {
      const forStock = requiredDistance(kind, undefined, "stock");
      const forSale = requiredDistance(kind, undefined, "sale");
      if (forStock && forSale)
        expect(forStock.figure.metres).toBeGreaterThanOrEqual(forSale.figure.metres);
    }
  });

  test("never asks more of seed for home than of seed for sale, unless that is 0", () => {
    const home = figure("home", "handbook home", 3000, "manual-seed-saving");
    const sale = figure("sale", "us certified", 201.168, "cfr-201-76");
    const found = requiredDistance(kindWith(home, sale), undefined, "home");
    expect(found?.figure).toBe(sale);
    expect(found?.why).toContain("which asks less than that for home");
    const mixing = figure("sale", "us certified", 0, "cfr-201-76");
    expect(requiredDistance(kindWith(home, mixing), undefined, "home")?.figure).toBe(home);
    for (const kind of kinds) {
      const forHome = requiredDistance(kind, undefined, "home")?.figure.metres ?? 0;
      const forSale = requiredDistance(kind, undefined, "sale")?.figure.metres ?? 0;
      if (forSale > 0) expect(forHome).toBeLessThanOrEqual(forSale);
    }
  });

  test("takes a recalled figure only where no seen one is found at this level or a stricter", () => {
    const recalled = figure("recalled", "handbook home", 900, "memory");
    const law = figure("law", "eu basic", 100, "eu-2002-55");
    expect(requiredDistance(kindWith(recalled, law), undefined, "home")?.figure).toBe(law);
    const alone = requiredDistance(kindWith(recalled), undefined, "home");
    expect(alone?.figure).toBe(recalled);
    expect(alone?.why).toContain("from memory, not checked");
  });

  test("passes over figures of another purpose", () => {
    const bulbs = figure("bulbs", "india certified", 5, "icar-ecourse", { neverDefault: "bulbs" });
    expect(requiredDistance(kindWith(bulbs), undefined, "sale")).toBeNull();
  });

  test("names the case a figure holds for", () => {
    expect(requiredDistance(kindOf("beet"), undefined, "sale")?.why).toMatch(
      /^EU certified seed, 1000 m; from any beet pollen/,
    );
  });
});

describe("every kind", () => {
  test("no recalled figure is the default where a seen one exists", () => {
    for (const kind of kinds)
      for (const level of levelOrder) {
        const found = requiredDistance(kind, undefined, level);
        if (findSource(found?.figure.source ?? "")?.trust !== "from memory") continue;
        const strict = levelOrder.slice(levelOrder.indexOf(level));
        const seen = kind.isolation.filter(
          (entry) =>
            strict.includes(levelOfClass(entry.figureClass)) &&
            entry.neverDefault === undefined &&
            findSource(entry.source)?.trust !== "from memory",
        );
        expect([kind.id, level, seen]).toEqual([kind.id, level, []]);
      }
  });

  test("a default comes from its own kind and lies within its range", () => {
    for (const kind of kinds)
      for (const form of kind.forms ?? [undefined])
        for (const level of levelOrder) {
          const found = requiredDistance(kind, form?.id, level);
          if (!found) continue;
          expect(kind.isolation).toContain(found.figure);
          expect(found.figure.metres).toBeGreaterThanOrEqual(found.range.leastM);
          expect(found.figure.metres).toBeLessThanOrEqual(found.range.mostM);
          expect(found.why).toContain(found.figure.published);
        }
  });

  test.each([
    ["lettuce", "home", 5],
    ["lettuce", "sale", 25],
    ["maize", "sale", 201.168],
    ["sweet-corn", "sale", 201.168],
    ["carrot", "home", 152.4],
    ["carrot", "sale", 800],
    ["beet", "home", 1000],
    ["onion", "stock", 1609.344],
    ["okra", "home", 251.46],
    ["cabbage", "sale", 3218.688],
    ["cabbage", "stock", 3218.688],
    ["sunflower", "sale", 804.672],
  ] as const)("%s at %s: %d m", (id, level, expected) => {
    expect(metres(id, level)).toBeCloseTo(expected, 9);
  });
});
