/** Every limit of a plan file: what lies at it opens, one beyond is refused with its place. */
import { expect, test } from "vitest";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { MAX_DEPTH, MAX_TEXT_LENGTH, parseJson } from "../../../src/core/model/parse-json.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { LIMITS, MAX_COORDINATE_M } from "../../../src/core/model/limits.ts";
import { book, planOf, planting, rectangle, source, variety } from "../../support/paper-garden.ts";

/** An outline of so many corners on a circle. */
function manyCorners(count: number): readonly (readonly [number, number])[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (index / count) * 2 * Math.PI;
    return [Math.cos(angle) * 50, Math.sin(angle) * 50] as const;
  });
}

function nested(levels: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < levels; level += 1) value = [value];
  return value;
}

/** Without days, which plan files write as dates. */
const bare = planOf({}, [], []);
const polygon = (count: number) => ({ shape: "polygon" as const, corners: manyCorners(count) });
const withSource = (outline: Plan["surroundings"][number]["outline"]) =>
  planOf({ surroundings: [source("far", "Barn", outline, { what: "building" })] }, [], []);

const limits: readonly (readonly [string, number, (count: number) => unknown])[] = [
  ["characters of a name", LIMITS.name, (count) => ({ ...bare, title: "n".repeat(count) })],
  [
    "characters of a note",
    LIMITS.note,
    (count) =>
      planOf({ varieties: [variety("v", "V", "tomato", { note: "n".repeat(count) })] }, [], []),
  ],
  ["corners of an outline", LIMITS.corners, (count) => withSource(polygon(count))],
  [
    "metres from the middle",
    MAX_COORDINATE_M,
    (metres) => withSource({ shape: "point", x: metres, y: -metres }),
  ],
  ["metres long", MAX_COORDINATE_M, (metres) => withSource(rectangle(0, 0, 1, metres))],
  [
    "plantings in a layout",
    LIMITS.items,
    (count) =>
      planOf(
        { varieties: [variety("v", "V", "tomato")] },
        [],
        Array.from({ length: count }, (_, index) =>
          planting(
            `p${index}`,
            `P${index}`,
            "v",
            rectangle(index % 200, Math.floor(index / 200), 0.5, 0.5),
          ),
        ),
      ),
  ],
  // The plan itself is one level.
  ["levels of nesting", MAX_DEPTH, (levels) => ({ ...bare, own: nested(levels - 1) })],
];

test.each(limits)(
  "%s: %i opens, one more does not",
  (_, limit, make) => {
    expect(openPlanText(fileOf(make(limit)), "plan.json", book)).toMatchObject({ ok: true });
    const beyond = openPlanText(fileOf(make(limit + 1)), "plan.json", book);
    expect(beyond.ok).toBe(false);
    expect(!beyond.ok && beyond.problems[0]?.expected).toBeTruthy();
  },
  30_000,
);

/** Days as dates, as plan files have them; nothing is checked on the way. */
function fileOf(plan: unknown): string {
  const { season, ...rest } = JSON.parse(writePlan(bare)) as Record<string, unknown>;
  return JSON.stringify({ ...rest, ...(plan as object), season });
}

test("characters of a text: as many as are read are read, one more is refused unread", () => {
  const full = `[1]${" ".repeat(MAX_TEXT_LENGTH - 3)}`;
  expect(parseJson(full, "plan.json")).toEqual({ ok: true, value: [1] });
  expect(parseJson(`${full} `, "plan.json").ok).toBe(false);
});
