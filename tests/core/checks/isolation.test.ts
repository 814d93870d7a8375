/** The isolation rule, sentence by sentence. */
import { describe, expect, test } from "vitest";
import type { Plan, Surrounding, Variety } from "../../../src/core/model/plan.ts";
import {
  JULY,
  type TrialTraits,
  bloom,
  check,
  findingsOf,
  pairsOf,
  source,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const FOOT = 0.3048;

describe("plantings of the same variety", () => {
  const own = { id: "v", name: "Old Ferry" };

  test("are no risk to each other", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "tomato", variety: own },
      q: { at: 2, kind: "tomato", variety: own },
    });
    expect(standingsOf(plan)).toEqual({});
  });

  test("are one variety by name, whatever its case, when entered twice", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "tomato", variety: { name: "Old Ferry" } },
      q: { at: 2, kind: "tomato", variety: { name: " OLD ferry " } },
      r: { at: 4, kind: "tomato", variety: { name: "Old Ferry Red" } },
    });
    expect(Object.keys(standingsOf(plan))).toEqual(["p<-r", "q<-r", "r<-p", "r<-q"]);
  });

  test.each(["p", "q"])("are kept apart when %s is marked so", (marked) => {
    const plan = trialPlan({
      p: { at: 0, kind: "tomato", variety: own, keepApart: marked === "p" },
      q: { at: 2, kind: "tomato", variety: own, keepApart: marked === "q" },
    });
    expect(standingsOf(plan)).toEqual({ "p<-q": "conflict", "q<-p": "conflict" });
  });

  test("of another kind are another variety", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "beet", variety: { name: "Old Ferry" } },
      q: { at: 2, kind: "chard", variety: { name: "Old Ferry" } },
    });
    expect(Object.keys(standingsOf(plan))).toEqual(["p<-q", "q<-p"]);
  });
});

describe("the seed parent decides how far is far enough", () => {
  const plan = trialPlan({
    leafy: { at: 0, kind: "tomato", variety: { form: "potato-leaf" } },
    plain: { at: 1 + 15 * FOOT, kind: "tomato", variety: { form: "regular" } },
  });

  test("a potato-leaf tomato 15 ft from a regular one is at risk, the regular one is not", () => {
    const pairs = pairsOf(plan);
    expect(pairs.get("leafy<-plain")).toMatchObject({ requiredM: 25 * FOOT, standing: "conflict" });
    expect(pairs.get("plain<-leafy")).toMatchObject({ requiredM: 10 * FOOT, standing: "distance" });
    expect(pairs.get("leafy<-plain")?.distanceM).toBeCloseTo(15 * FOOT, 12);
    expect(check(plan).pairs).toHaveLength(1);
  });

  test("the finding says whose seed", () => {
    const [finding] = findingsOf(plan, "isolation");
    expect(finding).toMatchObject({
      id: "isolation|leafy|plain",
      severity: "conflict",
      subjects: ["leafy", "plain"],
      requiredM: 25 * FOOT,
    });
    expect(finding?.atRisk).toHaveLength(1);
    expect(wordsOf(plan, "isolation")[0]).toContain("Only seed of LEAFY Variety leafy is at risk.");
  });
});

describe("required distance", () => {
  const need = (planting: TrialTraits, variety: Partial<Variety>, more: Partial<Plan> = {}) => {
    const plan = trialPlan(
      { p: { at: 0, kind: "tomato", variety, ...planting }, q: { at: 5, kind: "tomato" } },
      [],
      more,
    );
    const requirement = pairsOf(plan).get("p<-q")?.requirement;
    return [requirement?.metres, requirement?.from];
  };

  test.each([
    [
      "the planting's own",
      { isolationM: 3 },
      { isolationM: 4, figure: "us-certified" },
      [3, "planting"],
    ],
    ["else its variety's", {}, { isolationM: 4, figure: "us-certified" }, [4, "variety"]],
    ["else the figure picked", {}, { figure: "us-certified" }, [30 * FOOT, "figure"]],
    ["else the published one of kind and form", {}, { form: "potato-leaf" }, [25 * FOOT, "figure"]],
    ["of the longest of the forms when none is named", {}, {}, [25 * FOOT, "figure"]],
    ["nothing is a distance too", { isolationM: 0 }, {}, [0, "planting"]],
  ])("is %s", (_, planting, variety, expected) => {
    expect(need(planting, variety)).toEqual(expected);
  });

  test("follows the plan's purity level, and the planting's before it", () => {
    const at = (level: "home" | "sale" | "stock") => need({}, {}, { level })[0] as number;
    expect(at("home")).toBeLessThan(at("sale"));
    expect(at("sale")).toBeLessThan(at("stock"));
    expect(need({ level: "stock" }, {}, { level: "home" })[0]).toBe(at("stock"));
  });
});

describe("measured distance", () => {
  const standing = (at: number, isolationM: number) =>
    pairsOf(trialPlan({ p: { at: 0, kind: "tomato", isolationM }, q: { at, kind: "tomato" } })).get(
      "p<-q",
    );

  test("is between outlines, not centres", () => {
    expect(standing(6, 5.5)).toMatchObject({ distanceM: 5, standing: "conflict" });
  });

  test("equal to the requirement passes, and so does a micrometre less", () => {
    expect(standing(6, 5)?.standing).toBe("distance");
    expect(standing(6, 5 + 0.9e-6)?.standing).toBe("distance");
    expect(standing(6, 5 + 2e-6)?.standing).toBe("conflict");
  });

  test.each([
    ["touching", 1],
    ["overlapping", 0.5],
    ["on the same ground", 0],
  ])("is nothing when %s", (_, at) => {
    expect(standing(at, 5)).toMatchObject({ distanceM: 0, standing: "conflict" });
  });

  test("is nothing when one lies inside the other", () => {
    const plan = trialPlan({
      p: {
        at: 0,
        kind: "tomato",
        outline: { shape: "rectangle", x: 0, y: 0, widthM: 9, lengthM: 9, turnDeg: 0 },
      },
      q: { at: 0, kind: "tomato" },
    });
    expect(pairsOf(plan).get("p<-q")?.distanceM).toBe(0);
    expect(wordsOf(plan, "isolation")[0]).toContain("has no distance from");
  });

  test("names the two closest places, the seed parent's first", () => {
    const where = standing(6, 9)?.where;
    expect(where?.[0].x).toBe(1);
    expect(where?.[1].x).toBe(6);
  });
});

describe("unlike species of one group", () => {
  const squashes = (p: string, q: string) =>
    trialPlan({ p: { at: 0, kind: p, isolationM: 100 }, q: { at: 5, kind: q, isolationM: 100 } });

  test("that cross freely or sometimes are in conflict", () => {
    expect(findingsOf(squashes("butternut", "butternut"), "isolation")[0]?.severity).toBe(
      "conflict",
    );
    const beets = squashes("beet", "chard");
    expect(standingsOf(beets)).toEqual({ "p<-q": "conflict", "q<-p": "conflict" });
    expect(findingsOf(beets, "isolation")).toHaveLength(1);
  });

  test("that rarely cross are a caution", () => {
    const plan = squashes("winter-squash", "butternut");
    expect(pairsOf(plan).get("p<-q")).toMatchObject({ relation: "rarely", standing: "conflict" });
    expect(findingsOf(plan, "isolation")[0]?.severity).toBe("caution");
    expect(wordsOf(plan, "isolation")[0]).toContain("cross rarely");
  });

  test("that do not cross, and other groups, are no pairs", () => {
    expect(standingsOf(squashes("summer-squash", "winter-squash"))).toEqual({});
    expect(standingsOf(squashes("tomato", "beet"))).toEqual({});
  });
});

describe("what sheds pollen and whose seed is kept", () => {
  const against = (q: TrialTraits, variety: Partial<Variety> = {}) =>
    standingsOf(
      trialPlan({ p: { at: 0, kind: "tomato" }, q: { at: 2, kind: "tomato", variety, ...q } }),
    );

  test.each([
    ["a seed planting does both", {}, {}, { "p<-q": "conflict", "q<-p": "conflict" }],
    ["one that is eaten sheds all the same", { purpose: "food" }, {}, { "p<-q": "conflict" }],
    ["one for another use too", { purpose: "other" }, {}, { "p<-q": "conflict" }],
    ["one cut before bloom sheds nothing", { purpose: "food", flowering: "cut" }, {}, {}],
    [
      "an annual has no first year without flowers",
      { flowering: "first-year", purpose: "food" },
      {},
      { "p<-q": "conflict" },
    ],
    ["a hybrid is no seed parent but sheds", {}, { hybrid: true }, { "p<-q": "conflict" }],
  ] as const)("%s", (_, planting, variety, standings) => {
    expect(against(planting, variety)).toEqual(standings);
  });

  test("a biennial in its first year sheds nothing, for seed or not", () => {
    for (const purpose of ["seed", "food"] as const) {
      const q = { at: 2, kind: "carrot", flowering: "first-year", purpose } as const;
      expect(standingsOf(trialPlan({ p: { at: 0, kind: "carrot" }, q }))).toEqual({});
    }
  });
});

describe("surroundings", () => {
  const alone = { p: { at: 0, kind: "carrot", isolationM: 40 } };

  test("wild carrot at the roadside, a single plant, threatens carrot", () => {
    const plan = trialPlan(alone, [source("w", "wild-carrot", { shape: "point", x: 31, y: 0 })]);
    expect(pairsOf(plan).get("p<-w")).toMatchObject({
      distanceM: 30,
      standing: "conflict",
      relation: "freely",
    });
    expect(standingsOf(plan)).toEqual({ "p<-w": "conflict" });
  });

  test("a neighbour's garden is measured to its outline", () => {
    const garden = {
      shape: "polygon",
      corners: [
        [21, -9],
        [50, -9],
        [50, 9],
        [21, 9],
      ],
    } as const;
    const plan = trialPlan(alone, [
      source("n", "carrot", { ...garden, corners: garden.corners.map(([x, y]) => [x, y]) }),
    ]);
    expect(pairsOf(plan).get("p<-n")?.distanceM).toBe(20);
  });

  test("are cleared by their own cover, dates or mowing", () => {
    const roadside = (more: Partial<Surrounding>) =>
      standingsOf(
        trialPlan(alone, [source("w", "wild-carrot", { shape: "point", x: 9, y: 0 }, more)]),
      );
    expect(roadside({ cover: "cage" })).toEqual({ "p<-w": "cover" });
    expect(roadside({ bloom: bloom("08-20", "09-30") })).toEqual({ "p<-w": "time" });
    expect(roadside({ flowering: "cut" })).toEqual({});
  });

  test("with the planting's own variety are no risk; of no known variety they are", () => {
    const named = (varietyName?: string) =>
      standingsOf(
        trialPlan(alone, [
          source("n", "carrot", { shape: "point", x: 9, y: 0 }, varietyName ? { varietyName } : {}),
        ]),
      );
    expect(named("variety P")).toEqual({});
    expect(named()).toEqual({ "p<-n": "conflict" });
  });

  test("that shed no pollen are drawn and no more", () => {
    const plan = trialPlan(alone, [
      {
        id: "h",
        label: "Hedge",
        what: "hedge",
        outline: { shape: "point", x: 3, y: 0 },
        flowering: "yes",
        cover: "none",
      },
    ]);
    expect(check(plan).stands.map((stand) => stand.id)).toEqual(["p"]);
  });
});

test("what flowers in July counts whatever the year's other dates say", () => {
  const plan = trialPlan({
    p: { at: 0, kind: "tomato", bloom: JULY, start: { method: "sown", date: 0 } },
    q: { at: 2, kind: "tomato" },
  });
  expect(pairsOf(plan).get("p<-q")?.overlapDays).toBe(31);
});
