import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clearGroundWords } from "../../../src/core/remedies/clear-ground-words.ts";
import { clearGround, nearestPlace } from "../../../src/core/remedies/clear-ground.ts";
import type { ClearGround } from "../../../src/core/remedies/solved-ground.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { shapeCentre } from "../../../src/core/geometry/outline.ts";
import { planBook } from "../../../src/core/kinds/own-kinds.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  bed,
  book,
  checked,
  day,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const TOMATO = [
  variety("t1", "tomato", { isolationM: 3 }),
  variety("t2", "tomato", { isolationM: 5 }),
  variety("t3", "tomato"),
];

const COVERS = ["none", "none", "cage", "bags"] as const;

/** Whether the moved planting is in no conflict, overlaps nothing and stays in a bed, by the checks. */
function isClearAt(plan: Plan, id: string, x: number, y: number): boolean {
  const at = firstLayout(plan).plantings.find((entry) => entry.id === id);
  if (!at) throw new Error("no planting");
  const from = shapeCentre(at.outline);
  const moved = moveObjects("layout-1", [id], x - from.x, y - from.y).apply(plan);
  const result = runChecks(moved, firstLayout(moved), book);
  const stands = firstLayout(moved).plantings.find((entry) => entry.id === id)?.bed !== undefined;
  const troubles = new Set(["isolation", "overlap", "outside", "shared-cage", "mixing"]);
  return (
    stands &&
    !result.findings.some((finding) => troubles.has(finding.check) && finding.subjects.includes(id))
  );
}

function inside(rings: readonly Float64Array[], x: number, y: number): boolean {
  return (
    rings.length > 0 &&
    nearestPlace(rings, { x, y })?.x === x &&
    nearestPlace(rings, { x, y })?.y === y
  );
}

/** Distance from a place to the region's edge: places nearer than the drawing's tolerance prove nothing. */
function edgeDistance(rings: readonly Float64Array[], x: number, y: number): number {
  let best = Infinity;
  for (const ring of rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const [ax, ay, bx, by] = [ring[index], ring[index + 1], ring[next], ring[next + 1]] as [
        number,
        number,
        number,
        number,
      ];
      const square2 = (bx - ax) ** 2 + (by - ay) ** 2;
      const share =
        square2 === 0
          ? 0
          : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square2));
      best = Math.min(best, Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)));
    }
  }
  return best;
}

describe("clear ground", () => {
  test("places inside are clear by the plain checks and places outside are not", () => {
    let asked = 0;
    fc.assert(
      fc.property(
        fc.record({
          turn: fc.integer({ min: -60, max: 60 }),
          size: fc.double({ min: 0.5, max: 1.4, noNaN: true }),
          cover: fc.constantFrom(...COVERS),
          others: fc.array(
            fc.record({
              cover: fc.constantFrom(...COVERS),
              x: fc.double({ min: -8, max: 8, noNaN: true }),
              y: fc.double({ min: -8, max: 8, noNaN: true }),
              which: fc.constantFrom("t1", "t2", "t3"),
              turn: fc.integer({ min: 0, max: 89 }),
            }),
            { minLength: 1, maxLength: 5 },
          ),
          places: fc.array(
            fc.record({
              x: fc.double({ min: -9, max: 9, noNaN: true }),
              y: fc.double({ min: -9, max: 9, noNaN: true }),
            }),
            { minLength: 12, maxLength: 12 },
          ),
        }),
        ({ turn, size, cover, others, places }) => {
          const plan = gardenPlan(
            TOMATO,
            [bed("a", -4, 0, 3, 16, turn), bed("b", 3, 1, 4, 12, -turn)],
            [
              planting("p", "t1", { outline: square(0, 0, size, turn), cover }),
              ...others.map((other, index) =>
                planting(`q${index}`, other.which, {
                  cover: other.cover,
                  outline: square(other.x, other.y, 1, other.turn),
                }),
              ),
            ],
          );
          const ground = clearGround(checked(plan), "p");
          if (!ground) throw new Error("no ground");
          for (const { x, y } of places) {
            // Half the checks' own tolerances for edges and neighbours.
            if (edgeDistance(ground.centres, x, y) < 0.015) continue;
            asked += 1;
            expect(isClearAt(plan, "p", x, y)).toBe(inside(ground.centres, x, y));
          }
        },
      ),
      { numRuns: 120, seed: 20_270_201 },
    );
    expect(asked).toBeGreaterThan(120 * 10);
  }, 60_000);

  test("the nearest clear spot verifies and nothing nearer does", () => {
    const plan = gardenPlan(
      TOMATO,
      [bed("a", 0, 0, 1.2, 20)],
      [
        planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" }),
        planting("q", "t2", { outline: square(0, 1.5, 1.2), bed: "a" }),
      ],
    );
    const ground = clearGround(checked(plan), "p");
    const place = nearestPlace(ground?.centres ?? [], { x: 0, y: 0 });
    // Both 1.2 m long: 5 m clear between them puts the centres 6.2 m apart.
    expect(place?.y).toBeCloseTo(1.5 - 6.2, 2);
    expect(isClearAt(plan, "p", 0, (place?.y ?? 0) - 0.001)).toBe(true);
    expect(isClearAt(plan, "p", 0, (place?.y ?? 0) + 0.01)).toBe(false);
  });

  test("sources kept apart by time forbid nothing, by a cage no more than its room", () => {
    const at = { outline: square(0, 1.5, 1.2), bed: "a" };
    const plan = (more: object) =>
      gardenPlan(
        TOMATO,
        [bed("a", 0, 0, 1.2, 20)],
        [
          planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" }),
          planting("q", "t2", { ...at, ...more }),
        ],
      );
    const forbidding = (more: object) => clearGround(checked(plan(more)), "p")?.forbidding().length;
    expect(forbidding({})).toBe(1);
    expect(forbidding({ cover: "hand" }), "its open flowers reach the other").toBe(1);
    // A cage parts nothing where the two touch, and needs room for its mesh.
    const caged = clearGround(checked(plan({ cover: "cage" })), "p");
    expect(caged?.forbidding().map(({ distanceM }) => distanceM)).toEqual([1]);
    const spot = nearestPlace(caged?.centres ?? [], { x: 0, y: 1.5 - 1.2 });
    expect(spot?.y).toBeCloseTo(1.5 - 1.2 - 1, 2);
    expect(isClearAt(plan({ cover: "cage" }), "p", 0, spot?.y ?? 0)).toBe(true);
    expect(isClearAt(plan({ cover: "cage" }), "p", 0, 1.5 - 1.2)).toBe(false);
    expect(forbidding({ bloom: { first: day("2027-09-20"), last: day("2027-10-20") } })).toBe(0);
    expect(forbidding({ bloom: { first: day("2027-09-02"), last: day("2027-10-20") } })).toBe(1);
  });

  test("it says when there is none and what forbids most", () => {
    const plan = gardenPlan(
      TOMATO,
      [bed("a", 0, 0, 1.2, 6)],
      [
        planting("p", "t1", { outline: square(0, -2, 1.2), bed: "a" }),
        planting("q", "t2", { outline: square(0, 0, 1.2), bed: "a" }),
      ],
    );
    const ground = clearGround(checked(plan), "p");
    expect(ground?.centres).toEqual([]);
    expect(ground?.forbidding().map(({ id, distanceM }) => [id, distanceM])).toEqual([["q", 5]]);
  });
});

describe("clear ground beside odd outlines", () => {
  const polygon = (corners: readonly (readonly [number, number])[], holes?: typeof corners) => ({
    shape: "polygon" as const,
    corners: corners.map(([x, y]): [number, number] => [x, y]),
    ...(holes ? { holes: [holes.map(([x, y]): [number, number] => [x, y])] } : {}),
  });
  const box = (x: number, y: number, half: number) =>
    [
      [x - half, y - half],
      [x + half, y - half],
      [x + half, y + half],
      [x - half, y + half],
    ] as const;

  test("a hole smaller than the planting is no ground to lie on", () => {
    let asked = 0;
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        fc.integer({ min: 0, max: 89 }),
        fc.tuple(
          fc.double({ min: -5, max: 5, noNaN: true }),
          fc.double({ min: -5, max: 5, noNaN: true }),
        ),
        (half, turn, [x, y]) => {
          const outline = polygon(box(0, 0, 6), box(0.3, -0.2, half));
          const plan = gardenPlan(
            TOMATO,
            [{ id: "a", code: "A", outline }],
            [planting("p", "t1", { outline: square(-4, -4, 2, turn), bed: "a" })],
          );
          const ground = clearGround(checked(plan), "p");
          if (!ground) throw new Error("no ground");
          for (const [px, py] of [
            [0.3, -0.2],
            [0, 0],
            [x, y],
          ] as const) {
            if (edgeDistance(ground.centres, px, py) < 0.015) continue;
            asked += 1;
            if (inside(ground.centres, px, py)) expect(isClearAt(plan, "p", px, py)).toBe(true);
            // A place over the hole is none, however small the hole.
            const offX = Math.abs(px - 0.3);
            const offY = Math.abs(py + 0.2);
            if (offX < 0.5 && offY < 0.5) expect(inside(ground.centres, px, py)).toBe(false);
          }
        },
      ),
      { numRuns: 200, seed: 20_270_202 },
    );
    expect(asked).toBeGreaterThan(200 * 2);
  });

  test("the tip of a neighbour, however sharp, is its ground", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 1.2, noNaN: true }),
        fc.integer({ min: 0, max: 89 }),
        fc.array(
          fc.tuple(
            fc.double({ min: -1.2, max: 1.2, noNaN: true }),
            fc.double({ min: -2, max: 3.2, noNaN: true }),
          ),
          { minLength: 60, maxLength: 60 },
        ),
        (halfWidth, turn, places) => {
          const tip = polygon([
            [-halfWidth, 0],
            [halfWidth, 0],
            [0, 1.5],
          ]);
          const plan = gardenPlan(
            [variety("t1", "tomato"), variety("b1", "common-bean")],
            [bed("a", 0, 0, 30, 30)],
            [
              planting("p", "t1", { outline: square(8, 8, 1, turn), bed: "a" }),
              planting("q", "b1", { outline: tip, bed: "a" }),
            ],
          );
          const ground = clearGround(checked(plan), "p");
          if (!ground) throw new Error("no ground");
          for (const [x, y] of places) {
            if (inside(ground.centres, x, y)) expect(isClearAt(plan, "p", x, y)).toBe(true);
          }
        },
      ),
      { numRuns: 150, seed: 20_270_203 },
    );
  });
});

test("where no isolation distance is known, ground is not called clear", () => {
  const plan = gardenPlan(
    [variety("g1", "own-kind-1"), variety("g2", "own-kind-1")],
    [bed("a", 0, 0, 3, 30)],
    [
      planting("p", "g1", { outline: square(0, 0, 1), bed: "a" }),
      planting("q", "g2", { outline: square(0, 8, 1), bed: "a" }),
    ],
    {
      ownKinds: [
        {
          id: "own-kind-1",
          name: "Marsh gold",
          group: "marsh-gold",
          lifeCycle: "annual",
          carrier: "insects",
          breeding: "outcrossing",
          isolationM: {},
        },
      ],
    },
  );
  const result = runChecks(plan, firstLayout(plan), planBook(plan));
  const ground = clearGround(result, "p");
  expect(ground?.untold).toEqual(["q"]);
  const words = clearGroundWords(ground as ClearGround, "P", (id) => id.toUpperCase(), "m");
  expect(words).toContain("no isolation distance is known");
  expect(words).not.toMatch(/without a conflict\.$/);
  const told = {
    ...plan,
    varieties: plan.varieties.map((each) => ({ ...each, isolationM: 3 })),
  };
  expect(clearGround(runChecks(told, firstLayout(told), planBook(told)), "p")?.untold).toEqual([]);
});

test("what is remembered of other ground makes no difference: another moved, added, or another shape", () => {
  const plan = gardenPlan(
    TOMATO,
    [bed("b1", 0, 0, 4, 30), bed("b2", 10, 0, 4, 30, 20)],
    [
      planting("p1", "t1", { outline: square(0, 0, 1), bed: "b1" }),
      planting("p2", "t2", { outline: square(0, 8, 1), bed: "b1" }),
      planting("wide", "t3", { outline: square(10, 0, 2), bed: "b2" }),
    ],
  );
  const ground = (of: Plan, id = "p1") => clearGround(checked(of), id)?.centres.map(String);
  const moved = moveObjects("layout-1", ["p2"], 0, -3).apply(plan);
  const shifted = moveObjects("layout-1", ["p1"], 0.3, 1.7).apply(plan);
  const before = ground(plan);
  // A shape of another size is asked about in between, so that nothing is remembered of the first.
  const afresh = (of: Plan) => {
    ground(of, "wide");
    return ground(of);
  };
  expect(ground(moved)).toEqual(afresh(moved));
  expect(ground(moved)).not.toEqual(before);
  expect(ground(plan)).toEqual(before);
  expect(ground(shifted), "its own place decides nothing").toEqual(before);
});

test("stock seed is offered no ground within what law asks between lots of its name", () => {
  const plan = (level: "sale" | "stock") =>
    gardenPlan(
      TOMATO,
      [bed("a", 0, 0, 1.2, 100)],
      [planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a", level })],
      {
        surroundings: [
          {
            id: "n",
            label: "Neighbour",
            what: "pollen",
            kind: "tomato",
            varietyName: "Variety t1",
            outline: { shape: "point", x: 0, y: 60 },
            flowering: "yes",
            cover: "none",
          },
        ],
      },
    );
  const forbidding = (level: "sale" | "stock") =>
    clearGround(checked(plan(level)), "p")
      ?.forbidding()
      .map(({ id, distanceM }) => [id, distanceM]);
  expect(forbidding("sale")).toEqual([]);
  // 7 CFR 201.76, footnote 25: half of 200 ft between classes of one variety.
  expect(forbidding("stock")).toEqual([["n", 100 * 0.3048]]);
});
