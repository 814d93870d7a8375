/** Time clears in silence only on dates that carry it; the last safe day is exact. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { staggerOffers } from "../../../src/core/remedies/stagger.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Climate } from "../../../src/core/model/plan.ts";
import {
  type TrialTraits,
  bloom,
  check,
  day,
  findingsOf,
  layoutOf,
  pairsOf,
  source,
  squareAt,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const sown = (iso: string) => ({ bloom: null, start: { method: "sown", date: day(iso) } as const });

/** The same days between blooms for every way of telling them: sunflower, days given. */
const thumb: TrialTraits = { ...sown("2027-04-15") };
const ownDays: TrialTraits = { ...thumb, variety: { sownToFlower: [55, 75], bloomDays: [14, 21] } };
const daysOnly: TrialTraits = { ...thumb, variety: { sownToFlower: [55, 75] } };

function pairOf(early: TrialTraits, late: TrialTraits) {
  return trialPlan({
    early: { at: 0, kind: "sunflower", ...early },
    late: { at: 3, kind: "sunflower", ...late },
  });
}

const AUGUST = { bloom: bloom("08-10", "08-31") };

describe("a pair that only time clears", () => {
  test("on own dates is clear and nothing more is said", () => {
    const plan = pairOf({ bloom: bloom("06-10", "07-19") }, AUGUST);
    expect(standingsOf(plan)).toEqual({ "early<-late": "time", "late<-early": "time" });
    expect(findingsOf(plan, "unsure-time")).toEqual([]);
    expect(pairsOf(plan).get("late<-early")?.time).toMatchObject({ basis: "own", isSure: true });
  });

  test("on a rule of thumb is clear with a caution that says what to watch", () => {
    const plan = pairOf(thumb, AUGUST);
    expect(standingsOf(plan)).toEqual({ "early<-late": "time", "late<-early": "time" });
    const [finding, ...more] = findingsOf(plan, "unsure-time");
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: "caution", subjects: ["early", "late"] });
    const words = wordsOf(plan, "unsure-time").join(" ");
    expect(words).toContain("rests on a rule of thumb");
    expect(words).toMatch(/must be over by 26 Jul and .* not open before 3 Aug/);
    expect(words).toMatch(/cover or cut .* or give up the seed/);
  });

  test("wants the length of the earlier bloom as well as its days to flower", () => {
    expect(findingsOf(pairOf(ownDays, AUGUST), "unsure-time")).toEqual([]);
    expect(findingsOf(pairOf(daysOnly, AUGUST), "unsure-time")).toHaveLength(1);
    // Of the later one only the first flower matters.
    const laterDays = { ...sown("2027-07-01"), variety: { sownToFlower: [55, 75] as const } };
    expect(
      findingsOf(pairOf({ bloom: bloom("06-01", "07-10") }, laterDays), "unsure-time"),
    ).toEqual([]);
  });

  test("a published figure found on a few varieties is a rule of thumb for another", () => {
    const maizes = trialPlan({
      p: { at: 0, kind: "maize", ...sown("2027-04-25") },
      q: { at: 3, kind: "maize", ...sown("2027-06-20") },
    });
    expect(standingsOf(maizes)).toEqual({ "p<-q": "time", "q<-p": "time" });
    expect(findingsOf(maizes, "unsure-time")).toHaveLength(1);
  });

  test("under a cover that clears it as well there is nothing to watch", () => {
    const caged = pairOf({ ...thumb, cover: "cage" }, AUGUST);
    expect(findingsOf(caged, "unsure-time")).toEqual([]);
    const bagged = pairOf({ ...thumb, cover: "bags" }, { ...AUGUST, cover: "bags" });
    expect(findingsOf(bagged, "unsure-time")).toEqual([]);
    // Bags over one keep its own seed true; the other takes pollen of the flowers left open.
    const [oneBagged] = findingsOf(pairOf({ ...thumb, cover: "bags" }, AUGUST), "unsure-time");
    expect(oneBagged?.resting.map(({ seedParent }) => seedParent)).toEqual(["late"]);
  });

  test("less sure dates never make it safer", () => {
    const rank = { conflict: 0, unknown: 0, caution: 1, clear: 2 };
    const standing = (early: TrialTraits) => {
      const plan = pairOf(early, AUGUST);
      const found = standingsOf(plan)["late<-early"];
      if (found !== "time") return rank.conflict;
      return findingsOf(plan, "unsure-time").length > 0 ? rank.caution : rank.clear;
    };
    expect(standing(ownDays)).toBe(rank.clear);
    expect(standing(daysOnly)).toBe(rank.caution);
    expect(standing(thumb)).toBe(rank.caution);
    expect(standing({ bloom: null })).toBe(rank.unknown);
  });
});

/** Days by the calendar of the JavaScript engine, which knows nothing of our day numbers. */
const utc = (iso: string) => Date.parse(`${iso}T00:00:00Z`);
const fullDaysBetween = (lastOfEarlier: number, firstOfLater: number) => {
  let count = 0;
  for (let at = lastOfEarlier + 86_400_000; at < firstOfLater; at += 86_400_000) count += 1;
  return count;
};

test("the last safe day, against counting the days of a calendar one by one", () => {
  const season = fc.integer({ min: 0, max: 120 });
  fc.assert(
    fc.property(season, fc.integer({ min: 7, max: 60 }), fc.nat(20), (from, gap, length) => {
      const first = day("2027-03-01") + from;
      const early = { first, last: first + length };
      const late = { first: early.last + gap + 1, last: early.last + gap + 20 };
      const plan = pairOf({ bloom: early }, { bloom: late });
      const pair = pairsOf(plan).get("late<-early");
      const time = pair?.time;
      if (!pair || !time) throw new Error("not clear by time");
      const [lastDay, firstDay] = [utc(isoFromDay(time.lastDay)), utc(isoFromDay(time.firstDay))];
      const guard = pair.guardDays;
      // Exact: the guard days lie between, and one day less on either side is too few.
      expect(fullDaysBetween(lastDay, firstDay)).toBe(guard);
      // Neither asks more than what is reckoned already keeps.
      expect(lastDay).toBeGreaterThanOrEqual(utc(isoFromDay(early.last)));
      expect(firstDay).toBeLessThanOrEqual(utc(isoFromDay(late.first)));
      const standing = (last: number, opens: number) =>
        standingsOf(
          pairOf({ bloom: { first: early.first, last } }, { bloom: { ...late, first: opens } }),
        )["late<-early"];
      expect(standing(time.lastDay, time.firstDay)).toBe("time");
      expect(standing(time.lastDay + 1, time.firstDay)).toBe("conflict");
      expect(standing(time.lastDay, time.firstDay - 1)).toBe("conflict");
    }),
    { numRuns: 60 },
  );
});

describe("one basis for a pair", () => {
  const climate: Climate = {
    normals: {
      minC: [0, 1, 3, 5, 9, 12, 14, 14, 11, 7, 4, 1],
      maxC: [8, 10, 13, 17, 21, 25, 29, 29, 25, 18, 11, 8],
    },
  };
  const site = { site: { name: "", upBearingDeg: 0, climate } };

  test("two maizes eleven days apart, one in heat and one in days, are not clear", () => {
    const plan = trialPlan(
      {
        heat: { at: 0, kind: "maize", ...sown("2027-05-01") },
        days: { at: 3, kind: "maize", ...sown("2027-05-12"), variety: { sownToFlower: [55, 60] } },
      },
      [],
      site,
    );
    const stands = check(plan).standById;
    expect([stands.get("heat")?.bloom?.counted, stands.get("days")?.bloom?.counted]).toEqual([
      "heat",
      "days",
    ]);
    expect(standingsOf(plan)).toEqual({ "heat<-days": "conflict", "days<-heat": "conflict" });
  });

  test("what time clears on two bases is a caution even where both are own", () => {
    const heat = { method: "simple average", baseC: 8, capC: null, cDays: [600, 620] } as const;
    const plan = trialPlan(
      {
        heat: {
          at: 0,
          kind: "sunflower",
          ...sown("2027-04-20"),
          variety: { heatToFlower: heat, bloomDays: [10, 12] },
        },
        days: {
          at: 3,
          kind: "sunflower",
          ...sown("2027-07-10"),
          variety: { sownToFlower: [70, 75], bloomDays: [10, 12] },
        },
      },
      [],
      site,
    );
    expect(standingsOf(plan)["heat<-days"]).toBe("time");
    expect(findingsOf(plan, "unsure-time")).toHaveLength(1);
    expect(wordsOf(plan, "unsure-time").join(" ")).toContain(
      "one is counted in heat, the other in days",
    );
  });
});

describe("heat does not run through a winter", () => {
  // The cool coast on which maize sown in May was once told to flower the May after.
  const minC = [1, 1, 2, 3, 6, 8, 10, 10, 8, 6, 3, 1];
  const maxC = [6.5, 7.5, 9.5, 12.5, 15.5, 17.5, 19.5, 19.5, 16.5, 13.5, 9.5, 7.5];
  const coast = (warmer: number) => ({
    site: {
      name: "",
      upBearingDeg: 0,
      climate: { normals: { minC, maxC: maxC.map((value) => value + warmer) } },
    },
  });
  const neighbour = source("next", "maize", squareAt(20), { bloom: bloom("07-15", "09-30") });

  test.each([-1, -0.5, 0, 0.5, 1, 1.5, 3])("%d degrees warmer: never clear", (warmer) => {
    const plan = trialPlan(
      { p: { at: 0, kind: "maize", ...sown("2027-05-10") } },
      [neighbour],
      coast(warmer),
    );
    expect(["unknown", "conflict"]).toContain(standingsOf(plan)["p<-next"]);
  });

  test("it is unknown and says why, and days are not put in its place", () => {
    const plan = trialPlan(
      { p: { at: 0, kind: "maize", ...sown("2027-05-10") } },
      [neighbour],
      coast(0),
    );
    expect(check(plan).standById.get("p")).toMatchObject({
      bloom: null,
      whyNoBloom: "heat-not-met",
    });
    expect(wordsOf(plan, "missing-bloom").join(" ")).toMatch(/heat it needs is not reached/);
  });

  test("no sowing date is offered whose bloom lies in or after the winter", () => {
    const plan = trialPlan(
      {
        p: { at: 0, kind: "maize", ...sown("2027-05-05") },
        q: { at: 3, kind: "maize", ...sown("2027-05-05") },
      },
      [],
      coast(3),
    );
    for (const { edit, planting } of staggerOffers(checkLayout(plan, layoutOf(plan).id), [
      "p",
      "q",
    ])) {
      const moved = check(edit.apply(plan)).standById.get(planting)?.bloom;
      expect(moved?.outer.last).toBeLessThan(day("2027-11-16"));
    }
  });
});

describe("open-ended bloom", () => {
  const frost = { site: { name: "", upBearingDeg: 0, firstAutumnFrost: day("2027-10-05") } };
  const last = (kind: string, traits: TrialTraits, more = {}) => {
    const found = check(trialPlan({ p: { at: 0, kind, ...traits } }, [], more)).standById.get(
      "p",
    )?.bloom;
    return found && isoFromDay(found.outer.last);
  };

  test.each([
    "tomato",
    "pepper",
    "summer-squash",
    "cucumber",
    "common-bean",
    "runner-bean",
    "okra",
    "basil",
    "zinnia",
  ])("%s flowers until the frost, else until the season ends", (kind) => {
    expect(last(kind, sown("2027-05-10"), frost)).toBe("2027-10-05");
    expect(last(kind, sown("2027-05-10"))).toBe("2027-12-31");
  });

  test("own dates or the variety's own days of bloom end it", () => {
    expect(last("common-bean", { bloom: bloom("06-20", "07-15") }, frost)).toBe("2027-07-15");
    const bush = { ...sown("2027-05-10"), variety: { bloomDays: [21, 25] as const } };
    expect(last("common-bean", bush, frost)).toBe("2027-07-18");
  });

  test.each([
    ["summer-squash", 92],
    ["cucumber", 77],
    ["common-bean", 47],
    ["runner-bean", 92],
  ] as const)("two sowings of %s %d days apart are together until frost", (kind, apart) => {
    const first = day("2027-05-01");
    const at = (date: number) => ({ bloom: null, start: { method: "sown", date } as const });
    const plan = trialPlan(
      { p: { at: 0, kind, ...at(first) }, q: { at: 1.5, kind, ...at(first + apart) } },
      [],
      frost,
    );
    expect(Object.values(standingsOf(plan))).toEqual(["conflict", "conflict"]);
  });

  test("tender bloom ends at the frost, and one that would open after it is unknown", () => {
    expect(last("maize", sown("2027-07-20"), frost)).toBe("2027-10-05");
    const plan = trialPlan({ p: { at: 0, kind: "maize", ...sown("2027-08-15") } }, [], frost);
    expect(check(plan).standById.get("p")?.whyNoBloom).toBe("after-frost");
    // The date is given for one year and holds for the others.
    expect(
      last("maize", sown("2027-07-20"), {
        site: { ...frost.site, firstAutumnFrost: day("2024-10-05") },
      }),
    ).toBe("2027-10-05");
  });
});

describe("a perennial flowers in every year of the season", () => {
  const chives = (own: string, ownLast: string, more = {}) =>
    trialPlan(
      { p: { at: 0, kind: "chives", bloom: { first: day(own), last: day(ownLast) } } },
      [
        source("q", "chives", squareAt(1.6), {
          bloom: { first: day("2026-12-20"), last: day("2027-01-10") },
        }),
      ],
      more,
    );

  test("over New Year, into the end of the season as well as its start", () => {
    expect(standingsOf(chives("2027-12-15", "2027-12-31"))).toEqual({ "p<-q": "conflict" });
    expect(standingsOf(chives("2027-01-05", "2027-01-20"))).toEqual({ "p<-q": "conflict" });
    expect(standingsOf(chives("2027-06-05", "2027-06-20"))).toEqual({ "p<-q": "time" });
  });

  test("in both summers of a season of eighteen months", () => {
    const season = { name: "", first: day("2026-06-01"), last: day("2027-11-30") };
    const plan = trialPlan(
      {
        p: { at: 0, kind: "chives", bloom: { first: day("2026-07-01"), last: day("2026-07-20") } },
      },
      [
        source("q", "chives", squareAt(1.6), {
          bloom: { first: day("2027-07-05"), last: day("2027-07-25") },
        }),
      ],
      { season },
    );
    expect(standingsOf(plan)).toEqual({ "p<-q": "conflict" });
    // Sixteen days of July shared in each of the two summers.
    expect(pairsOf(plan).get("p<-q")?.overlapDays).toBe(32);
  });
});

describe("maize", () => {
  const maize = { ...sown("2027-05-01"), variety: { sownToFlower: [60, 60] as const } };

  // Silks appear over 13 to 18 days and take pollen 5 to 6 days more; tassels shed 7 to 14 days
  // from 1 to 3 days before the silks: the figures of the audit and of the sources in the base.
  test("silks take pollen for 18 to 24 days, tassels shed from 3 days before", () => {
    const stand = check(trialPlan({ p: { at: 0, kind: "maize", ...maize } })).standById.get("p");
    const silk = day("2027-05-01") + 60;
    expect(stand?.receives?.outer).toEqual({ first: silk, last: silk + 23 });
    expect(stand?.sheds?.outer).toEqual({ first: silk - 3, last: silk - 1 + 13 });
    expect(stand?.bloom?.outer).toEqual({ first: silk - 3, last: silk + 23 });
  });

  test("keeps the 14 days, and own days with published lengths carry a clear in silence", () => {
    const late = (gap: number) => ({
      bloom: null,
      // q's tassels must open 14 full days after p's last silk, and p's shed long before.
      start: { method: "sown" as const, date: day("2027-05-01") + 23 + gap + 1 + 3 },
      variety: { sownToFlower: [60, 60] as const },
    });
    const plan = (gap: number) =>
      trialPlan({
        p: { at: 0, kind: "maize", ...maize },
        q: { at: 3, kind: "maize", ...late(gap) },
      });
    expect(standingsOf(plan(14))["p<-q"]).toBe("time");
    expect(standingsOf(plan(13))["p<-q"]).toBe("conflict");
    expect(findingsOf(plan(14), "unsure-time")).toEqual([]);
    expect(pairsOf(plan(14)).get("p<-q")?.time).toMatchObject({
      closes: "published",
      opens: "own",
    });
  });
});
