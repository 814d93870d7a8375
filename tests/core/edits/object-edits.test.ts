import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { acceptFinding, withdrawAcceptance } from "../../../src/core/edits/accept-finding.ts";
import { isCodeOfBed, nextBedCode, nextPlantingCode } from "../../../src/core/beds/codes.ts";
import { drawnIds, nextId } from "../../../src/core/edits/edit.ts";
import { copyLayout, removeLayout, renameLayout } from "../../../src/core/edits/layout-edits.ts";
import {
  addBed,
  addPlantings,
  addSurrounding,
  addVariety,
  changeBed,
  changePlan,
  changePlantings,
  changeSurrounding,
  changeVariety,
  removeObjects,
  removeVariety,
} from "../../../src/core/edits/object-edits.ts";
import type { Layout, Surrounding } from "../../../src/core/model/plan.ts";
import { planProblems } from "../../../src/core/model/plan-problems.ts";
import {
  LAYOUT,
  bedOf,
  layoutOf,
  littlePlan,
  planting,
  plantingOf,
  rectangle,
} from "../../support/little-plan.ts";

describe("a pollen source of no kind", () => {
  const stand: Surrounding = {
    id: "s9",
    label: "Stand by the road",
    what: "pollen",
    outline: { shape: "point", x: 1, y: 1 },
    flowering: "yes",
    cover: "none",
  };
  const isKnown = (id: string) => cropBook().kind(id) !== undefined;
  const without = {
    ...littlePlan,
    varieties: [],
    layouts: [{ ...layoutOf(littlePlan), plantings: [] }],
  };

  test("counts as the kind of the first variety, and says so", () => {
    const edit = addSurrounding(stand);
    const kind = littlePlan.varieties[0]?.kind;
    expect(edit.apply(littlePlan).surroundings.at(-1)?.kind).toBe(kind);
    expect(edit.note?.(littlePlan)).toContain("Stand by the road counts as");
  });

  test("has a kind in a plan without varieties too, so that the plan can be read again", () => {
    const plan = addSurrounding(stand).apply(without);
    expect(planProblems(plan, "plan.json", isKnown)).toEqual([]);
  });

  test("is given one when a hedge becomes a pollen source", () => {
    const hedge = addSurrounding({ ...stand, what: "hedge" }).apply(without);
    expect(hedge.surroundings.at(-1)?.kind).toBeUndefined();
    const changed = changeSurrounding("s9", { what: "pollen" }, "Change").apply(hedge);
    expect(changed.surroundings.at(-1)?.kind).toBeDefined();
    const kept = changeSurrounding("s9", { what: "pollen", kind: "beet" }, "Change");
    expect(kept.apply(hedge).surroundings.at(-1)?.kind).toBe("beet");
    expect(kept.note?.(hedge)).toBeNull();
  });
});

describe("codes", () => {
  const withBed = (...codes: readonly string[]): Layout => ({
    ...layoutOf(littlePlan),
    beds: codes.map((code, index) => ({ id: `b${index}`, code, outline: rectangle(0, 0, 1, 1) })),
  });

  test.each([
    [[], "A01"],
    [["A01"], "A02"],
    [["A01", "A02", "B07"], "B08"],
    [["A02", "A03", "A01"], "A04"],
    [["B99"], "B100"],
    [["North"], "North-01"],
    [["7"], "08"],
  ])("after beds %j comes %s", (codes, next) => {
    expect(nextBedCode(withBed(...codes))).toBe(next);
  });

  test("a planting gets the lowest free number of its bed", () => {
    expect(nextPlantingCode(layoutOf(littlePlan), bedOf(littlePlan, "b1"))).toBe("A01-3");
    expect(nextPlantingCode(layoutOf(littlePlan), bedOf(littlePlan, "b2"))).toBe("A02-1");
    expect(nextPlantingCode(layoutOf(littlePlan), undefined)).toBe("P-2");
  });

  test("a code belongs to a bed when it is the bed's with a number", () => {
    const bed = bedOf(littlePlan, "b1");
    expect(isCodeOfBed("A01-12", bed)).toBe(true);
    expect(isCodeOfBed("A01-x", bed)).toBe(false);
    expect(isCodeOfBed("A011-2", bed)).toBe(false);
    expect(isCodeOfBed("P-3", undefined)).toBe(true);
  });

  test("ids count on from the highest in use", () => {
    expect(nextId("p", drawnIds(littlePlan, layoutOf(littlePlan)))).toBe("p4");
    expect(nextId("x", [])).toBe("x1");
    expect(nextId("p", ["p9", "p10", "pear"])).toBe("p11");
  });
});

test("adding puts new objects last and leaves the rest", () => {
  const withBed = addBed(LAYOUT, { id: "b3", code: "A03", outline: rectangle(6, 0, 1, 10) }).apply(
    littlePlan,
  );
  expect(layoutOf(withBed).beds.map(({ id }) => id)).toEqual(["b1", "b2", "b3"]);
  const planted = addPlantings(
    LAYOUT,
    [planting("p4", "A03-1", rectangle(6, 0, 1, 1))],
    "Place",
  ).apply(littlePlan);
  expect(plantingOf(planted, "p1")).toBe(plantingOf(littlePlan, "p1"));
  expect(layoutOf(planted).plantings).toHaveLength(4);
  const around = addSurrounding({
    id: "s2",
    label: "Pond",
    what: "water",
    outline: { shape: "point", x: 1, y: 1 },
    flowering: "yes",
    cover: "none",
  });
  expect(around.title).toBe("Add Pond");
  expect(around.note?.(littlePlan)).toBeNull();
  expect(around.apply(littlePlan).surroundings).toHaveLength(2);
  expect(
    addVariety({ id: "v3", name: "Kettle Dun", kind: "common-bean" }).apply(littlePlan).varieties,
  ).toHaveLength(3);
});

test("changing sets fields, and takes away those given as undefined", () => {
  const dated = changePlantings(
    LAYOUT,
    ["p1", "p2"],
    { note: "north end", bed: undefined },
    "Change",
  ).apply(littlePlan);
  expect(plantingOf(dated, "p1")).toMatchObject({ note: "north end" });
  expect(plantingOf(dated, "p1")).not.toHaveProperty("bed");
  expect(plantingOf(dated, "p3")).toBe(plantingOf(littlePlan, "p3"));
  expect(
    bedOf(changeBed(LAYOUT, "b1", { code: "N1" }, "Rename").apply(littlePlan), "b1").code,
  ).toBe("N1");
  expect(
    changeVariety("v1", { form: "potato-leaf" }, "Form").apply(littlePlan).varieties[0]?.form,
  ).toBe("potato-leaf");
  expect(
    changeSurrounding("s1", { label: "Fence" }, "Rename").apply(littlePlan).surroundings[0]?.label,
  ).toBe("Fence");
  expect(changePlan({ units: "ft" }, "Feet").apply(littlePlan).units).toBe("ft");
});

test("removing a bed takes its plantings with it, in this layout only", () => {
  const copied = copyLayout(LAYOUT, "layout-2", "Copy").apply(littlePlan);
  const next = removeObjects(LAYOUT, ["b1"]).apply(copied);
  expect(layoutOf(next).plantings.map(({ id }) => id)).toEqual(["p3"]);
  expect(next.layouts[1]).toBe(copied.layouts[1]);
  expect(removeObjects(LAYOUT, ["s1"]).apply(littlePlan).surroundings).toEqual([]);
});

test("removing a variety takes its plantings in every layout", () => {
  const copied = copyLayout(LAYOUT, "layout-2", "Copy").apply(littlePlan);
  const next = removeVariety("v1", "Remove").apply(copied);
  expect(next.varieties.map(({ id }) => id)).toEqual(["v2"]);
  expect(next.layouts.map(({ plantings }) => plantings.length)).toEqual([0, 0]);
});

describe("layouts", () => {
  const two = copyLayout(LAYOUT, "layout-2", "Other way").apply(littlePlan);

  test("a copy stands after the original, with the same objects", () => {
    expect(two.layouts.map(({ name }) => name)).toEqual(["Layout 1", "Other way"]);
    expect(two.layouts[1]?.plantings).toBe(two.layouts[0]?.plantings);
  });

  test("are renamed and deleted; the last one stays", () => {
    expect(renameLayout("layout-2", "Third").apply(two).layouts[1]?.name).toBe("Third");
    const one = removeLayout(LAYOUT).apply(two);
    expect(one.layouts.map(({ id }) => id)).toEqual(["layout-2"]);
    expect(removeLayout("layout-2").apply(one)).toBe(one);
  });

  test("a deleted layout is no longer the chosen one", () => {
    const chosen = changePlan({ chosenLayout: "layout-2" }, "Choose").apply(two);
    expect(removeLayout("layout-2").apply(chosen)).not.toHaveProperty("chosenLayout");
    expect(removeLayout(LAYOUT).apply(chosen).chosenLayout).toBe("layout-2");
  });
});

test("an acceptance is kept once, and taken back", () => {
  const entry = { finding: "isolation|p|q", requiredM: 7.62, reason: "Few bees here." };
  const once = acceptFinding({ ...entry, layout: LAYOUT }).apply(littlePlan);
  const still = { ...entry, requiredM: 9, reason: "Still few.", layout: LAYOUT };
  const other = { ...still, layout: "layout-2" };
  const twice = acceptFinding(other).apply(acceptFinding(still).apply(once));
  expect(twice.accepted).toEqual([still, other]);
  const left = withdrawAcceptance("isolation|p|q", LAYOUT).apply(twice);
  expect(left.accepted).toEqual([other]);
  // An entry of an older file holds for every layout, and goes with either.
  const old = { ...littlePlan, accepted: [entry] };
  expect(withdrawAcceptance("isolation|p|q", LAYOUT).apply(old).accepted).toEqual([]);
  expect(acceptFinding(still).apply(old).accepted).toEqual([still]);
});
