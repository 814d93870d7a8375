/** The isolation rule's other two ways: time and cover, and what cannot be told. */
import { describe, expect, test } from "vitest";
import type { Cover, Planting } from "../../../src/core/model/plan.ts";
import {
  JULY,
  type TrialTraits,
  bloom,
  check,
  day,
  findingsOf,
  pairsOf,
  standingsOf,
  trialPlan,
} from "../../support/trial-plan.ts";

function near(p: TrialTraits, q: TrialTraits, kind = "tomato") {
  return pairsOf(trialPlan({ p: { at: 0, kind, ...p }, q: { at: 2, kind, ...q } })).get("p<-q");
}

const NO_BLOOM = { bloom: null };

describe("time", () => {
  // Windows are whole days, both ends included.
  test.each([
    ["open on one day together", bloom("06-01", "07-01"), 1, 0, "conflict"],
    ["open together for a week", bloom("06-01", "07-07"), 7, 0, "conflict"],
    ["all of it within the other", bloom("07-10", "07-12"), 3, 0, "conflict"],
    ["one ends the day before the other opens", bloom("06-01", "06-30"), 0, 0, "conflict"],
    ["one day between", bloom("06-01", "06-29"), 0, 1, "conflict"],
    ["six days between", bloom("06-01", "06-24"), 0, 6, "conflict"],
    ["seven days between", bloom("06-01", "06-23"), 0, 7, "time"],
    ["seven days between, the other way round", bloom("08-08", "08-20"), 0, 7, "time"],
  ])("%s", (_, window, overlapDays, gapDays, standing) => {
    expect(near({ bloom: window }, {})).toMatchObject({
      overlapDays,
      gapDays,
      standing,
      guardDays: 7,
    });
    expect(near({}, { bloom: window })).toMatchObject({ overlapDays, gapDays, standing });
  });

  test("maize wants fourteen days", () => {
    const gap = (first: string) =>
      near({ bloom: bloom("07-01", "07-10") }, { bloom: bloom(first, "08-20") }, "maize");
    expect(gap("07-24")).toMatchObject({ gapDays: 13, guardDays: 14, standing: "conflict" });
    expect(gap("07-25")).toMatchObject({ gapDays: 14, guardDays: 14, standing: "time" });
  });

  test("the share of the seed parent's days on which foreign pollen flies is told", () => {
    const ten = bloom("07-01", "07-10");
    expect(near({ bloom: ten }, { bloom: bloom("07-09", "08-20") })?.exposedShare).toBeCloseTo(0.2);
    expect(near({ bloom: ten }, { bloom: bloom("08-09", "08-20") })?.exposedShare).toBe(0);
  });

  test("predicted windows are compared from the earliest first to the latest last flower", () => {
    const start = { method: "sown", date: day("2027-05-01") } as const;
    const plan = trialPlan({
      p: {
        at: 0,
        kind: "tomato",
        ...NO_BLOOM,
        start,
        variety: { sownToFlower: [60, 70], bloomDays: [20, 30] },
      },
      q: { at: 2, kind: "tomato" },
    });
    const stand = check(plan).standById.get("p");
    expect(stand?.bloom?.outer).toEqual({ first: start.date + 60, last: start.date + 70 + 29 });
    expect(stand?.bloom?.likely).toEqual({ first: start.date + 65, last: start.date + 65 + 24 });
    const later = (first: number) => ({ first, last: first + 10 });
    const outerLast = start.date + 99;
    expect(standingsOf(withBloom(plan, "q", later(outerLast + 8)))["p<-q"]).toBe("time");
    expect(standingsOf(withBloom(plan, "q", later(outerLast + 7)))["p<-q"]).toBe("conflict");
  });

  function withBloom(plan: ReturnType<typeof trialPlan>, id: string, window: Planting["bloom"]) {
    const layouts = plan.layouts.map((layout) => ({
      ...layout,
      plantings: layout.plantings.map((planting): Planting =>
        planting.id === id && window ? { ...planting, bloom: window } : planting,
      ),
    }));
    return { ...plan, layouts };
  }
});

describe("cover", () => {
  const covers: readonly Cover[] = ["none", "cage", "bags", "hand"];

  test.each(covers)("%s over the seed parent", (cover) => {
    const expected = cover === "none" ? "conflict" : "cover";
    expect(near({ cover }, {}, "carrot")?.standing).toBe(expected);
  });

  // The Manual of Seed Saving (Timber Press) tapes the flowers to be pollinated; the others of the
  // plant open as ever. Bagged trusses likewise: common practice.
  test.each(covers)("%s over the source: a cage keeps pollen in, bags and tape do not", (cover) => {
    const expected = cover === "cage" ? "cover" : "conflict";
    expect(near({}, { cover }, "carrot")?.standing).toBe(expected);
  });

  test("a squash pollinated by hand is safe from one in the open, which is not safe from it", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "summer-squash", cover: "hand" },
      q: { at: 8, kind: "pumpkin" },
    });
    expect(standingsOf(plan)).toEqual({ "p<-q": "cover", "q<-p": "conflict" });
    const [finding] = findingsOf(plan, "isolation");
    expect(finding?.atRisk.map(({ seedParent }) => seedParent)).toEqual(["q"]);
  });

  test("a mesh cage does not stop pollen in the wind: bags and taped flowers do", () => {
    for (const kind of ["maize", "beet"]) {
      expect(near({ cover: "cage" }, {}, kind)?.standing).toBe("conflict");
      expect(near({}, { cover: "cage" }, kind)?.standing).toBe("conflict");
      expect(near({ cover: "bags" }, {}, kind)?.standing).toBe("cover");
      expect(near({ cover: "hand" }, {}, kind)?.standing).toBe("cover");
    }
  });
});

test("what clears a pair is named strongest first: distance, time, cover", () => {
  const early = bloom("05-01", "05-20");
  expect(near({ isolationM: 1, bloom: early, cover: "cage" }, {})?.standing).toBe("distance");
  expect(near({ isolationM: 9, bloom: early, cover: "cage" }, {})?.standing).toBe("time");
  expect(near({ isolationM: 9, cover: "cage" }, {})?.standing).toBe("cover");
  expect(near({ isolationM: 9 }, {})?.standing).toBe("conflict");
});

describe("what cannot be told is never silently clear", () => {
  test("a missing date on either side", () => {
    expect(near(NO_BLOOM, {})).toMatchObject({
      standing: "unknown",
      overlapDays: null,
      gapDays: null,
      exposedShare: null,
      lacksBloom: ["p"],
    });
    expect(near({}, NO_BLOOM)).toMatchObject({ standing: "unknown", lacksBloom: ["q"] });
  });

  test("a missing date does not matter where distance or cover clears", () => {
    expect(near({ ...NO_BLOOM, isolationM: 1 }, {})?.standing).toBe("distance");
    expect(near({ ...NO_BLOOM, cover: "bags" }, {})?.standing).toBe("cover");
  });

  test("a missing figure, however far", () => {
    const far = trialPlan({
      p: { at: 0, kind: "husk-tomato" },
      q: { at: 5000, kind: "husk-tomato" },
    });
    expect(standingsOf(far)).toEqual({ "p<-q": "unknown", "q<-p": "unknown" });
    expect(findingsOf(far, "missing-figure").map((finding) => finding.subject)).toEqual(["p", "q"]);
  });

  test("a missing figure does not matter where time or cover clears", () => {
    expect(near({ bloom: bloom("05-01", "05-20") }, {}, "husk-tomato")?.standing).toBe("time");
    expect(near({ cover: "cage" }, {}, "husk-tomato")?.standing).toBe("cover");
  });

  test("one finding for each stand without dates, with all it cannot be cleared against", () => {
    const plan = trialPlan({
      a: { at: 0, kind: "tomato" },
      b: { at: 2, kind: "tomato", ...NO_BLOOM },
      c: { at: 4, kind: "tomato" },
    });
    const found = findingsOf(plan, "missing-bloom");
    expect(found.map(({ subject, against, severity }) => [subject, against, severity])).toEqual([
      ["b", ["a", "c"], "unknown"],
    ]);
    expect(found[0]?.measuredM).toBe(1);
  });
});

test("maize silks and tassels are compared with each other, not whole blooms", () => {
  const sown = (iso: string) => ({
    ...NO_BLOOM,
    start: { method: "sown", date: day(iso) } as const,
  });
  const plan = trialPlan({
    p: { at: 0, kind: "maize", ...sown("2027-05-01") },
    q: { at: 2, kind: "maize", ...sown("2027-05-20") },
  });
  const { standById } = check(plan);
  const [p, q] = [standById.get("p"), standById.get("q")];
  const pair = pairsOf(plan).get("p<-q");
  const receives = p?.receives?.outer ?? JULY;
  const sheds = q?.sheds?.outer ?? JULY;
  expect(receives).not.toEqual(p?.sheds?.outer);
  expect(pair?.overlapDays).toBe(
    Math.max(0, Math.min(receives.last, sheds.last) - Math.max(receives.first, sheds.first) + 1),
  );
});
