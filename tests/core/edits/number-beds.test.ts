import { describe, expect, test } from "vitest";
import type { Bed, Layout } from "../../../src/core/model/plan.ts";
import {
  type Numbering,
  numberBeds,
  renamingOf,
  suggestedNumbering,
} from "../../../src/core/edits/number-beds.ts";
import { LAYOUT, littlePlan, planting, rectangle } from "../../support/little-plan.ts";
import { walkNumber } from "../../support/walk-number.ts";

const ROWS = 3;
const COLUMNS = 4;

/** Three rows of four beds, turned about the origin as a whole, in no order. */
function grid(turnDeg: number): Layout {
  const angle = (turnDeg * Math.PI) / 180;
  const beds: Bed[] = [];
  for (let column = COLUMNS - 1; column >= 0; column -= 1) {
    for (let row = 0; row < ROWS; row += 1) {
      const [dx, dy] = [column * 2, row * 7];
      const x = dx * Math.cos(angle) + dy * Math.sin(angle);
      const y = -dx * Math.sin(angle) + dy * Math.cos(angle);
      const id = `${row}.${column}`;
      beds.push({ id, code: `old ${id}`, outline: rectangle(x, y, 1, 6, turnDeg) });
    }
  }
  return { id: LAYOUT, name: "Layout 1", beds, plantings: [] };
}

const numbering: Numbering = {
  beds: grid(0).beds.map(({ id }) => id),
  from: "near left",
  isThereAndBack: true,
  isLetterForRow: false,
  prefix: "B",
  start: 1,
};

describe("numbering beds", () => {
  test.each([0, 33])(
    "goes as the walking order does, from any corner, beds turned by %d degrees",
    (turnDeg) => {
      for (const from of ["near left", "near right", "far left", "far right"] as const) {
        for (const isThereAndBack of [true, false]) {
          const { beds } = renamingOf(grid(turnDeg), { ...numbering, from, isThereAndBack });
          const walk = { from, first: "across", isSerpentine: isThereAndBack } as const;
          for (const { id, to } of beds) {
            const [row, column] = id.split(".").map(Number);
            const number = walkNumber(walk, row ?? 0, column ?? 0, ROWS, COLUMNS);
            expect(to).toBe(`B${String(number).padStart(2, "0")}`);
          }
        }
      }
    },
  );

  test("a letter for each row leaves out those taken for digits", () => {
    const { beds } = renamingOf(grid(0), { ...numbering, isLetterForRow: true, prefix: "H" });
    expect(beds.map(({ to }) => to)).toEqual(
      ["H", "J", "K"].flatMap((letter) => ["01", "02", "03", "04"].map((n) => `${letter}${n}`)),
    );
  });
});

describe("codes that stand on stakes", () => {
  const two = (code: string, more: Partial<Layout> = {}): Layout => ({
    id: LAYOUT,
    name: "Layout 1",
    beds: [
      { id: "b1", code: "A07", outline: rectangle(0, 0, 1, 6) },
      { id: "b2", code: "A02", outline: rectangle(3, 0, 1, 6) },
    ],
    plantings: [
      planting("p1", "A07-2", rectangle(0, 0, 1, 1), "b1"),
      planting("p2", code, rectangle(0, 2, 1, 1), "b1"),
    ],
    ...more,
  });
  const both = { ...numbering, beds: ["b1", "b2"] };

  test("of plantings follow their bed where they were made from it; others stay", () => {
    expect(renamingOf(two("Grandmother"), both)).toEqual({
      beds: [
        { id: "b1", from: "A07", to: "B01" },
        { id: "b2", from: "A02", to: "B02" },
      ],
      plantings: [{ id: "p1", from: "A07-2", to: "B01-2" }],
      taken: [],
    });
  });

  test("two beds may swap their codes", () => {
    const edit = numberBeds(LAYOUT, { ...both, prefix: "A", start: 2 }, "Number");
    const next = edit.apply({ ...littlePlan, layouts: [two("X")] });
    expect(next.layouts[0]?.beds.map(({ code }) => code)).toEqual(["A02", "A03"]);
  });

  test("a code that something else keeps is refused and changes nothing", () => {
    const layout = two("B02");
    expect(renamingOf(layout, both).taken).toEqual(["B02"]);
    const plan = { ...littlePlan, layouts: [layout] };
    expect(numberBeds(LAYOUT, both, "Number").apply(plan)).toBe(plan);
  });

  test("numbering what is numbered so already changes nothing", () => {
    const once = numberBeds(LAYOUT, both, "Number").apply({ ...littlePlan, layouts: [two("X")] });
    expect(numberBeds(LAYOUT, both, "Number").apply(once)).toBe(once);
  });
});

test("what is suggested leaves codes as they are where some walk gives them", () => {
  const scheme = { ...numbering, from: "far right", isLetterForRow: true, prefix: "C" } as const;
  const plan = { ...littlePlan, layouts: [grid(20)] };
  const [coded] = numberBeds(LAYOUT, scheme, "Number").apply(plan).layouts;
  if (!coded) throw new Error("no layout");
  const { beds } = renamingOf(coded, suggestedNumbering(coded, numbering.beds));
  expect(beds.filter(({ from, to }) => from !== to)).toEqual([]);
});

test("there and back is suggested where no walk gives the codes", () => {
  expect(suggestedNumbering(grid(0), numbering.beds)).toMatchObject({ isThereAndBack: true });
});
