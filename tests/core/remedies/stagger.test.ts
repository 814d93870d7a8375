/** Sowing dates that clear a conflict in time. */
import { describe, expect, test } from "vitest";
import { type StaggerOffer, staggerOffers } from "../../../src/core/remedies/stagger.ts";
import { pairsLostToShift } from "../../../src/core/checks/day-words.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import type { Plan, Planting, Site } from "../../../src/core/model/plan.ts";
import { monthlyMeans } from "../../support/climate-rows.ts";
import {
  bed,
  book,
  checked,
  checkedLayout,
  day,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const medford = {
  normals: { minC: monthlyMeans("medford", "tmin"), maxC: monthlyMeans("medford", "tmax") },
};
const site: Site = {
  name: "Garden",
  upBearingDeg: 0,
  lastSpringFrost: day("2027-04-28"),
  firstAutumnFrost: day("2027-11-25"),
};

function sown(id: string, x: number, iso: string, more: Partial<Planting> = {}): Planting {
  const { bloom: _none, ...rest } = planting(id, `v-${id}`, { outline: square(x, 0, 4), ...more });
  return { ...rest, start: { method: "sown", date: day(iso) } };
}

function twoMaizes(at: Partial<Site>, kind = "maize"): Plan {
  return gardenPlan(
    [variety("v-a", kind), variety("v-b", kind)],
    [bed("one", 0, 0, 4, 10)],
    [sown("a", 0, "2027-05-10"), sown("b", 6, "2027-05-10")],
    { site: { ...site, ...at } },
  );
}

function offersFor(plan: Plan): readonly StaggerOffer[] {
  return staggerOffers(checkedLayout(plan), ["a", "b"]);
}

const conflicts = (plan: Plan) =>
  checked(plan)
    .findings.filter((finding) => finding.severity === "conflict")
    .map(({ id }) => id);

describe("two maizes sown on one day", () => {
  const plan = twoMaizes({ climate: medford });
  const offers = offersFor(plan);

  test("are in conflict", () => expect(conflicts(plan)).toEqual(["isolation|a|b"]));

  test("can each be sown later, and every date offered clears the conflict", () => {
    expect(
      offers.filter(({ startShift }) => startShift > 0).map((offer) => offer.planting),
    ).toEqual(["a", "b"]);
    for (const offer of offers) {
      const after = offer.edit.apply(plan);
      expect(conflicts(after)).toEqual([]);
      expect(offer.conflictsAfter).toBe(0);
      const gaps = checked(after).pairs.map((pair) => pair.standing === "time" && pair.gapDays);
      expect(offer.gapDays).toBe(Math.min(...gaps.map(Number)));
      expect(offer.gapDays).toBeGreaterThanOrEqual(offer.guardDays);
    }
  });

  test("no nearer date would do", () => {
    for (const { planting: id, start, startShift } of offers) {
      const nearer = start - Math.sign(startShift);
      const layout = firstLayout(plan);
      const plantings = layout.plantings.map((each) =>
        each.id === id ? { ...each, start: { method: "sown" as const, date: nearer } } : each,
      );
      expect(conflicts({ ...plan, layouts: [{ ...layout, plantings }] })).toEqual([
        "isolation|a|b",
      ]);
    }
  });

  test("gain fewer days of bloom than the sowing is moved", () => {
    for (const { startShift, bloomShift, counted } of offers) {
      expect(counted).toBe("heat");
      expect(Math.abs(bloomShift)).toBeLessThan(Math.abs(startShift));
      expect(Math.sign(bloomShift)).toBe(Math.sign(startShift));
    }
  });

  test("rest on time afterwards, and a late spring would undo it", () => {
    const after = offers[0]?.edit.apply(plan) ?? plan;
    const { pairs } = runChecks(after, firstLayout(after), book);
    expect(pairsLostToShift(pairs, 0)).toEqual([]);
    expect(pairsLostToShift(pairs, 7).length).toBeGreaterThan(0);
  });
});

test("counted in days the bloom moves as far as the sowing, which the offer says", () => {
  for (const offer of offersFor(twoMaizes({}))) {
    expect(offer.counted).toBe("days");
    expect(offer.bloomShift).toBe(offer.startShift);
  }
});

describe("frosts bound the dates offered", () => {
  const earlier = (offers: readonly StaggerOffer[]) =>
    offers.filter(({ startShift }) => startShift < 0);
  const later = (offers: readonly StaggerOffer[]) =>
    offers.filter(({ startShift }) => startShift > 0);

  test("a tender kind is not sown before the last spring frost", () => {
    expect(earlier(offersFor(twoMaizes({ lastSpringFrost: day("2027-01-20") })))).not.toEqual([]);
    expect(earlier(offersFor(twoMaizes({ lastSpringFrost: day("2027-05-09") })))).toEqual([]);
  });

  test("nor so late that its seed is likely ripe after the first autumn frost", () => {
    expect(later(offersFor(twoMaizes({})))).not.toEqual([]);
    expect(later(offersFor(twoMaizes({ firstAutumnFrost: day("2027-09-20") })))).toEqual([]);
  });

  test("what may be ripe too late is told", () => {
    const offers = later(offersFor(twoMaizes({ climate: medford })));
    expect(offers.map(({ frost }) => frost)).toEqual([
      "seed after first frost",
      "seed after first frost",
    ]);
  });

  test("without frosts no more than three weeks are offered", () => {
    const { lastSpringFrost: _spring, firstAutumnFrost: _autumn, ...bare } = site;
    const plan = { ...twoMaizes({}), site: bare };
    for (const { startShift, isBounded } of offersFor(plan)) {
      expect(Math.abs(startShift)).toBeLessThanOrEqual(21);
      expect(isBounded).toBe(false);
    }
  });

  test("what stands over winter is not offered another day", () => {
    const plan = twoMaizes({}, "broad-bean");
    const layout = firstLayout(plan);
    const autumn = layout.plantings.map((each) => ({
      ...each,
      start: { method: "sown" as const, date: day("2026-11-05") },
    }));
    expect(offersFor({ ...plan, layouts: [{ ...layout, plantings: autumn }] })).toEqual([]);
  });
});

test("a date that would bring another conflict is passed over", () => {
  const plan = twoMaizes({});
  const layout = firstLayout(plan);
  const naive = offersFor(plan).find(
    ({ planting: id, startShift }) => id === "b" && startShift > 0,
  );
  if (!naive) throw new Error("no later date");
  // A third maize, in flower just when the second would be.
  const window = checked(naive.edit.apply(plan)).standById.get("b")?.bloom?.outer;
  const third = planting("c", "v-c", {
    outline: square(12, 0, 4),
    ...(window ? { bloom: window } : {}),
  });
  const crowded: Plan = {
    ...plan,
    varieties: [...plan.varieties, variety("v-c", "maize")],
    layouts: [{ ...layout, plantings: [...layout.plantings, third] }],
  };
  const before = new Set(conflicts(crowded));
  for (const offer of offersFor(crowded)) {
    expect(conflicts(offer.edit.apply(crowded)).filter((id) => !before.has(id))).toEqual([]);
  }
  const other = offersFor(crowded).find(
    ({ planting: id, startShift }) => id === "b" && startShift > 0,
  );
  expect(other?.start).not.toBe(naive.start);
});

test("nothing is offered for own dates, nor outside the season", () => {
  const plan = twoMaizes({});
  const layout = firstLayout(plan);
  const dated = layout.plantings.map((each) => ({
    ...each,
    bloom: { first: day("2027-07-01"), last: day("2027-07-31") },
  }));
  expect(offersFor({ ...plan, layouts: [{ ...layout, plantings: dated }] })).toEqual([]);
  const short = { name: "2027", first: day("2027-05-01"), last: day("2027-05-20") };
  expect(offersFor({ ...plan, season: short })).toEqual([]);
});
