/** What the arranger has found after how long, on three seeded cases whose best is known. */
import loadHighs from "highs";
import { expect, test } from "vitest";
import { anneal } from "../../src/core/arrange/anneal.ts";
import { type ArrangeProblem, arrangeProblem } from "../../src/core/arrange/arrange-problem.ts";
import type { Trouble } from "../../src/core/arrange/arrange-state.ts";
import { fewestInSlots } from "../../src/core/arrange/fewest-in-slots.ts";
import type { Plan } from "../../src/core/model/plan.ts";
import {
  bed,
  checkedLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../support/arrange-garden.ts";
import { seeded } from "./field.ts";
import { reportRow } from "./report.ts";

const MARKS_S = [0.25, 0.5, 1, 2, 5] as const;
/** As many as the window gives each planting, and at least as many in all. */
const STEPS_EACH = 20_000;
const LEAST_STEPS = 100_000;
const KINDS = ["tomato", "beet", "onion", "carrot", "radish", "lettuce", "spinach", "parsnip"];

interface Mark {
  readonly seconds: number;
  /** Null where it had ended by itself before. */
  readonly trouble: Trouble | null;
}

/** Arranges as the window does and looks at the best at each mark. */
function overTime(problem: ArrangeProblem): {
  readonly marks: readonly Mark[];
  readonly last: Trouble;
} {
  const steps = Math.max(LEAST_STEPS, STEPS_EACH * problem.pieces.length);
  const marks: Mark[] = [];
  const start = performance.now();
  const run = anneal(problem, { seed: 1, steps });
  for (;;) {
    const { done, value } = run.next(false);
    const seconds = (performance.now() - start) / 1000;
    const trouble = done === true ? value.trouble : value.best;
    const reached = done === true ? MARKS_S : MARKS_S.filter((mark) => seconds >= mark);
    for (const at of reached.slice(marks.length)) {
      marks.push({ seconds: at, trouble: seconds >= at ? trouble : null });
    }
    if (done === true) return { marks, last: value.trouble };
  }
}

/** Groups of one kind each, heaped into beds that take one planting each: the optimum is proven. */
function slotCase(groups: number, each: number, beds: number, least: number, seed: number): Plan {
  const next = seeded(seed);
  const places = Array.from({ length: beds }, (_, index): readonly [number, number] => [
    (index % 5) * 9 + next() * 6,
    Math.floor(index / 5) * 9 + next() * 6,
  ]);
  const metres = Array.from({ length: groups }, () => least + Math.round(next() * 15));
  const ids = Array.from({ length: groups * each }, (_, index) => `v${index}`);
  const groupOf = (index: number) => Math.floor(index / each);
  return gardenPlan(
    ids.map((id, index) =>
      variety(id, KINDS[groupOf(index) % KINDS.length] ?? "tomato", {
        isolationM: metres[groupOf(index)] ?? least,
      }),
    ),
    places.map(([x, y], index) => bed(`b${index}`, x, y, 1, 1)),
    ids.map((id, index) => {
      const [x, y] = places[index] ?? [0, 0];
      return planting(`p-${id}`, id, { outline: square(x, y, 1) });
    }),
  );
}

/**
 * Ten points in a square of 100 m, all in its middle: by the published table of equal circles in
 * a square (OEIS A281065 counts the same) they can be 42.13 m apart; 98 % of that is asked.
 */
function freeCase(): Plan {
  const ids = Array.from({ length: 10 }, (_, index) => `v${index}`);
  return gardenPlan(
    ids.map((id) => variety(id, "tomato", { isolationM: 100 * 0.4213 * 0.98 })),
    [bed("b1", 0, 0, 100.01, 100.01)],
    ids.map((id) => planting(`p-${id}`, id, { outline: square(0, 0, 0.01) })),
  );
}

async function provenConflicts(problem: ArrangeProblem): Promise<number | null> {
  const home = problem.pieces.map(() => null);
  const proof = fewestInSlots(problem, home, await loadHighs(), 60);
  return proof.kind === "proven" ? proof.conflicts : null;
}

test.each([
  ["12 plantings of 4 groups in 14 beds", slotCase(4, 3, 14, 15, 1), true],
  ["20 plantings of 10 groups in 22 beds", slotCase(10, 2, 22, 35, 10), true],
  ["10 plantings free in a square, 98 % of the published best apart", freeCase(), false],
] as const)(
  "%s",
  async (size, plan, isProven) => {
    const problem = arrangeProblem(checkedLayout(plan));
    const bound = isProven ? await provenConflicts(problem) : 0;
    const { marks, last } = overTime(problem);
    const best = isProven ? `proven best ${bound ?? "not proven in time"}` : "known best 0";
    for (const { seconds, trouble } of marks) {
      const value =
        trouble === null
          ? "ended by itself before"
          : `${trouble.conflicts + trouble.overlaps} pairs too close, ${Math.abs(trouble.shortfall).toFixed(2)} of distances short`;
      reportRow({
        section: "Arranger",
        what: `after ${seconds} s (${best})`,
        size,
        value,
        unit: "",
      });
    }
    const left = last.conflicts + last.overlaps;
    reportRow({
      section: "Arranger",
      what: "pairs too close at the end",
      size,
      value: left,
      unit: "",
      budget: `at most 1 % above the ${isProven ? "proven" : "known"} best${bound === null ? "" : `, ${bound}`}`,
      isMet: bound !== null && left <= bound * 1.01,
    });
    expect(last.overlaps).toBe(0);
  },
  180_000,
);
