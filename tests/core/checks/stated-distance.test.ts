/** Figures picked by hand, distances typed, and what regulations let change, as findings name them. */
import { describe, expect, test } from "vitest";
import { planBook } from "../../../src/core/kinds/own-kinds.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { describeFinding } from "../../../src/core/checks/all-checks.ts";
import { wordingFor } from "../../../src/core/checks/wording.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  check,
  findingsOf,
  layoutOf,
  pairsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";
import { whyWords } from "../../../src/core/checks/pair-words.ts";
import { type Requirement } from "../../../src/core/checks/isolation-pair.ts";

const FEET = 0.3048;

function two(kind: string, gapM: number, first: Parameters<typeof trialPlan>[0][string]): Plan {
  return trialPlan({ p: first, q: { at: gapM + 1, kind, purpose: "food" } }, [], { level: "sale" });
}

function requirement(plan: Plan) {
  return check(plan).standById.get("p")?.requirement;
}

describe("a figure picked for a variety", () => {
  const picked = two("tomato", 5, { at: 0, kind: "tomato", variety: { figure: "us-certified" } });

  test("is what the seed parent is held to, in place of the default", () => {
    expect(requirement(picked)).toMatchObject({
      figure: "us-certified",
      picked: { id: "us-certified" },
    });
    expect(whyWords(requirement(picked) as Requirement)).toBe(
      "US certified seed, 30 ft; picked for this variety",
    );
    expect(requirement(picked)?.metres).toBeCloseTo(30 * FEET, 9);
    expect(requirement(two("tomato", 5, { at: 0, kind: "tomato" }))?.metres).toBe(25);
  });

  test("is named by the finding with its source", () => {
    expect(wordsOf(picked, "isolation")[0]).toContain(
      "needs 9.1 m (tomato, US certified seed as picked for this variety, 7 CFR 201.76",
    );
  });

  test("gives way to a distance typed for the variety, and that to the planting's", () => {
    const variety = { figure: "us-certified", isolationM: 12 };
    const typed = two("tomato", 5, { at: 0, kind: "tomato", variety });
    expect(requirement(typed)).toMatchObject({ metres: 12, from: "variety" });
    expect(wordsOf(typed, "isolation")[0]).toContain("needs 12 m (tomato, typed for this variety)");
    const planting = two("tomato", 5, { at: 0, kind: "tomato", variety, isolationM: 8 });
    expect(requirement(planting)).toMatchObject({ metres: 8, from: "planting" });
  });

  test("a figure the kind does not have is as none", () => {
    const gone = two("tomato", 5, { at: 0, kind: "tomato", variety: { figure: "us-guess" } });
    expect(requirement(gone)?.metres).toBe(25);
  });
});

describe("what a regulation lets change", () => {
  const barriers = [{ id: "watermelon-barriers" }];
  const melon = (adjustments: typeof barriers | undefined, gapM: number) =>
    two("watermelon", gapM, {
      at: 0,
      kind: "watermelon",
      variety: { figure: "us-certified" },
      ...(adjustments && { adjustments }),
    });

  test("clears the pair only where it is stated", () => {
    const full = requirement(melon(undefined, 1))?.metres ?? 0;
    const between = full * 0.75;
    expect(pairsOf(melon(undefined, between)).get("p<-q")?.standing).toBe("conflict");
    expect(pairsOf(melon(barriers, between)).get("p<-q")?.standing).toBe("distance");
    expect(requirement(melon(barriers, 1))?.metres).toBeCloseTo(full / 2, 9);
  });

  test("is named by the finding and kept on record", () => {
    expect(wordsOf(melon(barriers, 1), "isolation")[0]).toContain(
      "; half the distance: natural or artificial barriers protect the field well (7 CFR 201.76 Table 5, footnote 26))",
    );
    expect(requirement(melon(barriers, 1))?.adjustments).toMatchObject([
      { adjustment: "watermelon-barriers" },
    ]);
    expect(whyWords(requirement(melon(barriers, 1)) as Requirement)).toContain(
      "; half the distance: natural",
    );
  });

  test("never touches a distance typed by hand", () => {
    const typed = two("watermelon", 1, {
      at: 0,
      kind: "watermelon",
      isolationM: 50,
      adjustments: barriers,
    });
    expect(requirement(typed)).toEqual({
      metres: 50,
      from: "planting",
      figure: null,
      source: null,
      reason: null,
    });
  });
});

test("an own figure for a kind is named as such", () => {
  const plan: Plan = {
    ...two("lettuce", 5, { at: 0, kind: "lettuce" }),
    ownKinds: [
      {
        id: "lettuce",
        name: "lettuce",
        group: "lettuce",
        lifeCycle: "annual",
        carrier: "insects",
        breeding: "selfing",
        isolationM: { sale: 40 },
      },
    ],
  };
  const result = runChecks(plan, layoutOf(plan), planBook(plan));
  const finding = result.findings.find(({ check: name }) => name === "isolation");
  const wording = wordingFor(plan, layoutOf(plan), (id) => result.standById.get(id));
  expect(finding && describeFinding(finding, wording).sentences[0]).toBe(
    "5 m apart, needs 40 m (lettuce, own figure).",
  );
});

describe("seed law", () => {
  const law = (plan: Plan) =>
    findingsOf(plan, "safety").filter(({ caution }) => caution === "seed-law");

  test("is called to mind once, for all that is kept to be passed on or sold", () => {
    const plan = trialPlan(
      {
        p: { at: 0, kind: "lettuce" },
        q: { at: 200, kind: "tomato" },
        r: { at: 400, kind: "beet", level: "home" },
        s: { at: 900, kind: "pea", purpose: "food" },
      },
      [],
      { level: "sale" },
    );
    expect(law(plan)).toMatchObject([{ subjects: ["p", "q"], severity: "caution" }]);
    expect(wordsOf(plan, "safety").join(" ")).toContain("Selling seed falls under seed law");
  });

  test("is told of stock seed too, which is passed on", () => {
    const plan = trialPlan({ p: { at: 0, kind: "lettuce" } }, [], { level: "stock" });
    expect(law(plan)).toHaveLength(1);
  });

  test("is not told at home", () => {
    expect(law(trialPlan({ p: { at: 0, kind: "lettuce" } }, [], { level: "home" }))).toEqual([]);
  });
});
