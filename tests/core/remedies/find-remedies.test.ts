import { describe, expect, test } from "vitest";
import { NO_COST, type Proposal, verified } from "../../../src/core/remedies/remedy.ts";
import { findRemedies } from "../../../src/core/remedies/find-remedies.ts";
import { spoilsGround, weightBrought } from "../../../src/core/remedies/rank-ways.ts";
import { staggerOffers } from "../../../src/core/remedies/stagger.ts";
import type { IsolationFinding } from "../../../src/core/checks/isolation-findings.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
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

const VARIETIES = [
  variety("t1", "tomato", { isolationM: 6 }),
  variety("t2", "tomato", { isolationM: 6 }),
  variety("b1", "common-bean"),
];

function twoTomatoes(): Plan {
  return gardenPlan(
    VARIETIES,
    [bed("a", 0, 0, 1.2, 8), bed("b", 9, 0, 1.2, 8, 30)],
    [
      planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" }),
      planting("q", "t2", { outline: square(0, 3, 1.2), bed: "a" }),
      planting("r", "b1", { outline: square(9, 0, 1.2, 30), bed: "b" }),
    ],
  );
}

function isolationOf(plan: Plan): IsolationFinding {
  const found = checked(plan).findings.find((finding) => finding.check === "isolation");
  if (found?.check !== "isolation") throw new Error("no conflict");
  return found;
}

describe("remedies of a conflict", () => {
  const plan = twoTomatoes();
  const finding = isolationOf(plan);
  const context = checkedLayout(plan);
  const remedies = findRemedies(context, finding);

  test("each clears the finding, brings no conflict, and says what it clears", () => {
    expect(remedies.length).toBeGreaterThan(3);
    for (const remedy of remedies) {
      const edited = remedy.edit.apply(plan);
      const after = runChecks(edited, firstLayout(edited), book);
      expect(after.findings.some((entry) => entry.id === finding.id)).toBe(false);
      expect(after.findings.filter((entry) => entry.severity === "conflict").length).toBe(
        remedy.conflictsAfter,
      );
      expect(remedy.clears).toContain(finding.id);
    }
  });

  test("what clears most goes first, then what brings least, then the least work", () => {
    const order = remedies.map(({ conflictsAfter, cost, ...remedy }) => [
      conflictsAfter,
      weightBrought({ ...remedy, cost }),
      cost.work,
      cost.groundM,
    ]);
    const sorted = [...order].sort((a, b) => {
      const at = a.findIndex((value, index) => value !== b[index]);
      return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
    });
    expect(order).toEqual(sorted);
  });

  test("it offers another bed, a swap with a bean, bags and a cage", () => {
    const ways = new Set(remedies.map((remedy) => remedy.way));
    for (const way of ["other bed", "swap", "cover"]) expect([...ways]).toContain(way);
    expect(remedies.some((remedy) => remedy.title === "Swap P with R")).toBe(true);
  });
});

describe("sowing dates that clear a pair", () => {
  const start = { method: "sown" as const, date: day("2027-05-01") };
  const plan = gardenPlan(
    [variety("m1", "maize"), variety("m2", "maize")],
    [bed("a", 0, 0, 3, 20)],
    [
      { ...planting("p", "m1", { outline: square(0, -6, 3), bed: "a" }), start },
      { ...planting("q", "m2", { outline: square(0, 6, 3), bed: "a" }), start },
    ].map(({ bloom: _bloom, ...rest }) => rest),
    {
      site: {
        name: "Garden",
        upBearingDeg: 0,
        lastSpringFrost: day("2027-01-20"),
        firstAutumnFrost: day("2027-12-10"),
      },
    },
  );
  const offers = staggerOffers(checkedLayout(plan), ["p", "q"]);

  test("earlier and later dates of either planting are offered, verified and nearest", () => {
    expect(offers.map((offer) => [offer.planting, Math.sign(offer.startShift)])).toEqual([
      ["p", -1],
      ["p", 1],
      ["q", -1],
      ["q", 1],
    ]);
    for (const offer of offers) {
      expect(offer.conflictsAfter).toBe(0);
      // Maize wants 14 days between silking and shedding windows.
      expect(offer.gapDays).toBe(14);
    }
  });
});

describe("the bed a way out names", () => {
  test("is the bed the planting then stands in, for turned beds whose bounds lie in each other", () => {
    const near = ["t1", "t2"].map((id) => variety(id, "tomato", { isolationM: 2 }));
    let into = 0;
    for (let shift = 0; shift < 12; shift += 1) {
      const at = (step: number) => [step * 1.5, step * 1.5] as const;
      const beds = [0, 1, 2, 3, 4].map((step) =>
        bed(`b${step}`, -at(step)[0], at(step)[1], 1.2, 12, 45),
      );
      const along = (step: number, far: number) => {
        const [x, y] = at(step);
        return square(-x + far * Math.SQRT1_2, y + far * Math.SQRT1_2, 1, 45);
      };
      const plan = gardenPlan(near, shift % 2 === 0 ? beds : [...beds].reverse(), [
        planting("p", "t1", { outline: along(1, shift * 0.4 - 2), bed: "b1" }),
        planting("q", "t2", { outline: along(2, shift * 0.4 - 3), bed: "b2" }),
      ]);
      const context = { plan, layout: firstLayout(plan), book, result: checked(plan) };
      for (const remedy of findRemedies(context, isolationOf(plan))) {
        if (remedy.way !== "move" && remedy.way !== "other bed") continue;
        const after = firstLayout(remedy.edit.apply(plan)).plantings;
        const [id = ""] = remedy.into?.split(" ") ?? [];
        const moved = after.find((entry) => entry.id === id);
        expect(remedy.into).toBe(`${id} ${moved?.bed}`);
        const named = / into (\S+)$/.exec(remedy.title)?.[1];
        if (named === undefined) continue;
        into += 1;
        expect(named).toBe(beds.find((entry) => entry.id === moved?.bed)?.code);
      }
    }
    expect(into).toBeGreaterThan(10);
  });
});

describe("a way out that brings nearer what stays too near", () => {
  // r stands 4 m from p and 7 m from q; the bed lets p leave q only by coming nearer to r.
  const plan = gardenPlan(
    ["t1", "t2", "t3"].map((id) => variety(id, "tomato", { isolationM: 6 })),
    [bed("a", 0, 0, 1.2, 20)],
    [
      planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" }),
      planting("q", "t2", { outline: square(0, 3, 1.2), bed: "a" }),
      planting("r", "t3", { outline: square(0, -5.2, 1.2), bed: "a" }),
    ],
  );
  const context = checkedLayout(plan);
  const move = (y: number): Proposal => ({
    id: `move p ${y}`,
    way: "move",
    title: "Move p",
    notes: [],
    cost: NO_COST,
    touches: ["p"],
    edit: {
      title: "Move p",
      apply: (before) => ({
        ...before,
        layouts: before.layouts.map((layout) => ({
          ...layout,
          plantings: layout.plantings.map((each) =>
            each.id === "p" ? { ...each, outline: square(0, y, 1.2) } : each,
          ),
        })),
      }),
    },
  });
  const pair = (one: string, other: string) => {
    const id = `isolation|${one}|${other}`;
    const finding = context.result.findings.find((entry) => entry.id === id);
    if (!finding) throw new Error(`no ${id}`);
    return finding;
  };

  test("is none: the other conflict would be worse", () => {
    expect(pair("p", "r").measuredM).toBeCloseTo(4, 6);
    expect(verified(context, pair("p", "q"), move(-3))).toBeNull();
  });

  test("and is one where the other conflict is cleared too", () => {
    expect(verified(context, pair("p", "q"), move(12))?.clears).toEqual([
      "isolation|p|q",
      "isolation|p|r",
    ]);
  });
});

test("what brings an overlap stands behind everything clean, however much it clears", () => {
  // r is wider than p by less than a swap minds, and does not fit between p's neighbours.
  const near = ["t1", "t2"].map((id) => variety(id, "tomato", { isolationM: 3 }));
  const plan = gardenPlan(
    [...near, variety("b1", "common-bean"), variety("b2", "lettuce")],
    [bed("a", 0, 0, 1.2, 8), bed("b", 9, 0, 1.2, 8)],
    [
      planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" }),
      planting("q", "t2", { outline: square(0, 2.4, 1.2), bed: "a" }),
      planting("above", "b2", { outline: square(0, 1.2, 1.2), bed: "a" }),
      planting("below", "b2", { outline: square(0, -1.2, 1.2), bed: "a" }),
      planting("r", "b1", { outline: square(9, 0, 1.28), bed: "b" }),
    ],
  );
  const remedies = findRemedies(checkedLayout(plan), isolationOf(plan));
  const spoilt = remedies.map(spoilsGround);
  expect(remedies[spoilt.indexOf(true)]?.title).toMatch(/^Swap [PQ] with R$/);
  expect(spoilt.indexOf(true)).toBeGreaterThan(0);
  expect(spoilt.slice(spoilt.indexOf(true))).not.toContain(false);
});
