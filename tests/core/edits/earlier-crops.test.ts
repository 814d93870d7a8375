/** Earlier crops entered, changed, removed, and taken over from last season's plan. */
import geodesic from "geographiclib-geodesic";
import { describe, expect, test } from "vitest";
import {
  addEarlierCrops,
  changeEarlierCrop,
  cropsOfPlan,
  removeEarlierCrops,
  takeOverCrops,
} from "../../../src/core/edits/earlier-crops.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { localFrame } from "../../../src/core/geometry/local-frame.ts";
import { shapeCentre, shapeCorners } from "../../../src/core/geometry/outline.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import type { OwnKind, Plan, Planting } from "../../../src/core/model/plan.ts";

function day(iso: string): number {
  const found = dayFromIso(iso);
  if (found === null) throw new Error(`not a date: ${iso}`);
  return found;
}

const outline = { shape: "rectangle", x: 3, y: 4, widthM: 1, lengthM: 2, turnDeg: 0 } as const;
const tomato = { outline, kind: "tomato", year: 2026 };

function planted(year: number, more: Partial<Plan> = {}): Plan {
  const plan = emptyPlan(`plan-${year}`, year);
  const planting = (id: string, variety: string): Planting => ({
    id,
    code: id.toUpperCase(),
    variety,
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  });
  return {
    ...plan,
    varieties: [
      { id: "v1", name: "Amber Lantern", kind: "tomato" },
      { id: "v2", name: "", kind: "beet" },
    ],
    layouts: [
      { id: "layout-1", name: "First", beds: [], plantings: [planting("p1", "v1")] },
      {
        id: "layout-2",
        name: "Grown",
        beds: [],
        plantings: [planting("p1", "v1"), planting("p2", "v2")],
      },
    ],
    chosenLayout: "layout-2",
    ...more,
  };
}

describe("earlier crops", () => {
  test("are added under ids of their own, changed and removed, each in one step", () => {
    const empty = emptyPlan("trial", 2027);
    const two = addEarlierCrops([tomato, { ...tomato, year: 2025 }], "Add").apply(empty);
    expect(two.earlierCrops.map(({ id, year }) => [id, year])).toEqual([
      ["e1", 2026],
      ["e2", 2025],
    ]);
    const changed = changeEarlierCrop({ ...tomato, id: "e2", year: 2024 }).apply(two);
    expect(changed.earlierCrops.map(({ year }) => year)).toEqual([2026, 2024]);
    expect(changed.earlierCrops[0]).toBe(two.earlierCrops[0]);
    const one = removeEarlierCrops(["e1"], "Remove").apply(changed);
    expect(one.earlierCrops.map(({ id }) => id)).toEqual(["e2"]);
    expect(removeEarlierCrops(["e1"], "Remove").apply(one)).toBe(one);
  });

  test("carry the year of harvest where a season runs over New Year", () => {
    const season = { name: "2026/27", first: day("2026-07-01"), last: day("2027-06-30") };
    const dated = (first: string, last: string, more: Partial<Planting> = {}) => {
      const plan = planted(2026, { season });
      const [, grown] = plan.layouts;
      const plantings = grown?.plantings.map((planting) => ({
        ...planting,
        bloom: { first: day(first), last: day(last) },
        ...more,
      }));
      return { ...plan, layouts: [{ ...plan.layouts[1], plantings }] } as Plan;
    };
    const years = (earlier: Plan) => cropsOfPlan(earlier, planted(2028)).crops.map((c) => c.year);
    // Beet names no days from flower to seed here or ripens within weeks: the tomato decides.
    expect(years(dated("2027-01-05", "2027-02-20"))).toEqual([2027, 2027]);
    expect(years(dated("2026-08-01", "2026-08-20"))[0]).toBe(2026);
    // Where no date tells, the later year: the more careful one.
    expect(years(planted(2026, { season }))).toEqual([2027, 2027]);
  });

  test("come from the chosen layout of an earlier plan, with the year its season began", () => {
    const brought = cropsOfPlan(planted(2026), planted(2027));
    expect(brought).toMatchObject({ year: 2026, layoutName: "Grown", known: 0, isPlaced: false });
    const planned = { year: 2026, wentToSeed: "yes", knownFrom: "plan" };
    expect(brought.crops).toEqual([
      { outline, kind: "tomato", code: "P1", ...planned, varietyName: "Amber Lantern" },
      { outline, kind: "beet", code: "P2", ...planned },
    ]);
    const next = takeOverCrops(brought, "Take").apply(planted(2027));
    expect(next.earlierCrops).toHaveLength(2);
    expect(
      readPlan(writePlan(next), "next.json", (id) => cropBook().kind(id) !== undefined).ok,
    ).toBe(true);
  });

  test("went to seed as far as the plan tells", () => {
    const came = (more: Partial<Planting>) => {
      const [layout] = planted(2026).layouts;
      const [planting] = layout?.plantings ?? [];
      const start = { method: "transplanted", date: day("2026-05-20") } as const;
      const plantings = [{ ...planting, start, ...more }];
      const plan = { ...planted(2026), layouts: [{ ...layout, plantings }] } as Plan;
      return cropsOfPlan(plan, planted(2027)).crops[0]?.wentToSeed;
    };
    expect(came({})).toBe("yes");
    expect(came({ purpose: "food" }), "fruit left lying").toBe("unknown");
    expect(came({ flowering: "cut" })).toBe("no");
    expect(came({ flowering: "first-year" }), "an annual has no first year").toBe("yes");
    expect(came({ purpose: "food", end: day("2026-06-10") }), "before it can be ripe").toBe("no");
    expect(came({ end: day("2026-10-10") })).toBe("yes");
    expect(came({ purpose: "food", end: day("2026-05-01") }), "before its start").toBe("unknown");
    expect(came({ start: undefined, end: day("2026-06-10") }), "nothing told").toBe("yes");
  });

  test("bring marks on the ground along, once", () => {
    const mark = { id: "m", outline, disease: "white-rot", seenOn: day("2025-07-01") };
    const before = planted(2026, { groundMarks: [mark] });
    const once = takeOverCrops(cropsOfPlan(before, planted(2027)), "").apply(planted(2027));
    expect(once.groundMarks).toEqual([{ ...mark, id: "mark-1" }]);
    expect(cropsOfPlan(before, once).marks).toEqual([]);
    const shifted = { ...mark, outline: { ...outline, x: 3.0004 } };
    expect(
      cropsOfPlan({ ...before, groundMarks: [shifted] }, once).marks,
      "to the millimetre",
    ).toEqual([]);
  });

  test("that the earlier plan knew of come along, and none comes twice", () => {
    const old = { ...tomato, id: "x", year: 2025, note: "By the gate" };
    const before = planted(2026, { earlierCrops: [old] });
    const once = takeOverCrops(cropsOfPlan(before, planted(2027)), "").apply(planted(2027));
    expect(once.earlierCrops.map(({ year }) => year)).toEqual([2026, 2026, 2025]);
    expect(once.earlierCrops.at(-1)).toMatchObject({ note: "By the gate" });
    expect(cropsOfPlan(before, once)).toMatchObject({ crops: [], known: 3 });
  });

  test("bring own kinds along under ids that are free", () => {
    const own = (name: string): OwnKind => ({
      id: "own-kind-1",
      name,
      group: name,
      lifeCycle: "annual",
      carrier: "insects",
      breeding: "outcrossing",
      isolationM: {},
    });
    const varieties = [{ id: "v1", name: "Pale", kind: "own-kind-1" }];
    const before = planted(2026, { ownKinds: [own("moonfruit")], varieties });
    const there = (name: string) => planted(2027, { ownKinds: [own(name)] });
    const other = takeOverCrops(cropsOfPlan(before, there("dewberry")), "").apply(
      there("dewberry"),
    );
    expect(other.ownKinds.map(({ id, name }) => [id, name])).toEqual([
      ["own-kind-1", "dewberry"],
      ["own-kind-2", "moonfruit"],
    ]);
    expect(other.earlierCrops.map(({ kind }) => kind)).toEqual(["own-kind-2"]);
    const same = takeOverCrops(cropsOfPlan(before, there("moonfruit")), "").apply(
      there("moonfruit"),
    );
    expect(same.ownKinds).toHaveLength(1);
    expect(same.earlierCrops.map(({ kind }) => kind)).toEqual(["own-kind-1"]);
  });

  test("lie on the same ground when the two sheets lie differently on it", () => {
    const position = { longitude: 9.4, latitude: 47.2 };
    // 40 m to the north-east, by Karney's geodesics.
    const shifted = geodesic.Geodesic.WGS84.Direct(position.latitude, position.longitude, 45, 40);
    const site = (at: { longitude: number; latitude: number }, upBearingDeg: number) => ({
      site: { name: "Garden", position: at, upBearingDeg },
    });
    const before = planted(2026, site(position, 20));
    const at = { longitude: shifted.lon2 ?? 0, latitude: shifted.lat2 ?? 0 };
    const brought = cropsOfPlan(before, planted(2027, site(at, -75)));
    expect(brought.isPlaced).toBe(true);
    const [moved] = brought.crops;
    if (!moved) throw new Error("nothing brought");
    const there = (plan: Plan, shape: typeof moved.outline) => {
      const { position: origin, upBearingDeg } = plan.site;
      if (!origin) throw new Error("no position");
      return [shapeCentre(shape), ...shapeCorners(shape)].map((point) =>
        localFrame(origin, upBearingDeg).toLonLat(point),
      );
    };
    const [old, now] = [there(before, outline), there(planted(2027, site(at, -75)), moved.outline)];
    old.forEach((place, index) => {
      const away = geodesic.Geodesic.WGS84.Inverse(
        place.latitude,
        place.longitude,
        now[index]?.latitude ?? 0,
        now[index]?.longitude ?? 0,
      );
      expect(away.s12).toBeLessThan(0.001);
    });
    const far = planted(2027, site({ longitude: 12, latitude: 47 }, 0));
    expect(cropsOfPlan(before, far)).toMatchObject({ crops: [], away: 2 });
  });
});
