/**
 * Rotation by disease and marks on the ground. Years are those of the University of Connecticut's
 * list (clubroot 7, blackleg 3 to 4, black rot 2 to 3, lettuce drop 3) and of Washington State
 * University (spinach for seed 10 to 15); white rot lives over 20 years (University of California).
 */
import { describe, expect, test } from "vitest";
import type { EarlierCrop, GroundMark, Plan } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  day,
  findingsOf,
  squareAt,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

function crop(kind: string, year: number, more: Partial<EarlierCrop> = {}): EarlierCrop {
  return { id: `${kind}-${year}`, outline: squareAt(0), kind, year, ...more };
}

function after(
  crops: readonly EarlierCrop[],
  planting: Partial<TrialPlanting>,
  more: Partial<Plan> = {},
): Plan {
  return trialPlan({ p: { at: 0, kind: "kale", ...planting } }, [], {
    earlierCrops: crops,
    ...more,
  });
}

const diseases = (plan: Plan) =>
  findingsOf(plan, "rotation").flatMap((finding) =>
    finding.diseases.map(({ disease }) => disease ?? "not named"),
  );

describe("rotation", () => {
  test("names the diseases whose years are not over, the longest first", () => {
    const kale = (year: number) => diseases(after([crop("cabbage", year)], { purpose: "food" }));
    expect(kale(2026)).toEqual(["clubroot", "blackleg", "black rot"]);
    expect(kale(2024)).toEqual(["clubroot", "blackleg", "black rot"]);
    expect(kale(2023)).toEqual(["clubroot", "blackleg"]);
    expect(kale(2022)).toEqual(["clubroot"]);
    expect(kale(2020)).toEqual(["clubroot"]);
    expect(kale(2019)).toEqual([]);
  });

  test("is a caution that says the years, the source, and that it is not about purity", () => {
    const plan = after([crop("turnip", 2025, { wentToSeed: "no" })], { purpose: "food" });
    expect(findingsOf(plan, "rotation")).toMatchObject([{ severity: "caution", subjects: ["p"] }]);
    const [words] = wordsOf(plan, "rotation");
    expect(words).toContain("Clubroot: 7 years without what carries it");
    expect(words).toContain("Blackleg: 3 to 4 years");
    expect(words).toContain("University of Connecticut");
    expect(words).toContain("health, not purity");
  });

  test("counts spinach for seed alone for 15 years, whatever became of the spinach before", () => {
    const spinach = (year: number, purpose: "seed" | "food") =>
      diseases(after([crop("spinach", year, { wentToSeed: "no" })], { kind: "spinach", purpose }));
    expect(spinach(2012, "seed")).toEqual(["Fusarium wilt"]);
    expect(spinach(2011, "seed")).toEqual([]);
    expect(spinach(2026, "food")).toEqual([]);
  });

  test("counts other hosts of a disease, and not its family as such", () => {
    const eggplant = (kind: string) => diseases(after([crop(kind, 2025)], { kind: "eggplant" }));
    expect(eggplant("tomato")).toEqual(["Verticillium wilt"]);
    expect(eggplant("eggplant")).toEqual(["Verticillium wilt", "fruit rots"]);
    expect(eggplant("tomatillo")).toEqual([]);
    expect(diseases(after([crop("pumpkin", 2025)], { kind: "melon" }))).toEqual(["leaf spots"]);
  });

  test("never again means never", () => {
    const asparagus = after([crop("asparagus", 1950)], { kind: "asparagus" });
    expect(diseases(asparagus)).toEqual(["Fusarium wilt and root rot"]);
    expect(wordsOf(asparagus, "rotation")[0]).toContain("never again on the same ground");
  });

  test("of the guidance on previous cropping: what cannot cross is told, and not as purity", () => {
    const bean = (level: "home" | "stock") =>
      after([crop("pea", 2024)], { kind: "common-bean", level });
    expect(diseases(bean("stock"))).toEqual(["not named"]);
    expect(wordsOf(bean("stock"), "rotation")[0]).toContain("it names no disease");
    expect(diseases(bean("home")), "the minimum counts its species").toEqual([]);
    expect(findingsOf(bean("stock"), "volunteers")).toEqual([]);
    const eaten = after([crop("pea", 2024)], {
      kind: "common-bean",
      level: "stock",
      purpose: "food",
    });
    expect(diseases(eaten), "asked of seed crops alone").toEqual([]);
  });

  test("says nothing of crops still to come, beside the ground, or where none is entered", () => {
    expect(diseases(after([crop("cabbage", 2028)], {}))).toEqual([]);
    expect(diseases(after([crop("cabbage", 2026, { outline: squareAt(5) })], {}))).toEqual([]);
    expect(diseases(after([], {}))).toEqual([]);
  });

  test("one accepted comes back when another crop joins", () => {
    const plan = after([crop("cabbage", 2022)], { purpose: "food" });
    const [finding] = findingsOf(plan, "rotation");
    const accepted = [{ finding: finding?.id ?? "", reason: "Never seen here", requiredM: null }];
    expect(diseases({ ...plan, accepted })).toEqual([]);
    const more = [...plan.earlierCrops, crop("turnip", 2025)];
    expect(diseases({ ...plan, accepted, earlierCrops: more })).not.toEqual([]);
  });
});

describe("marks on the ground", () => {
  const mark = (more: Partial<GroundMark> = {}): GroundMark => ({
    id: "m",
    outline: squareAt(0),
    disease: "white-rot",
    seenOn: day("1998-07-12"),
    ...more,
  });
  const marked = (kind: string, more: Partial<GroundMark> = {}) =>
    trialPlan({ p: { at: 0, kind, purpose: "food" } }, [], { groundMarks: [mark(more)] });

  test("of white rot are a caution for all that is of the onion's kin, however long ago", () => {
    for (const kind of ["onion", "leek", "chives", "bunching-onion", "elephant-garlic"])
      expect([kind, findingsOf(marked(kind), "ground-mark").length]).toEqual([kind, 1]);
    expect(findingsOf(marked("carrot"), "ground-mark")).toEqual([]);
    expect(findingsOf(marked("onion", { outline: squareAt(3) }), "ground-mark")).toEqual([]);
    const [words] = wordsOf(marked("leek"), "ground-mark");
    expect(words).toContain("White rot is marked on the ground of P");
    expect(words).toContain("12 Jul 1998");
    expect(words).toContain("over 20 years");
  });

  test("of another disease harm the kinds they name", () => {
    const own = { disease: "rust", name: "Bean rust", kinds: ["common-bean"] };
    expect(wordsOf(marked("common-bean", own), "ground-mark")[0]).toContain("Bean rust is marked");
    expect(findingsOf(marked("pea", own), "ground-mark")).toEqual([]);
  });

  test("one accepted comes back when it is seen again", () => {
    const plan = marked("leek");
    const [finding] = findingsOf(plan, "ground-mark");
    const accepted = [{ finding: finding?.id ?? "", reason: "Pots", requiredM: null }];
    expect(findingsOf({ ...plan, accepted }, "ground-mark")).toEqual([]);
    const again = [mark({ seenOn: day("2026-07-01") })];
    expect(findingsOf({ ...plan, accepted, groundMarks: again }, "ground-mark")).toHaveLength(1);
  });
});
