import { acceptanceOf } from "../../../src/core/checks/acceptance.ts";
import { describe, expect, test } from "vitest";
import { heldPairs, restingPairSteps } from "../../../src/canvas/draw/pair-lines.ts";
import { type CheckResult, runChecks } from "../../../src/core/checks/run-checks.ts";
import type { Planting, Variety } from "../../../src/core/model/plan.ts";
import { book, drawnPlan, plantingOf, rectangle } from "../../support/drawn-plan.ts";

const july = { first: 20_000, last: 20_030 };
const late = { first: 20_050, last: 20_070 };
const varieties: readonly Variety[] = ["v1", "v2", "v3"].map((id) => ({
  id,
  name: id,
  kind: "tomato",
}));

function tomato(id: string, x: number, more: Partial<Planting> = {}): Planting {
  return plantingOf(id, rectangle(x, 0, 1, 1), { bloom: july, isolationM: 5, ...more });
}

function checked(plantings: readonly Planting[], accepted: readonly string[] = []) {
  const { plan: drawn, layout } = drawnPlan({ plantings, varieties });
  const season = { ...drawn.season, first: july.first - 180, last: july.first + 180 };
  const plan = { ...drawn, season };
  const { findings } = runChecks(plan, layout, book);
  const lived = findings
    .filter(({ id }) => accepted.includes(id))
    .map((finding) => acceptanceOf(finding, layout.id, "small risk"));
  return runChecks({ ...plan, accepted: lived }, layout, book);
}

const near = [tomato("a", 0), tomato("b", 3.7, { variety: "v2" })];

describe("lines of what is selected", () => {
  test("say measured of required with a cross while it is too close", () => {
    const [line, ...more] = heldPairs(checked(near), "m", new Set(["a"]), false);
    expect(more).toEqual([]);
    expect(line).toMatchObject({ tone: "conflict", text: "✕ 2.7 of 5 m", isLight: false });
    expect(line?.ends.map(({ x }) => x).sort((p, q) => p - q)).toEqual([0.5, 3.2]);
  });

  test("show the direction that needs more", () => {
    const uneven = [tomato("a", 0, { isolationM: 8 }), tomato("b", 3.7, { variety: "v2" })];
    const [line] = heldPairs(checked(uneven), "m", new Set(["b"]), false);
    expect(line).toMatchObject({ ids: ["a", "b"], text: "✕ 2.7 of 8 m" });
  });

  test("say what else clears a pair", () => {
    const later = [near[0] as Planting, tomato("b", 3.7, { variety: "v2", bloom: late })];
    expect(heldPairs(checked(later), "m", new Set(["a"]), false)).toMatchObject([
      { tone: "clear", text: "✓ time, 19 days", isLight: true },
    ]);
    const covered = [near[0] as Planting, tomato("b", 3.7, { variety: "v2", cover: "cage" })];
    expect(heldPairs(checked(covered), "m", new Set(["a"]), false)).toMatchObject([
      { tone: "clear", text: "✓ cover", isLight: true },
    ]);
  });

  test("ask where dates are missing", () => {
    const { bloom: _bloom, ...undated } = tomato("b", 3.7, { variety: "v2" });
    expect(
      heldPairs(checked([near[0] as Planting, undated]), "m", new Set(["a"]), false),
    ).toMatchObject([{ tone: "unknown", text: "? 2.7 of 5 m" }]);
  });

  test("tick a pair just cleared by distance, only on the move", () => {
    const clear = checked([tomato("a", 0), tomato("b", 6.5, { variety: "v2" })]);
    expect(heldPairs(clear, "m", new Set(["a"]), false)).toEqual([]);
    expect(heldPairs(clear, "m", new Set(["a"]), true)).toMatchObject([
      { tone: "clear", text: "✓ 5.5 of 5 m", isLight: false },
    ]);
  });

  test("put conflicts first", () => {
    const three = [...near, tomato("c", 2, { variety: "v3", bloom: late })];
    const tones = heldPairs(checked(three), "m", new Set(["a"]), false).map(({ tone }) => tone);
    expect(tones).toEqual(["conflict", "clear"]);
  });
});

/** All steps worked off. */
function restingPairs(
  result: CheckResult,
  unit: "m",
  live: ReadonlySet<string>,
  opened: string | null = null,
) {
  const steps = restingPairSteps(result, unit, live, opened);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

describe("lines at rest", () => {
  test("are the conflicts of what is not selected, one for each pair", () => {
    expect(restingPairs(checked(near), "m", new Set())).toHaveLength(1);
    expect(restingPairs(checked(near), "m", new Set(["b"]))).toEqual([]);
  });

  test("leave out the opened finding and what the grower accepted", () => {
    expect(restingPairs(checked(near), "m", new Set(), "isolation|a|b")).toEqual([]);
    expect(restingPairs(checked(near, ["isolation|a|b"]), "m", new Set())).toEqual([]);
    expect(heldPairs(checked(near, ["isolation|a|b"]), "m", new Set(["a"]), false)).toMatchObject([
      { tone: "accepted", text: "✕ 2.7 of 5 m, accepted" },
    ]);
  });
});
