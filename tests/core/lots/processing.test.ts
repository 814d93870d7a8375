/** How seed is cleaned: against the table of published advice as it was read. */
import { describe, expect, test } from "vitest";
import { processingKinds, processingOf, trustWords } from "../../../src/core/lots/processing.ts";
import { book } from "../../support/trial-plan.ts";

const of = (id: string) => processingOf({ id });

test("every kind named is a kind, and named once", () => {
  expect(processingKinds.filter((id) => !book.kind(id))).toEqual([]);
  expect(new Set(processingKinds).size).toBe(processingKinds.length);
});

/** Sukprakarn and others, AVRDC 05-647, 2005: tomato 1-2 days at 25-30 C; a trial had fungus at 72 h. */
test("tomato ferments, at most three days, with the temperature as read", () => {
  const tomato = of("tomato");
  expect(tomato.way).toBe("fermented");
  expect(tomato.wetDays).toEqual([1, 3]);
  expect(tomato.wet?.text).toContain("1 to 2 days at 25 to 30 C");
  expect(tomato.wet?.source).toContain("AVRDC 05-647");
});

/** ICAR e-course on vegetable seed production: the class lists of dry and wet seed. */
test.each([
  [["okra", "lettuce", "pea", "common-bean", "beet", "onion", "radish", "turnip"], "dry"],
  [["eggplant", "pumpkin", "melon"], "wet"],
  [["tomato", "cucumber"], "fermented"],
] as const)("%j are cleaned %s", (ids, way) => {
  for (const id of ids) expect(of(id).way, id).toBe(way);
});

describe("limits", () => {
  /** ICAR e-course, post-harvest handling, 2012: never above 43 C (110 F). */
  test("no advice is hotter than the hardest limit that was read", () => {
    for (const id of processingKinds) {
      const text = JSON.stringify(of(id));
      const degrees = [...text.matchAll(/(\d+) C\b/g)].map(([, value]) => Number(value));
      expect(Math.max(...degrees), id).toBeLessThanOrEqual(43);
    }
  });

  test("what is recalled says so, wherever it is shown", () => {
    const [recalled, seen] = of("carrot").limits;
    expect(recalled && trustWords(recalled)).toBe("from memory, not checked");
    expect(seen && trustWords(seen)).toMatch(/^read in: e-course on post-harvest handling/);
  });

  test("hot peppers ask for gloves, dry seed for a mask", () => {
    expect(of("hot-pepper").cautions.join()).toContain("gloves");
    expect(of("carrot").cautions.join()).toContain("mask");
    expect(of("tomato").cautions).toEqual([]);
  });
});
