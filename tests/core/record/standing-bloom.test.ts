/** When what stood over winter flowered in seasons before. */
import { expect, test } from "vitest";
import type { Entry, Plan, Planting } from "../../../src/core/model/plan.ts";
import { STANDING_MARGIN_DAYS, standingBloom } from "../../../src/core/record/standing-bloom.ts";
import { check, day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const entry = (what: Entry["what"], on: string): Entry => ({
  id: what,
  of: "p",
  on: day(on),
  what,
});

/** A season with one stand of a kind that stood into it; trial plans are of 2027. */
function season(year: number, name: string, more: Partial<Plan> = {}, traits = {}): Plan {
  const plan = trialPlan(
    { p: { at: 0, kind: "kale", bloom: null, stoodInto: day(`${year}-01-01`), ...traits } },
    [],
    {
      season: { name: String(year), first: day(`${year}-01-01`), last: day(`${year}-12-31`) },
      ...more,
    },
  );
  return { ...plan, varieties: plan.varieties.map((each) => ({ ...each, name })) };
}

const seen = [entry("first flower", "2026-04-28"), entry("last flower", "2026-06-10")];
const here = season(2027, "Grey Fold");
const stand = (plan: Plan): Planting => {
  const [planting] = layoutOf(plan).plantings;
  if (!planting) throw new Error("no planting");
  return planting;
};
const offeredBy = (...before: readonly Plan[]) => standingBloom(here, stand(here), before);

test("the very variety's days are offered a year on, wider than they were seen", () => {
  const offer = offeredBy(season(2026, "Grey Fold", { entries: seen }));
  const margin = STANDING_MARGIN_DAYS.variety;
  expect(offer?.of).toBe("variety");
  expect(offer?.offered).toEqual({
    first: day("2027-04-28") - margin,
    last: day("2027-06-10") + margin,
  });
});

test("days since it was last seen shut count, and two seasons are taken together", () => {
  const early = [
    entry("looked at", "2025-04-10"),
    entry("first flower", "2025-04-15"),
    entry("last flower", "2025-05-30"),
  ];
  const before = season(2026, "Grey Fold", { entries: seen });
  const offer = offeredBy(before, season(2025, "grey fold", { entries: early }));
  expect(offer?.offered.first).toBe(day("2027-04-11") - STANDING_MARGIN_DAYS.variety);
  expect(offer?.offered.last).toBe(day("2027-06-10") + STANDING_MARGIN_DAYS.variety);
});

test("another variety of its kind tells less, and is put wider", () => {
  const offer = offeredBy(season(2026, "Other", { entries: seen }));
  expect(offer?.of).toBe("kind");
  expect(offer?.offered.first).toBe(day("2027-04-28") - STANDING_MARGIN_DAYS.kind);
});

test("nothing is offered of what did not stand over winter, nor where dates are typed or none were seen", () => {
  const spring = { stoodInto: undefined, start: { method: "sown", date: day("2026-03-01") } };
  expect(offeredBy(season(2026, "Grey Fold", { entries: seen }, spring))).toBeNull();
  expect(offeredBy(season(2026, "Grey Fold"))).toBeNull();
  const before = [season(2026, "Grey Fold", { entries: seen })];
  const typed = { ...stand(here), bloom: { first: day("2027-05-01"), last: day("2027-06-01") } };
  expect(standingBloom(here, typed, before)).toBeNull();
  expect(standingBloom(here, { ...stand(here), flowering: "cut" }, before)).toBeNull();
});

test("taken as a rule of thumb they never clear a pair in silence", () => {
  const offer = offeredBy(season(2026, "Grey Fold", { entries: seen }));
  if (!offer) throw new Error("no offer");
  const both = trialPlan({
    p: {
      at: 0,
      kind: "kale",
      stoodInto: day("2027-01-01"),
      bloom: { ...offer.offered, basis: "rule of thumb" },
    },
    q: {
      at: 5,
      kind: "cabbage",
      stoodInto: day("2027-01-01"),
      bloom: { first: day("2027-08-01"), last: day("2027-09-01") },
    },
  });
  const { findings } = check(both);
  const about = findings.filter(({ subjects }) => subjects.includes("p") && subjects.includes("q"));
  expect(about.map(({ severity }) => severity)).toContain("caution");
});
