/** A planting's end: what it frees, what it ends, and what it must not clear. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  areOnGroundTogether,
  groundDays,
  standsOn,
} from "../../../src/core/calendar/ground-time.ts";
import type { Plan, Planting } from "../../../src/core/model/plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import {
  type TrialPlanting,
  bloom,
  check,
  day,
  findingsOf,
  pairsOf,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const sown = (iso: string) => ({ method: "sown" as const, date: day(`2027-${iso}`) });

describe("ground", () => {
  const peasThenLeeks = (end: string | null, start: string) =>
    trialPlan({
      peas: {
        at: 0,
        kind: "pea",
        purpose: "food",
        start: sown("03-10"),
        ...(end === null ? {} : { end: day(`2027-${end}`) }),
      },
      leeks: { at: 0, kind: "leek", purpose: "food", start: sown(start) },
    });
  const overlaps = (plan: Plan) => findingsOf(plan, "overlap").length;

  test("carries peas and then leeks, on the same day at the earliest", () => {
    expect(overlaps(peasThenLeeks("07-01", "07-02"))).toBe(0);
    expect(overlaps(peasThenLeeks("07-01", "07-01"))).toBe(0);
    expect(overlaps(peasThenLeeks("07-01", "06-30"))).toBe(1);
  });

  test("is taken to the end of the season where no end is known, or one before the start", () => {
    expect(overlaps(peasThenLeeks(null, "07-02"))).toBe(1);
    expect(overlaps(peasThenLeeks("03-01", "07-02"))).toBe(1);
  });

  test("where the second has no start, it may stand there already", () => {
    const plan = trialPlan({
      peas: { at: 0, kind: "pea", end: day("2027-07-01") },
      leeks: { at: 0, kind: "leek" },
    });
    expect(overlaps(plan)).toBe(1);
  });

  test("two stand on it together just when some day has both, the day of clearing left out", () => {
    const maybe = (from: number) => fc.option(fc.integer({ min: from, max: 30 }), { nil: null });
    const planting = fc
      .tuple(maybe(0), maybe(1))
      .map(([start, days]): Pick<Planting, "start" | "end"> => ({
        ...(start === null ? {} : { start: { method: "sown", date: start } }),
        ...(days === null ? {} : { end: (start ?? 0) + days }),
      }));
    fc.assert(
      fc.property(planting, planting, (one, other) => {
        // Half days tell morning from evening: cleared in the morning, sown in the evening.
        const isOn = (each: typeof one, halfDay: number) => {
          const { from, to } = groundDays(each);
          return halfDay > from && halfDay < to;
        };
        let isTogether = false;
        for (let half = -1.5; half < 63; half += 0.5) {
          isTogether ||= isOn(one, half) && isOn(other, half);
        }
        expect(areOnGroundTogether(one, other)).toBe(isTogether);
        expect(areOnGroundTogether(other, one)).toBe(isTogether);
      }),
    );
  });

  test("is taken from the start to the end, both days included", () => {
    const planting = { start: sown("03-10"), end: day("2027-07-01") };
    expect(
      ["03-09", "03-10", "07-01", "07-02"].map((iso) => standsOn(planting, day(`2027-${iso}`))),
    ).toEqual([false, true, true, false]);
  });
});

describe("bloom of what is cleared", () => {
  /** A seed lettuce that flowers in July, and one to eat 5 m beside it. */
  const garden = (eaten: Partial<TrialPlanting>, seed: Partial<TrialPlanting> = {}) =>
    trialPlan({
      p: { at: 0, kind: "common-bean", isolationM: 50, ...seed },
      q: { at: 6, kind: "common-bean", purpose: "food", ...eaten },
    });
  const standing = (plan: Plan) => standingsOf(plan)["p<-q"];

  test("ends with it: cleared well before the other opens, time clears with a caution", () => {
    const long = bloom("06-01", "08-31");
    expect(standing(garden({ bloom: long }))).toBe("conflict");
    const cleared = garden({ bloom: long, end: day("2027-06-15") });
    expect(standing(cleared)).toBe("time");
    expect(pairsOf(cleared).get("p<-q")?.time).toMatchObject({
      closes: "planned end",
      isSure: false,
    });
    const [words] = wordsOf(cleared, "unsure-time");
    expect(words).toContain("the end of Q Variety q rests on the day it is to be cleared");
    expect(words).toContain("Clear Q Variety q in time and write it down");
  });

  test("counts to the day of clearing, that day included, with the guard days after it", () => {
    const long = bloom("06-01", "08-31");
    // July 1 opens the other; 7 guard days lie between June 23 and July 1.
    expect(standing(garden({ bloom: long, end: day("2027-06-23") }))).toBe("time");
    expect(standing(garden({ bloom: long, end: day("2027-06-24") }))).toBe("conflict");
  });

  test("never comes where it is cleared well before its earliest flower", () => {
    const before = garden({ bloom: bloom("07-10", "07-20"), end: day("2027-07-09") });
    expect(standing(before)).toBeUndefined();
    expect(check(before).standById.get("q")).toMatchObject({
      shedsPollen: false,
      whyNoBloom: "cleared",
    });
    const counted = (end: string) =>
      garden(
        { bloom: null, start: sown("05-01"), end: day(`2027-${end}`) },
        { bloom: bloom("05-20", "08-30") },
      );
    const first =
      check(garden({ bloom: null, start: sown("05-01") })).standById.get("q")?.bloom?.outer.first ??
      0;
    const stand = (plan: Plan) => check(plan).standById.get("q");
    // On a rule of thumb a fortnight is kept.
    const at = (days: number) => new Date((first + days) * 86_400_000).toISOString().slice(5, 10);
    expect(stand(counted(at(-14)))?.shedsPollen).toBe(false);
    expect(stand(counted(at(-13)))?.shedsPollen).toBe(true);
    expect(standing(counted(at(-13)))).toBe("conflict");
  });

  test("what is not told stays untold, whatever the end", () => {
    expect(standing(garden({ bloom: null, end: day("2027-04-01") }))).toBe("unknown");
  });

  test("an end that is a slip clears nothing", () => {
    const beforeStart = garden({ start: sown("05-01"), end: day("2027-04-01") });
    expect(standing(beforeStart)).toBe("conflict");
    expect(findingsOf(beforeStart, "date-order")).toMatchObject([{ subject: "q" }]);
    const lastYear = garden({ end: day("2026-06-15") });
    expect(standing(lastYear)).toBe("conflict");
    expect(findingsOf(lastYear, "other-season")).toMatchObject([{ subject: "q" }]);
  });

  test("a seed parent cleared before its seed is ripe is told, and still counts as standing", () => {
    const both = (end: string) =>
      trialPlan({
        p: { at: 0, kind: "common-bean", isolationM: 50, end: day(`2027-${end}`) },
        q: { at: 6, kind: "common-bean", isolationM: 50, bloom: bloom("07-20", "08-10") },
      });
    const early = both("07-05");
    expect(standingsOf(early)).toEqual({ "p<-q": "conflict", "q<-p": "conflict" });
    expect(findingsOf(early, "cleared-early")).toMatchObject([
      { severity: "caution", subject: "p" },
    ]);
    expect(wordsOf(early, "cleared-early")[0]).toContain("before its seed is ripe");
    expect(findingsOf(both("11-30"), "cleared-early")).toEqual([]);
  });

  test("a seed parent whose ripe seed nobody can tell is unknown", () => {
    const plan = trialPlan({ p: { at: 0, kind: "lettuce", bloom: null, end: day("2027-09-01") } });
    expect(findingsOf(plan, "cleared-early")).toMatchObject([{ severity: "unknown" }]);
  });

  test("no end, or a later one, never clears more than an earlier one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 0, max: 60 }),
        (from, more) => {
          const at = (end: number) =>
            standing(garden({ bloom: bloom("06-01", "08-31"), end: day("2027-03-01") + end }));
          const rank = (each: string | undefined) => (each === "conflict" ? 1 : 0);
          expect(rank(at(from + more))).toBeGreaterThanOrEqual(rank(at(from)));
        },
      ),
      { numRuns: 30 },
    );
  });

  test("as grown it counts once it was written down, and not before", () => {
    const long = bloom("06-01", "08-31");
    const plan = garden({ bloom: long, end: day("2027-06-15") });
    const grown = (entries: Plan["entries"], on: string) =>
      checkAsGrown({ ...plan, entries }, "layout-1", day(`2027-${on}`)).result.pairs.find(
        ({ pollenSource }) => pollenSource === "q",
      );
    expect(grown([], "06-10")?.standing).toBe("time");
    expect(grown([], "06-20")?.standing, "nobody wrote that it was cleared").toBe("conflict");
    const written = [{ id: "e", of: "q", on: day("2027-06-14"), what: "cleared" as const }];
    expect(grown(written, "06-20")).toMatchObject({ standing: "time", time: { closes: "seen" } });
  });
});

describe("days that cannot follow each other", () => {
  test("are told with both days", () => {
    const start = {
      method: "transplanted" as const,
      date: day("2027-05-10"),
      sownUnderGlass: day("2027-05-20"),
    };
    const plan = trialPlan({ p: { at: 0, kind: "tomato", start } });
    const [words] = wordsOf(plan, "date-order");
    expect(words).toContain("sown under glass on 20 May 2027, after it is set out on 10 May 2027");
    const right = trialPlan({
      p: { at: 0, kind: "tomato", start: { ...start, sownUnderGlass: day("2027-03-20") } },
    });
    expect(findingsOf(right, "date-order")).toEqual([]);
  });
});
