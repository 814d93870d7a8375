/** The rule speaks first, and no number stands without its limits. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { wordingOf } from "../../../src/core/checks/checked-layout.ts";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import { estimateWords, sourceWords } from "../../../src/core/crossing-share/estimate-words.ts";
import {
  estimateOf,
  mostAtRisk,
  shareAfterWords,
} from "../../../src/core/crossing-share/share-after.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { bloom, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const checkedOf = (plan: Plan) => checkLayout(plan, layoutOf(plan).id);

function told(plan: Plan, id = "a") {
  const checked = checkedOf(plan);
  const estimate = estimateOf(checked, id);
  if (!estimate) throw new Error(`no estimate of ${id}`);
  return {
    ...estimateWords(estimate, checked.result, wordingOf(checked)),
    sources: sourceWords(estimate, checked.result, wordingOf(checked)),
  };
}

const corn = (at: number, more: object = {}) => ({ at, kind: "sweet-corn", ...more });

test("the rule comes first, then a range by what it rests on", () => {
  const { verdict, headline, shares } = told(trialPlan({ a: corn(0), b: corn(6) }));
  expect(verdict).toMatch(/^The rule, of B Variety b: not clear: 5(\.\d+)?( m)? of /);
  expect(headline).toMatch(
    /^About 1 in [\d,.]+ to 1 in [\d,.]+ seeds, by trials with maize in larger fields\.$/,
  );
  expect(shares).not.toBeNull();
});

test("several sources are counted by standing, and each gets its own line, worst first", () => {
  const { verdict, sources } = told(trialPlan({ a: corn(0), b: corn(20), c: corn(-6) }));
  expect(verdict).toBe("The rule: 2 sources too near.");
  expect(sources.map((words) => words.slice(0, 12))).toEqual(["C Variety c:", "B Variety b:"]);
});

test("a pair the rule clears is not called clean", () => {
  const { verdict, headline } = told(trialPlan({ a: corn(0), b: corn(900) }));
  expect(verdict).toBe("The rule: no source is nearer than it should be.");
  expect(headline).toMatch(/^Not measured this far\. Carried on beyond the trials it would be /);
  expect(headline).not.toMatch(/ 0 | nothing|clean/);
});

describe("what the number leaves open is said", () => {
  test.each([
    ["dates unknown", { a: corn(0, { bloom: null }), b: corn(6) }, "When it flowers is not known"],
    [
      "a source undated",
      { a: corn(0), b: corn(6, { bloom: null }) },
      "When B Variety b flowers is not known.",
    ],
    [
      "on its ground",
      { a: corn(0), b: corn(0.5) },
      "B Variety b touches it or stands on its ground",
    ],
    [
      "blooms that miss each other",
      {
        a: corn(0, { bloom: bloom("07-01", "07-10") }),
        b: corn(6, { bloom: bloom("07-15", "07-24") }),
      },
      "By its dates B Variety b misses its bloom",
    ],
    [
      "no ground drawn",
      {
        a: corn(0),
        b: corn(6, {
          outline: {
            shape: "polygon",
            corners: [
              [6, 0],
              [7, 0],
              [8, 0],
            ],
          },
        }),
      },
      "Counted as one plant, as no ground is drawn: B Variety b.",
    ],
  ])("%s", (_name, plantings, words) => {
    const { sentences, headline } = told(trialPlan(plantings));
    expect(sentences.join(" ")).toContain(words);
    expect(`${headline} ${sentences.join(" ")}`).not.toMatch(/NaN|Infinity|undefined/);
  });

  test("blooms farther apart than was measured give no number", () => {
    const { headline, sentences, shares } = told(
      trialPlan({ a: corn(0), b: corn(6, { bloom: bloom("09-15", "09-30") }) }),
    );
    expect(shares).toBeNull();
    expect(headline).toMatch(/^No number of ours/);
    expect(sentences.join(" ")).toContain("Left out as long as the blooms miss each other: B");
  });

  test("what stands under cover, and nothing measured then", () => {
    const { headline, sentences, shares } = told(
      trialPlan({ a: corn(0, { cover: "bags" }), b: corn(6) }),
    );
    expect(headline).toMatch(/^No number of ours/);
    expect(sentences.join(" ")).toContain("Left out as long as the cover holds: B Variety b.");
    expect(shares).toBeNull();
  });

  test.each(["beet", "spinach", "carrot"])("%s: no trial, no number", (kind) => {
    const { headline } = told(trialPlan({ a: { at: 0, kind }, b: { at: 6, kind } }));
    expect(headline).toBe(`No estimate: no trial that measured ${kind} by distance is known here.`);
  });

  test("a kind that was measured gets its trials with their sources", () => {
    const { headline, sentences } = told(
      trialPlan({ a: { at: 0, kind: "tomato" }, b: { at: 6, kind: "tomato" } }),
    );
    expect(headline).toContain("The nearest source, B Variety b, is 5 m off.");
    expect(sentences[0]).toMatch(/^Side by side: 4\.9 percent of seeds \(.*Lesley/);
  });
});

describe("before and after an edit", () => {
  const plan = trialPlan({ a: corn(0), b: corn(6, { purpose: "food" }) });
  const checked = checkedOf(plan);
  const worst = mostAtRisk(checked, checked.result.pairs);

  test("moving the source away is told in both numbers", () => {
    if (!worst) throw new Error("no number");
    expect(worst.id).toBe("a");
    const edit = changePlantings(
      layoutOf(plan).id,
      ["b"],
      { outline: { shape: "rectangle", x: 80, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 } },
      "Move",
    );
    const words = shareAfterWords(checked, worst, edit) ?? "";
    const [, now, then] =
      words.match(/now about .* to 1 in ([\d,]+); then .*1 in ([\d,]+)\.$/) ?? [];
    const count = (text: string | undefined) => Number(text?.replaceAll(",", ""));
    expect(count(then)).toBeGreaterThan(10 * count(now));
  });

  test("a cut source leaves no number, and no seed kept leaves none to tell", () => {
    if (!worst) throw new Error("no number");
    const change = (id: string, changes: object) =>
      shareAfterWords(checked, worst, changePlantings(layoutOf(plan).id, [id], changes, "Change"));
    expect(change("b", { flowering: "cut" })).toMatch(/then nothing in this plan/);
    expect(change("a", { cover: "bags" })).toMatch(/then no number/);
    expect(change("a", { purpose: "food" })).toBeNull();
  });
});
