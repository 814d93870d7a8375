/** The default rule, step by step. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { IsolationFigure, Kind, Level } from "../../../src/core/kinds/crop.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { levelOfClass, levelOrder } from "../../../src/core/kinds/levels.ts";
import { requiredDistance } from "../../../src/core/distances/required-distance.ts";
import { findSource } from "../../../src/core/kinds/sources.ts";
import { figureWords } from "../../../src/core/distances/distance-words.ts";
import { type RequiredDistance } from "../../../src/core/distances/required-distance.ts";

const whyOf = (found: RequiredDistance | null | undefined) =>
  found ? figureWords(found.reason) : "";

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

  test("a variety without a form takes the longer distance, and is asked for it", () => {
    expect(metres("tomato", "home")).toBeCloseTo(7.62, 9);
    const found = requiredDistance(kindOf("tomato"), undefined, "home");
    expect(found?.isFormUnsaid).toBe(true);
    expect(whyOf(found)).toContain("say which it is");
    expect(requiredDistance(kindOf("tomato"), undefined, "stock")?.isFormUnsaid).toBe(false);
  });

  test("both are marked common practice and say which form they hold for", () => {
    const found = requiredDistance(kindOf("tomato"), "potato-leaf", "home");
    expect(findSource(found?.figure.source ?? "")?.trust).toBe("common practice");
    expect(whyOf(found)).toBe("home practice, about 25 ft; for potato-leaf or long-styled plants");
  });

  test("a form without figures of its own at a level takes those for any form", () => {
    expect(requiredDistance(kindOf("tomato"), "potato-leaf", "sale")?.figure.id).toBe(
      "india-certified",
    );
    expect(metres("tomato", "stock", "potato-leaf")).toBeCloseTo(60.96, 9);
  });
});

describe("the rule", () => {
  const book2013 = "manual-seed-saving";
  const required = (kind: Kind, level: Level) => requiredDistance(kind, undefined, level);

  test("for sale: seed law before books and pages, of which the middle counts", () => {
    const page = figure("page", "handbook commercial", 900, "garden-chart");
    const paper = figure("paper", "handbook commercial", 500, book2013);
    const far = figure("far", "handbook commercial", 5000, "koanga");
    const law = figure("law", "eu certified", 100, "eu-2002-55");
    expect(required(kindWith(page, paper, law), "sale")?.figure).toBe(law);
    expect(required(kindWith(page, paper, far), "sale")?.figure).toBe(page);
    expect(required(kindWith(page, paper), "sale")?.figure).toBe(page);
  });

  test("a teaching page or a reading may raise a distance and never lowers one", () => {
    const teaching = figure("teaching", "india certified", 500, "icar-ecourse");
    const reading = figure("reading", "eu certified", 300, "de-saatv", { standing: "reading" });
    const law = figure("law", "us certified", 400, "cfr-201-76");
    const paper = figure("paper", "handbook commercial", 1500, book2013);
    const home = figure("home", "handbook home", 800, book2013);
    expect(required(kindWith(law, teaching, reading), "sale")?.figure).toBe(teaching);
    expect(required(kindWith(paper, teaching, reading), "sale")?.figure).toBe(paper);
    for (const level of levelOrder) {
      const metresNow = required(kindWith(home, teaching, reading), level)?.figure.metres;
      expect(metresNow).toBe(800);
    }
  });

  test("for a garden: what names the kind before the law, the middle of it, outliers aside", () => {
    const three = figure("three", "handbook home", 3, "seeds-of-diversity-2017");
    const six = figure("six", "handbook home", 6, "garden-chart");
    const fifty = figure("fifty", "handbook home", 50, "espace-selfers");
    const law = figure("law", "us certified", 200, "cfr-201-76");
    expect(required(kindWith(three, six, fifty, law), "home")?.figure).toBe(six);
    const set = { ...fifty, outlier: "far from the others" };
    const found = required(kindWith(six, set, law), "home");
    expect(found?.figure).toBe(six);
    expect(found?.range).toEqual({ leastM: 6, mostM: 50 });
  });

  test("takes home practice at the home level even where a book asks more", () => {
    const practice = figure("practice", "practice home", 3, "home-practice");
    const paper = figure("paper", "handbook home", 60, book2013);
    expect(required(kindWith(paper, practice), "home")?.figure).toBe(practice);
  });

  test("goes to the next stricter level where there is no figure, and says so", () => {
    const law = figure("law", "us certified", 30, "cfr-201-76");
    const stock = figure("stock", "us foundation", 200, "cfr-201-76");
    const found = required(kindWith(stock, law), "home");
    expect(found?.figure).toBe(law);
    expect(found?.levelUsed).toBe("sale");
    expect(whyOf(found)).toContain("so that for sale");
    expect(required(kindWith(stock), "home")?.levelUsed).toBe("stock");
    expect(required(kindWith(stock), "sale")?.levelUsed).toBe("stock");
  });

  test("keeps at least a laxer level's figure, and says that enough is not known", () => {
    const home = figure("home", "handbook home", 30, book2013);
    for (const level of ["sale", "stock"] as const) {
      const found = required(kindWith(home), level);
      expect(found).toMatchObject({ figure: home, isFloor: true });
      expect(whyOf(found)).toContain("what is enough is not known");
    }
    expect(required(kindWith(), "home")).toBeNull();
  });

  test("never asks less of a stricter level", () => {
    const home = figure("home", "handbook home", 3000, book2013);
    const sale = figure("sale", "us certified", 201.168, "cfr-201-76");
    const found = required(kindWith(home, sale), "sale");
    expect(found).toMatchObject({ figure: home, isFloor: false });
    expect(whyOf(found)).toContain("the figure for home, which asks more than that for sale");
    for (const kind of kinds) {
      for (const form of kind.forms ?? [undefined]) {
        const all = levelOrder.map((level) => requiredDistance(kind, form?.id, level));
        const asked = all.map((entry) => entry?.figure.metres ?? 0);
        expect([kind.id, asked]).toEqual([kind.id, [...asked].sort((a, b) => a - b)]);
      }
    }
  });

  test("a published 0 gives way to any other figure found", () => {
    const mixing = figure("mixing", "us certified", 0, "cfr-201-76");
    const paper = figure("paper", "handbook commercial", 6, book2013);
    expect(required(kindWith(mixing, paper), "sale")?.figure).toBe(paper);
    expect(required(kindWith(mixing), "home")?.figure).toBe(mixing);
  });

  test("takes a recalled figure only where no seen one is found at this level or a stricter", () => {
    const recalled = figure("recalled", "handbook home", 900, "memory");
    const law = figure("law", "eu basic", 100, "eu-2002-55");
    expect(required(kindWith(recalled, law), "home")?.figure).toBe(law);
    const alone = required(kindWith(recalled), "home");
    expect(alone?.figure).toBe(recalled);
    expect(whyOf(alone)).toContain("from memory, not checked");
  });

  test("passes over figures of another purpose", () => {
    const bulbs = figure("bulbs", "india certified", 5, "icar-ecourse", { neverDefault: "bulbs" });
    expect(required(kindWith(bulbs), "sale")).toBeNull();
  });

  test("names the case a figure holds for", () => {
    expect(whyOf(required(kindOf("beet"), "sale"))).toMatch(
      /^EU certified seed, 1000 m; from any beet pollen/,
    );
  });
});

describe("every kind", () => {
  test("no recalled figure is the default where a seen one exists", () => {
    let recalled = 0;
    for (const kind of kinds)
      for (const level of levelOrder) {
        const found = requiredDistance(kind, undefined, level);
        if (findSource(found?.figure.source ?? "")?.trust !== "from memory") continue;
        recalled += 1;
        const strict = levelOrder.slice(levelOrder.indexOf(level));
        const seen = kind.isolation.filter(
          (entry) =>
            strict.includes(levelOfClass(entry.figureClass)) &&
            entry.neverDefault === undefined &&
            findSource(entry.source)?.trust !== "from memory",
        );
        expect([kind.id, level, seen]).toEqual([kind.id, level, []]);
      }
    expect(recalled).toBeGreaterThan(5);
  });

  test("a default comes from its own kind and lies within its range", () => {
    let defaults = 0;
    for (const kind of kinds)
      for (const form of kind.forms ?? [undefined])
        for (const level of levelOrder) {
          const found = requiredDistance(kind, form?.id, level);
          if (!found) continue;
          defaults += 1;
          expect(kind.isolation).toContain(found.figure);
          expect(found.figure.metres).toBeGreaterThanOrEqual(found.range.leastM);
          expect(found.figure.metres).toBeLessThanOrEqual(found.range.mostM);
          expect(whyOf(found)).toContain(found.figure.published);
        }
    expect(defaults).toBeGreaterThan(kinds.length);
  });

  test.each([
    ["lettuce", "home", 5],
    ["lettuce", "sale", 25],
    ["maize", "sale", 536.448],
    ["carrot", "home", 804.672],
    ["carrot", "stock", 1000],
    ["beet", "home", 1000],
    ["onion", "sale", 500],
    ["onion", "stock", 1609.344],
    ["okra", "home", 251.46],
    ["cabbage", "sale", 800],
    ["cabbage", "stock", 1000],
    ["sunflower", "sale", 804.672],
    ["common-bean", "home", 6.096],
    ["pea", "home", 6.096],
    ["pea", "sale", 12],
    ["broad-bean", "sale", 800],
    ["broad-bean", "stock", 800],
    ["habanero", "home", 50],
    ["habanero", "sale", 200],
    ["turnip", "home", 800],
    ["celery", "home", 1000],
    ["runner-bean", "home", 800],
    ["grain-amaranth", "home", 400],
    ["endive", "home", 500],
  ] as const)("%s at %s: %d m", (id, level, expected) => {
    expect(metres(id, level)).toBeCloseTo(expected, 9);
  });
});
