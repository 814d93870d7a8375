/**
 * From a seed list to three layouts: whole, on their beds, started when their kind can be, and
 * judged by the same checks as the screen.
 */
import { beforeAll, describe, expect, test } from "vitest";
import { alikeLayouts, laidOutLayouts } from "../../../src/core/arrange/laid-out-layouts.ts";
import { type LaidOutList, layOut } from "../../../src/core/arrange/lay-out.ts";
import { layOutFault } from "../../../src/core/arrange/lay-out-faults.ts";
import { goalRules } from "../../../src/core/arrange/lay-out-goals.ts";
import {
  costWords,
  faultWords,
  goalNames,
  leftWords,
  sameWords,
  seedNotes,
} from "../../../src/core/arrange/lay-out-words.ts";
import { seedParts } from "../../../src/core/arrange/seed-parts.ts";
import { tallKinds } from "../../../src/core/arrange/tall-kinds.ts";
import { plantRoom } from "../../../src/core/beds/plant-room.ts";
import { rowsDirection } from "../../../src/core/beds/rows-on-ground.ts";
import { type CheckedLayout, checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { countBySeverity } from "../../../src/core/checks/finding.ts";
import { growthOf } from "../../../src/core/kinds/growth.ts";
import type { Plan, Planting } from "../../../src/core/model/plan.ts";
import { newcomerGarden } from "../../support/newcomer-garden.ts";
import {
  bed,
  book,
  checkedLayout,
  day,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";
import { seeded } from "../../bench/field.ts";

function laidOutOf(checked: CheckedLayout): LaidOutList {
  const run = layOut(checked);
  let next = run.next();
  while (next.done !== true) next = run.next();
  return next.value;
}

/** The plan with all three layouts, and each of them checked afresh. */
function added(plan: Plan, { laid }: LaidOutList) {
  const layouts = laid.map(({ goal, plantings }) => ({ name: goalNames[goal], plantings }));
  const { edit, ids } = laidOutLayouts(plan, firstLayout(plan).id, layouts, "Lay out");
  const after = edit.apply(plan);
  return { after, checked: ids.map((id) => checkLayout(after, id)) };
}

const frosts = { lastSpringFrost: day("2027-05-10"), firstAutumnFrost: day("2027-10-12") };
const site = { name: "Garden", upBearingDeg: 0, ...frosts };

describe("the newcomer's garden", () => {
  const plan = newcomerGarden();
  let list: LaidOutList;
  let result: ReturnType<typeof added>;
  beforeAll(() => {
    list = laidOutOf(checkedLayout(plan));
    result = added(plan, list);
  }, 60_000);

  test("each layout holds what it says, and no conflict and nothing unknown is left", () => {
    for (const [index, { cost }] of list.laid.entries()) {
      const { result: fresh, layout } = result.checked[index] as CheckedLayout;
      const { conflict, caution, unknown } = countBySeverity(fresh.findings);
      expect([cost.conflicts, cost.cautions, cost.unknowns]).toEqual([conflict, caution, unknown]);
      expect([conflict, unknown]).toEqual([0, 0]);
      expect(cost.covers).toBe(layout.plantings.filter(({ cover }) => cover !== "none").length);
    }
  });

  test("every plot lies on its bed alone, along it, with no more plants than its ground takes", () => {
    for (const { result: fresh, layout } of result.checked) {
      const checks = new Set<string>(fresh.findings.map(({ check }) => check));
      for (const check of ["overlap", "outside", "crowded"]) expect(checks).not.toContain(check);
      for (const { bed: id, outline, plants, variety: of } of layout.plantings) {
        const home = layout.beds.find((each) => each.id === id);
        const kind = book.kind(plan.varieties.find((each) => each.id === of)?.kind ?? "");
        if (!home || !kind) throw new Error("a plot without bed or kind");
        if (home.outline.shape === "rectangle") {
          expect(plants ?? 0).toBeLessThanOrEqual(plantRoom(kind, outline).plants);
          expect(rowsDirection(outline)).toBe(home.outline.turnDeg);
        }
      }
    }
  });

  test("plants laid and left add up to those wanted", () => {
    for (const { plantings, left } of list.laid) {
      for (const { id, wantedPlants } of plan.varieties) {
        const laid = plantings.filter((each) => each.variety === id);
        const missing = left.filter((each) => each.variety.id === id);
        const sum =
          laid.reduce((total, { plants = 0 }) => total + plants, 0) +
          missing.reduce((total, { plants }) => total + plants, 0);
        expect(sum).toBe(wantedPlants);
      }
    }
  });

  test("the three differ: all grown covers, the second covers nothing, the third rests on distance", () => {
    const [all, fewest, roomiest] = list.laid;
    expect(list.laid.map(({ goal }) => goal)).toEqual(["all-grown", "fewest-covers", "roomiest"]);
    expect(all?.cost.varieties).toBe(24);
    expect(all?.cost.covers).toBeGreaterThan(0);
    expect(fewest?.cost.covers).toBe(0);
    expect(fewest?.cost.varieties).toBeLessThan(24);
    expect([roomiest?.cost.covers, roomiest?.cost.onTime, roomiest?.cost.onCover]).toEqual([
      0, 0, 0,
    ]);
    expect(roomiest?.left.map(leftWords)).toContain(
      "Cream Lintel waits a year: too near Garth Flint.",
    );
  });

  test("tender kinds start after the last frost, hardy ones before, biennials as plants kept over winter", () => {
    const [all] = list.laid;
    let tender = 0;
    for (const { variety: of, start } of all?.plantings ?? []) {
      const kind = book.kind(plan.varieties.find(({ id }) => id === of)?.kind ?? "");
      if (!kind || !start) throw new Error("no start");
      const isTender = growthOf(kind).isTender;
      if (isTender) tender += 1;
      if (isTender) expect(start.date).toBeGreaterThan(frosts.lastSpringFrost);
      else expect(start.date).toBeLessThan(frosts.lastSpringFrost);
      if (kind.lifeCycle === "biennial") expect(start.method).toBe("transplanted");
    }
    expect(tender).toBeGreaterThan(10);
    expect(seedNotes(list.seeds)[0]).toContain("Ruddle, Beck Stem and Nantling: laid out as roots");
  });

  test("no variety is split that a bed takes whole, but for want of room", () => {
    const [, fewest] = list.laid;
    const plots = new Map<string, Planting[]>();
    for (const each of fewest?.plantings ?? []) {
      plots.set(each.variety, [...(plots.get(each.variety) ?? []), each]);
    }
    const split = [...plots].filter(([, own]) => own.length > 1).map(([id]) => id);
    // 60 plants of maize in one row are longer than any bed.
    expect(split.map((id) => plan.varieties.find((each) => each.id === id)?.name)).toEqual([
      "Garth Flint",
    ]);
  });

  test("one edit adds the three and leaves the layout they came from as it was", () => {
    expect(result.after.layouts.map(({ name }) => name)).toEqual([
      "Layout 1",
      "All grown this year",
      "Fewest covers",
      "Roomiest distances",
    ]);
    expect(result.after.layouts[0]).toBe(plan.layouts[0]);
    const again = laidOutLayouts(
      result.after,
      "layout-1",
      [{ name: "Fewest covers", plantings: [] }],
      "",
    );
    expect(again.edit.apply(result.after).layouts[1]?.name).toBe("Fewest covers 2");
  });

  test("the same plan is laid out the same way", () => {
    expect(laidOutOf(checkedLayout(plan)).laid).toEqual(list.laid);
  }, 60_000);

  test("costs in words", () => {
    const [all] = list.laid;
    if (!all) throw new Error("nothing laid");
    const words = costWords(all, "m");
    expect(words).toContain("No conflict found");
    expect(words.some((line) => /^\d+ covered$/.test(line))).toBe(true);
  });
});

test("of layouts that come out the same one is enough, and it is said which", () => {
  const one = [variety("v1", "lettuce", { wantedPlants: 20 })];
  const plan = gardenPlan(one, [bed("b1", 0, 0, 1.2, 9)], [], { site });
  const { laid } = laidOutOf(checkedLayout(plan));
  expect(laid.map(({ goal }) => goal)).toHaveLength(3);
  expect(alikeLayouts(laid)).toEqual([laid]);
  expect(sameWords(laid)).toBe(
    "All grown this year, Fewest covers and Roomiest distances come out the same: there is nothing to choose between.",
  );
  const [first, second, third] = laid;
  if (!first || !second || !third) throw new Error("three were asked for");
  const other = { ...first, plantings: [] };
  expect(alikeLayouts([other, second, third])).toEqual([[other], [second, third]]);
  expect(sameWords([other, second, third])).toMatch(/^Fewest covers and Roomiest distances come/);
  expect(sameWords([other, second])).toBeNull();
});

test("where no number is wanted, as many are laid as keep a variety of the kind true", () => {
  const varieties = [variety("v1", "maize"), variety("v2", "lettuce")];
  const beds = [bed("b1", 0, 0, 4, 9), bed("b2", 20, 0, 1.2, 9)];
  const { laid } = laidOutOf(checkedLayout(gardenPlan(varieties, beds, [], { site })));
  const plants = (laid[0]?.plantings ?? []).map((each) => [each.variety, each.plants]);
  // What the kinds' sources print to keep a variety (kinds/poaceae.ts, kinds/asteraceae.ts).
  expect(plants).toEqual([
    ["v1", 100],
    ["v2", 12],
  ]);
});

test("what stands stays, and only what is still wanted is laid", () => {
  const stands = planting("p1", "v1", {
    outline: square(0, 0, 1),
    bed: "b1",
    plants: 4,
    start: { method: "transplanted", date: day("2027-05-20") },
  });
  const plan = gardenPlan(
    [variety("v1", "tomato", { wantedPlants: 4 }), variety("v2", "tomato", { wantedPlants: 4 })],
    [bed("b1", 0, 0, 1.2, 9), bed("b2", 30, 0, 1.2, 9)],
    [stands],
    { site },
  );
  const list = laidOutOf(checkedLayout(plan));
  const { checked } = added(plan, list);
  for (const { layout } of checked) {
    expect(layout.plantings[0]).toBe(stands);
    expect(layout.plantings.map(({ variety: of }) => of)).toEqual(["v1", "v2"]);
    expect(layout.plantings[1]?.bed).toBe("b2");
  }
});

test("of what nothing keeps apart, what no cover parts waits and says for whom", () => {
  const plan = gardenPlan(
    [variety("v1", "spinach", { wantedPlants: 10 })],
    [bed("b1", 0, 0, 1.2, 9)],
    [],
    {
      site,
      surroundings: [
        {
          id: "s1",
          label: "Old field",
          what: "pollen",
          kind: "spinach",
          outline: { shape: "point", x: 3, y: 0 },
          flowering: "yes",
          cover: "none",
          bloom: { first: day("2027-04-01"), last: day("2027-09-30") },
        },
      ],
    },
  );
  const { laid } = laidOutOf(checkedLayout(plan));
  const fewest = laid.find(({ goal }) => goal === "fewest-covers");
  expect(fewest?.left.map(leftWords)).toEqual([
    "Variety v1 is not grown: too near Old field, which another year does not take away.",
  ]);
});

describe("what cannot be laid out is said, and nothing is done", () => {
  const words = (plan: Plan) => {
    const checked = checkedLayout(plan);
    const fault = layOutFault(checked.layout, seedParts(checked));
    return fault && faultWords(fault);
  };
  const beds = [bed("b1", 0, 0, 1.2, 9)];
  const beans = [variety("v1", "common-bean", { wantedPlants: 20 })];

  test("no beds", () => {
    expect(words(gardenPlan(beans, [], [], { site }))).toContain("has no beds");
  });
  test("nothing wanted", () => {
    expect(words(gardenPlan([], beds, [], { site }))).toContain("asks for nothing more");
  });
  test("no frost, so no day to start", () => {
    expect(words(gardenPlan(beans, beds, []))).toContain("type the last spring frost");
  });
  test("beds without ground", () => {
    const full = planting("p1", "v9", {
      outline: { ...square(0, 0, 1.2), lengthM: 9 } as Planting["outline"],
      bed: "b1",
    });
    const varieties = [...beans, variety("v9", "lettuce", { wantedPlants: 40 })];
    expect(words(gardenPlan(varieties, beds, [full], { site }))).toContain(
      "No bed has free ground",
    );
  });
  test("a summer too short", () => {
    const short = {
      ...site,
      lastSpringFrost: day("2027-06-25"),
      firstAutumnFrost: day("2027-08-10"),
    };
    expect(words(gardenPlan(beans, beds, [], { site: short }))).toMatch(
      /Variety v1: its seed would ripen about .* after the first frost/,
    );
  });
  test("a kind that is not known", () => {
    const strange = [variety("v1", "no-such-kind", { wantedPlants: 20 })];
    expect(words(gardenPlan(strange, beds, [], { site }))).toContain("its kind is not known");
  });
});

test("beds too small for a plot leave it out, and say so", () => {
  const plan = gardenPlan(
    [variety("v1", "pumpkin", { wantedPlants: 6 }), variety("v2", "lettuce", { wantedPlants: 4 })],
    [bed("b1", 0, 0, 0.4, 0.7)],
    [],
    { site },
  );
  const { laid } = laidOutOf(checkedLayout(plan));
  for (const { plantings, left } of laid) {
    expect(plantings.map(({ variety: of }) => of)).not.toContain("v1");
    expect(left.map(leftWords)).toContain("Variety v1: no room for 6 plants.");
  }
});

const KINDS = [
  "tomato",
  "common-bean",
  "pea",
  "lettuce",
  "beet",
  "carrot",
  "maize",
  "summer-squash",
];

test("12 seeded gardens: never a conflict or an unknown of the layout's own making", () => {
  let plots = 0;
  for (let seed = 1; seed <= 12; seed += 1) {
    const next = seeded(seed);
    const varieties = Array.from({ length: 4 + Math.floor(next() * 10) }, (_, index) =>
      variety(`v${index}`, KINDS[Math.floor(next() * KINDS.length)] ?? "pea", {
        wantedPlants: 4 + Math.floor(next() * 40),
      }),
    );
    const beds = Array.from({ length: 3 + Math.floor(next() * 5) }, (_, index) =>
      bed(
        `b${index}`,
        index * (2 + next() * 6),
        next() * 5,
        0.8 + next(),
        3 + next() * 8,
        next() * 40,
      ),
    );
    const plan = gardenPlan(varieties, beds, [], { site });
    const list = laidOutOf(checkedLayout(plan));
    for (const [index, { result, layout }] of added(plan, list).checked.entries()) {
      const { conflict, unknown } = countBySeverity(result.findings);
      expect([seed, list.laid[index]?.goal, conflict, unknown]).toEqual([
        seed,
        list.laid[index]?.goal,
        0,
        0,
      ]);
      plots += layout.plantings.length;
    }
  }
  expect(plots).toBeGreaterThan(150);
}, 120_000);

test("the kinds called tall are kinds", () => {
  expect(tallKinds.filter((id) => !book.kind(id))).toEqual([]);
  expect(Object.keys(goalRules)).toEqual(Object.keys(goalNames));
});
