/** The form for a mark on the ground: what it refuses, and what it keeps. */
import { describe, expect, test } from "vitest";
import { dayFromIso } from "../../../src/core/model/day.ts";
import type { GroundMark, Layout } from "../../../src/core/model/plan.ts";
import {
  diseaseChoices,
  markDraft,
  markProblem,
  markTitle,
  marksOfDraft,
} from "../../../src/panel/earlier-crops/mark-words.ts";

const outline = { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 4, turnDeg: 0 } as const;
const layout: Layout = {
  id: "layout-1",
  name: "Layout 1",
  beds: ["B01", "B02"].map((code, index) => ({
    id: code,
    code,
    outline: { ...outline, x: index * 2 },
  })),
  plantings: [],
};
const seenOn = dayFromIso("2024-07-12") ?? 0;

describe("a new mark", () => {
  const fresh = markDraft(null, layout);

  test("is refused without a day, without ground, and another disease without name or kind", () => {
    expect(markProblem(fresh)).toContain("Type the day");
    expect(markProblem({ ...fresh, seenOn })).toContain("Tick the beds");
    expect(markProblem({ ...fresh, seenOn, beds: ["B01"] })).toBeNull();
    const other = { ...fresh, seenOn, beds: ["B01"], disease: "other" };
    expect(markProblem(other)).toContain("a name");
    expect(markProblem({ ...other, name: "Rust" })).toContain("kind it harms");
    expect(markProblem({ ...other, name: "Rust", kind: "leek" })).toBeNull();
  });

  test("is one for each bed ticked", () => {
    const marks = marksOfDraft({ ...fresh, seenOn, beds: ["B01", "B02"] }, null, layout);
    expect(marks).toEqual([
      { outline, disease: "white-rot", seenOn },
      { outline: { ...outline, x: 2 }, disease: "white-rot", seenOn },
    ]);
    expect(markTitle({ disease: "white-rot" })).toBe("Mark white rot");
  });
});

test("a mark that is there keeps its ground, its kinds and what it is called", () => {
  const mark: GroundMark = {
    id: "m",
    outline,
    disease: "rust",
    name: "Rust",
    kinds: ["leek", "onion"],
    seenOn,
  };
  const draft = markDraft(mark, layout);
  expect(markProblem(draft)).toBeNull();
  expect(marksOfDraft(draft, mark, layout)).toEqual([
    { outline, disease: "other", name: "Rust", kinds: ["leek", "onion"], seenOn },
  ]);
  expect(diseaseChoices.map(({ value }) => value)).toContain(draft.disease);
});
