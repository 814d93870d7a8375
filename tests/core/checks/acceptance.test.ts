/** An acceptance holds for what was accepted, and for nothing worse. */
import { describe, expect, test } from "vitest";
import { acceptanceOf, earlierReason } from "../../../src/core/checks/acceptance.ts";
import { acceptFinding } from "../../../src/core/edits/accept-finding.ts";
import { copyLayout, removeLayout } from "../../../src/core/edits/layout-edits.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import type { Plan, Surrounding } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  bloom,
  book,
  check,
  day,
  layoutOf,
  source,
  trialPlan,
} from "../../support/trial-plan.ts";

type Plantings = Readonly<Record<string, TrialPlanting>>;

/** The plan with all that is found in it accepted. */
function lived(plan: Plan): Plan {
  const { findings } = check(plan);
  return findings.reduce(
    (next, finding) =>
      acceptFinding(acceptanceOf(finding, layoutOf(plan).id, "so be it")).apply(next),
    plan,
  );
}

/** Ids of what is found once what was accepted in the first plan has become the second. */
function returned(before: Plan, after: Plan): readonly string[] {
  const { accepted } = lived(before);
  expect(accepted.length).toBeGreaterThan(0);
  expect(check({ ...before, accepted }).findings).toEqual([]);
  return check({ ...after, accepted }).findings.map(({ id }) => id);
}

const plan = (
  plantings: Plantings,
  around: readonly Surrounding[] = [],
  more: Partial<Plan> = {},
) => trialPlan(plantings, around, more);
const p = { at: 0, kind: "tomato" } as const;

describe("an accepted finding returns when", () => {
  test("what crossed rarely crosses freely", () => {
    const near = (kind: string) => plan({ p: { at: 0, kind: "butternut" }, q: { at: 5, kind } });
    const rare = check(near("winter-squash")).findings.find((each) => each.check === "isolation");
    expect(rare).toMatchObject({ severity: "caution" });
    expect(returned(near("winter-squash"), near("butternut"))).toContain("isolation|p|q");
  });

  test("the two come nearer, and not when they stay or move apart", () => {
    const at = (metres: number) =>
      plan({
        p: { ...p, isolationM: 500 },
        q: { at: 1 + metres, kind: "tomato", purpose: "food" },
      });
    expect(returned(at(4), at(3))).toEqual(["isolation|p|q"]);
    expect(returned(at(4), at(0))).toEqual(["isolation|p|q"]);
    expect(returned(at(4), at(4))).toEqual([]);
    expect(returned(at(4), at(5))).toEqual([]);
  });

  test("seed of the other is at risk as well", () => {
    const q = { at: 2, kind: "tomato" } as const;
    const before = plan({ p, q: { ...q, purpose: "food" } });
    expect(returned(before, plan({ p, q }))).toEqual(["isolation|p|q"]);
    expect(returned(plan({ p, q }), before)).toEqual([]);
  });

  test("they are open together longer", () => {
    const until = (last: string) =>
      plan({ p, q: { at: 2, kind: "tomato", purpose: "food", bloom: bloom("06-01", last) } });
    expect(returned(until("07-03"), until("07-20"))).toEqual(["isolation|p|q"]);
    expect(returned(until("07-20"), until("07-03"))).toEqual([]);
  });

  test("another stands by the same missing dates", () => {
    const { bloom: _none, ...undated } = source("s", "tomato", { shape: "point", x: 3, y: 0.5 });
    const before = plan({ p }, [undated]);
    const after = plan({ p, r: { at: 3.5, kind: "tomato", isolationM: 1 } }, [undated]);
    expect(returned(before, after)).toContain("missing-bloom|s");
  });

  test("another stands by the same missing figure", () => {
    const kind = "sweet-pea";
    const before = plan({ p: { at: 0, kind }, q: { at: 900, kind, purpose: "food" } });
    expect(check(before).findings.map(({ id }) => id)).toContain("missing-figure|p");
    const r: TrialPlanting = { at: 0.5, kind, purpose: "food" };
    const after = plan({ p: { at: 0, kind }, q: { at: 900, kind, purpose: "food" }, r });
    expect(returned(before, after)).toContain("missing-figure|p");
  });

  test("plantings lie deeper in each other", () => {
    const on = (at: number) => plan({ p, q: { at, kind: "common-bean" } });
    expect(returned(on(0.9), on(0.6))).toEqual(["overlap|p|q"]);
    expect(returned(on(0.6), on(0.9))).toEqual([]);
  });

  test("fewer plants stand than were accepted", () => {
    const of = (plants: number) => plan({ p: { at: 0, kind: "carrot", plants } });
    const [short] = check(of(30)).findings.filter((each) => each.check === "population");
    expect(short).toBeDefined();
    expect(returned(of(30), of(2)).some((id) => id.startsWith("population"))).toBe(true);
    expect(returned(of(30), of(31)).some((id) => id.startsWith("population"))).toBe(false);
  });

  test("seed ripens later", () => {
    const frost = { site: { ...plan({}).site, firstAutumnFrost: day("2027-08-10") } };
    const open = (first: string) => plan({ p: { ...p, bloom: bloom(first, "08-01") } }, [], frost);
    expect(returned(open("07-01"), open("07-20")).some((id) => id.startsWith("late-seed"))).toBe(
      true,
    );
  });
});

describe("an acceptance", () => {
  const near = plan({ p, q: { at: 2, kind: "tomato" } });

  test("holds in its own layout; a copy of the layout takes it along, another layout does not", () => {
    const two = copyLayout("layout-1", "layout-2", "Other").apply(lived(near));
    const other = { ...two, layouts: [two.layouts[1] ?? layoutOf(two)] };
    expect(check(other).findings).toEqual([]);
    const apart = { ...layoutOf(near), id: "layout-3", name: "Third" };
    const third = { ...lived(near), layouts: [apart] };
    expect(check(third).findings.map(({ id }) => id)).toEqual(["isolation|p|q"]);
    expect(removeLayout("layout-2").apply(two).accepted).toEqual(lived(near).accepted);
  });

  test("is written to the plan file and read back the same", () => {
    const read = readPlan(writePlan(lived(near)), "p.json", (id) => book.kind(id) !== undefined);
    expect(read.ok && read.value.accepted).toEqual(lived(near).accepted);
  });

  test("of an older file, which kept the requirement only, holds where nothing could get worse", () => {
    const [{ finding, requiredM } = { finding: "", requiredM: null }] = lived(near).accepted;
    const old = { ...near, accepted: [{ finding, requiredM, reason: "so be it" }] };
    expect(check(old).findings.map(({ id }) => id)).toEqual(["isolation|p|q"]);
    expect(earlierReason(old, "layout-1", finding)).toBe("so be it");
    const hybrid = plan({ p: { ...p, variety: { hybrid: true } } });
    const told = { finding: "hybrid-seed|p", requiredM: null, reason: "for the kitchen" };
    expect(check(hybrid).findings.map(({ id }) => id)).toContain("hybrid-seed|p");
    const lives = { ...hybrid, accepted: [told] };
    expect(check(lives).findings.map(({ id }) => id)).not.toContain("hybrid-seed|p");
  });
});
