/** A line drawn and told: where its boxes stand, and what is said of its past. */
import { describe, expect, test } from "vitest";
import { lineBook } from "../../../src/core/generations/line.ts";
import { plannedGrowings } from "../../../src/core/generations/planned-growing.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { BOX, drawLine, lotsOfLine } from "../../../src/panel/generations/line-drawing.ts";
import {
  boxLines,
  pastSentences,
  plannedSentences,
} from "../../../src/panel/generations/line-words.ts";
import { book, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const ISOLATION = { judgedOn: 9000, level: "home", sources: [], notObserved: [] } as const;

function lot(id: string, year: number | undefined, more: Partial<Lot> = {}): Lot {
  return {
    id,
    code: id.toUpperCase(),
    variety: "v-p",
    state: "in stock",
    ...(year === undefined ? {} : { harvestYear: year }),
    ...more,
  };
}

const grown = (plants: number, ...from: readonly string[]): Partial<Lot> => ({
  grownFrom: [...from],
  from: { what: "own", plants, pollenPlants: plants, plot: "A1-1" },
});

function drawn(lots: readonly Lot[], kind = "kale") {
  const plan = trialPlan({ p: { at: 0, kind, plants: 30, code: "B1-1", lots: ["d"] } }, [], {
    lots,
  });
  const lines = lineBook(plan, book);
  const all = lotsOfLine(lines.ofVariety("v-p"));
  const planned = plannedGrowings(plan, layoutOf(plan), "v-p", { lines, book });
  return { all, planned, lines, drawing: drawLine(all, planned, 2027) };
}

const family = [
  lot("d", 2026, { ...grown(50, "b", "c"), isolation: { ...ISOLATION, standing: "distance" } }),
  lot("b", 2024, { ...grown(4, "a"), isolation: { ...ISOLATION, standing: "conflict" } }),
  lot("c", 2024, grown(60, "a")),
  lot("a", undefined, { from: { what: "received", who: "A neighbour" } }),
  lot("e", 2026, { partOf: ["d"] }),
];

describe("the drawing", () => {
  const { drawing } = drawn(family);
  const boxOf = (id: string) => drawing.boxes.find((box) => box.id === id);

  test("has years from left to right, steps of one year beside each other, the season last", () => {
    expect(drawing.columns.map(({ label }) => label)).toEqual([
      "year not known",
      "2024",
      "2026",
      "2026",
      "2027, planned",
    ]);
    const xs = drawing.columns.map(({ x }) => x);
    expect(xs).toEqual([...xs].sort((a, b) => a - b));
  });

  test("lays no box on another, and every child right of its parents", () => {
    for (const one of drawing.boxes) {
      for (const other of drawing.boxes) {
        if (one === other) continue;
        const isApart =
          Math.abs(one.x - other.x) >= BOX.width || Math.abs(one.y - other.y) >= BOX.height;
        expect(isApart, `${one.id} ${other.id}`).toBe(true);
      }
    }
    expect(drawing.strokes).toHaveLength(6);
    for (const { from, to } of drawing.strokes) {
      expect(boxOf(to)?.x ?? 0).toBeGreaterThan((boxOf(from)?.x ?? 0) + BOX.width);
    }
  });

  test("marks every stroke that comes after a crossing", () => {
    const marked = drawing.strokes.filter(({ isAfterCrossing }) => isAfterCrossing);
    expect(marked.map(({ from, to }) => `${from}>${to}`).sort()).toEqual([
      "b>d",
      "d>e",
      "d>planned-0",
    ]);
  });
});

describe("the words", () => {
  const { lines, planned } = drawn(family);
  const words = (id: string) => {
    const line = lines.lot(id);
    if (!line) throw new Error("no line");
    return pastSentences(line).join(" ");
  };

  test("tell a crossing first, then what is lost, then where the line begins", () => {
    const all = words("d");
    expect(all).toMatch(/^B was not kept apart/);
    // 1 - (1 - 1/8)(1 - 1/100), by hand 0.13375.
    expect(all).toContain("13 % of its diversity is lost (inbreeding gained, F 0.134)");
    expect(all).toContain("D is of several lots: the one that lost most is followed");
    expect(all).toContain("No isolation is on record for C.");
    expect(all).toContain("The line begins with A");
  });

  test("of the season: what it adds, and what twice as many would", () => {
    const all = planned.flatMap(plannedSentences).join(" ");
    // 1/60, and 1 - 0.86625 x (1 - 1/60).
    expect(all).toContain("it loses 1.7 % of what is there, with all before it 15 %");
    expect(all).toContain("60 plants would lose half as much");
  });

  test("in a box are never longer than it is wide", () => {
    for (const { line } of drawn(family).drawing.boxes) {
      for (const each of line ? boxLines(line) : []) expect(each.length).toBeLessThanOrEqual(24);
    }
  });
});
