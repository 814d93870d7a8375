/** Two tapes from fixed marks lead to stake P: solved anew by moving along both circles. */
import { expect, test } from "vitest";
import { errorText, setOut } from "../../../src/core/fieldwork/set-out.ts";
import { stakeTies } from "../../../src/core/fieldwork/stake-ties.ts";
import { type Point, pointDistance } from "../../../src/core/geometry/point.ts";
import { planOf, rectangle, source } from "../../support/paper-garden.ts";

const bed = { id: "b", code: "A01", outline: rectangle(10, 10, 1.2, 9) };
const shed = source("s", "Tool shed", rectangle(2, 3, 2, 3), { what: "building" });

function tableOf(plan: ReturnType<typeof planOf>) {
  const [layout] = plan.layouts;
  const table = layout && setOut(layout, "m");
  if (!table) throw new Error("no table");
  return table;
}

/** Both places whose distances from two marks are those given, by turning about the first. */
function meetings(one: Point, other: Point, fromOne: number, fromOther: number): readonly Point[] {
  const at = (turn: number) => ({
    x: one.x + fromOne * Math.cos(turn),
    y: one.y + fromOne * Math.sin(turn),
  });
  const miss = (turn: number) => pointDistance(at(turn), other) - fromOther;
  const found: Point[] = [];
  const steps = 100_000;
  for (let step = 0; step < steps; step += 1) {
    const turn = (step * 2 * Math.PI) / steps;
    const next = ((step + 1) * 2 * Math.PI) / steps;
    if (miss(turn) === 0 || miss(turn) * miss(next) < 0) found.push(at((turn + next) / 2));
  }
  return found;
}

test("the tapes from two corners of a shed meet in stake P, on the side that is named", () => {
  const plan = planOf({ surroundings: [shed] }, [bed], []);
  const table = tableOf(plan);
  const ties = stakeTies({ ...plan, site: { ...plan.site, upBearingDeg: 0 } }, table, "m");
  if (!ties) throw new Error("no ties");
  const [one, other] = ties.marks;
  for (const { name } of ties.marks)
    expect(name).toMatch(/^(north|south)-(east|west) corner of Tool shed$/);
  const places = meetings(one.place, other.place, ...ties.toP);
  const nearest = Math.min(...places.map((place) => pointDistance(place, table.p)));
  expect(places).toHaveLength(2);
  expect(nearest).toBeLessThan(0.005);
  expect(ties.checkToQ).toBeCloseTo(pointDistance(one.place, table.q), 2);
  // Of the two meetings P is the farther one that way.
  const mirror = places.find((place) => pointDistance(place, table.p) > 0.01);
  if (!mirror) throw new Error("no second meeting");
  const isThere: Readonly<Record<string, boolean>> = {
    north: table.p.y > mirror.y,
    south: table.p.y < mirror.y,
    east: table.p.x > mirror.x,
    west: table.p.x < mirror.x,
  };
  for (const word of ties.side.split("-")) expect([word, isThere[word]]).toEqual([word, true]);
});

test("without marks, or with marks nobody reaches, there are none", () => {
  const bare = planOf({}, [bed], []);
  expect(stakeTies(bare, tableOf(bare), "m")).toBeNull();
  const far = source("s", "Barn", rectangle(800, 3, 20, 30), { what: "building" });
  expect(stakeTies(planOf({ surroundings: [far] }, [bed], []), tableOf(bare), "m")).toBeNull();
  const hedge = source("h", "Hedge", rectangle(2, 3, 2, 3), { what: "hedge" });
  expect(stakeTies(planOf({ surroundings: [hedge] }, [bed], []), tableOf(bare), "m")).toBeNull();
});

test("sides and diagonals are those of the bed", () => {
  const { corners } = tableOf(planOf({}, [bed], []));
  expect(corners.map(({ toNext }) => toNext)).toEqual([9, 1.2, 9, 1.2]);
  // The diagonal of 9 by 1.2 m: the root of 82.44 is 9.0796.
  expect(corners.map(({ across }) => across)).toEqual([9.08, 9.08, null, null]);
});

test("an error is told in what a tape shows, never too little", () => {
  expect(errorText(0.0021, "m")).toBe("3 mm");
  expect(errorText(0, "m")).toBe("1 mm");
  // 9 mm are 5.67 sixteenths of an inch.
  expect(errorText(0.009, "ft")).toBe('3/8"');
  expect(errorText(0.0254, "ft")).toBe('1"');
  expect(errorText(0.0255, "ft")).toBe('1 1/16"');
});
