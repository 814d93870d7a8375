import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { ARRAY_MOST, arrayObjects, duplicateObjects } from "../../../src/core/edits/array.ts";
import {
  type BedRows,
  anchorOf,
  bedsInRows,
  blockBeside,
  codesInWords,
  middleOf,
} from "../../../src/core/edits/bed-rows.ts";
import {
  type Clip,
  clipText,
  pasteObjects,
  pasteShift,
  readClip,
} from "../../../src/core/edits/clipboard.ts";
import { codeAfter, nextBlockCode } from "../../../src/core/beds/code-series.ts";
import { lockedCount, setLocked, unlockAll } from "../../../src/core/edits/lock.ts";
import { removeObjects } from "../../../src/core/edits/object-edits.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import { LIMITS } from "../../../src/core/model/limits.ts";
import { LAYOUT, littlePlan } from "../../support/little-plan.ts";

const book = cropBook();
const isKnown = (kind: string) => book.kind(kind) !== undefined;
const layoutOf = (plan: Plan): Layout => plan.layouts[0] as Layout;
const codes = (plan: Plan) => [
  ...layoutOf(plan).beds.map(({ code }) => code),
  ...layoutOf(plan).plantings.map(({ code }) => code),
];

/** The plan file's own reader holds ids, codes and references to account. */
function isSound(plan: Plan): void {
  const read = readPlan(writePlan(plan), "copied.json", isKnown);
  expect(read.ok ? [] : read.problems).toEqual([]);
}

function clipOf(text: string | null): Clip {
  const clip = readClip(text ?? "", isKnown);
  if (!clip.ok) throw new Error(clip.reason);
  return clip.clip;
}

const ROWS: BedRows = {
  count: 3,
  rows: 2,
  widthM: 1.2,
  lengthM: 8,
  pathM: 0.5,
  rowPathM: 1,
  turnDeg: 0,
  x: 20,
  y: 0,
  direction: "right",
  firstCode: "C01",
  scheme: "rows",
  isThereAndBack: true,
};

describe("series of codes", () => {
  test("go on from a code and pass over those taken", () => {
    expect(codeAfter("B07", new Set(["B08"]))).toBe("B09");
    expect(codeAfter("B99", new Set())).toBe("B100");
    expect(codeAfter("Glasshouse", new Set())).toBe("Glasshouse-2");
  });
  test("count numbers of any length, and stay within the length of a code", () => {
    const long = "12345678901234567890";
    const next = codeAfter(long, new Set([long]));
    expect(next).toBe("12345678901234567891");
    expect(codeAfter(long, new Set([long, next]))).toBe("12345678901234567892");
    expect(codeAfter("B0000000000000000000007", new Set())).toBe("B0000000000000000000008");
    const nines = "9".repeat(LIMITS.name);
    for (const full of [nines, "x".repeat(LIMITS.name), `${"x".repeat(LIMITS.name - 1)}9`]) {
      const taken = new Set([full]);
      for (let copy = 0; copy < 12; copy += 1) taken.add(codeAfter(full, taken));
      expect(taken.size).toBe(13);
      expect([...taken].every((code) => code.length <= LIMITS.name)).toBe(true);
    }
  });

  test.each(["12345678901234567890", "9".repeat(LIMITS.name), "x".repeat(LIMITS.name)])(
    "copies of a bed called %s end, with codes of their own and a plan that opens again",
    (code) => {
      const [bed, ...beds] = layoutOf(littlePlan).beds;
      const [planting, ...plantings] = layoutOf(littlePlan).plantings;
      if (!bed || !planting) throw new Error("no bed");
      const id = "12345678901234567890";
      let plan: Plan = {
        ...littlePlan,
        layouts: [
          {
            ...layoutOf(littlePlan),
            beds: [bed, { ...bed, id: `bed-${id}`, code }, ...beds],
            plantings: [{ ...planting, id: `p${id}`, code, bed: `bed-${id}` }, ...plantings],
          },
        ],
      };
      for (let time = 0; time < 3; time += 1) {
        plan = duplicateObjects(LAYOUT, [`bed-${id}`, `p${id}`], "Duplicate").apply(plan);
        const all = codes(plan);
        // The bed and the planting in it began with one code.
        expect(new Set(all).size).toBe(all.length - 1);
        isSound(plan);
      }
      const made = bedsInRows(plan, layoutOf(plan), { ...ROWS, firstCode: code });
      const layout = { ...layoutOf(plan), beds: [...layoutOf(plan).beds, ...made] };
      isSound({ ...plan, layouts: [layout] });
    },
  );

  test("take the next letter for the next block", () => {
    expect(nextBlockCode("A03")).toBe("B01");
    expect(nextBlockCode("Z1")).toBe("AA1");
    expect(nextBlockCode("North-C12")).toBe("North-D01");
    expect(nextBlockCode("7")).toBe("B1");
  });
});

describe("copies", () => {
  test("a bed in rows and columns brings its plantings, all under codes of their own", () => {
    const shape = { columns: 3, rows: 2, gapAcrossM: 0.5, gapAlongM: 1 };
    const next = arrayObjects(LAYOUT, ["b1"], shape, "Copy").apply(littlePlan);
    const { beds, plantings } = layoutOf(next);
    expect(beds).toHaveLength(layoutOf(littlePlan).beds.length + 5);
    expect(new Set(codes(next)).size).toBe(codes(next).length);
    const copied = beds.slice(-5);
    for (const bed of copied) {
      const own = plantings.filter((planting) => planting.bed === bed.id);
      expect(own.map(({ code }) => code)).toEqual([`${bed.code}-1`, `${bed.code}-2`]);
    }
    isSound(next);
  });

  test("gaps are from edge to edge", () => {
    const shape = { columns: 2, rows: 1, gapAcrossM: 0.5, gapAlongM: 0 };
    const before = layoutOf(littlePlan).beds[0]?.outline;
    const next = arrayObjects(LAYOUT, ["b1"], shape, "Copy").apply(littlePlan);
    const after = layoutOf(next).beds.at(-1)?.outline;
    if (before?.shape !== "rectangle" || after?.shape !== "rectangle") throw new Error("beds");
    expect(after.x - before.x).toBeCloseTo(before.widthM + 0.5, 9);
  });

  test("too many at once change nothing", () => {
    const shape = { columns: ARRAY_MOST, rows: 10, gapAcrossM: 0, gapAlongM: 0 };
    expect(arrayObjects(LAYOUT, ["b1"], shape, "Copy").apply(littlePlan)).toBe(littlePlan);
  });

  test("a planting's duplicate lies on free ground of its bed", () => {
    const [planting] = layoutOf(littlePlan).plantings;
    const next = duplicateObjects(LAYOUT, [planting?.id ?? ""], "Duplicate").apply(littlePlan);
    const copy = layoutOf(next).plantings.at(-1);
    expect(copy).toMatchObject({ bed: planting?.bed, variety: planting?.variety });
    expect(copy?.code).not.toBe(planting?.code);
    isSound(next);
  });

  test("a copy of what is locked is free", () => {
    const locked = setLocked(LAYOUT, ["b1"], true, "Lock").apply(littlePlan);
    expect(lockedCount(locked, LAYOUT)).toBe(1);
    const next = duplicateObjects(LAYOUT, ["b1"], "Duplicate").apply(locked);
    expect(layoutOf(next).beds.at(-1)?.locked).toBeUndefined();
    expect(lockedCount(unlockAll(LAYOUT).apply(next), LAYOUT)).toBe(0);
  });

  test("locking what is locked changes nothing", () => {
    const locked = setLocked(LAYOUT, ["b1", "s1"], true, "Lock").apply(littlePlan);
    expect(setLocked(LAYOUT, ["b1", "s1"], true, "Lock").apply(locked)).toBe(locked);
  });
});

describe("rows of beds", () => {
  const beds = bedsInRows(littlePlan, layoutOf(littlePlan), ROWS);

  test("have a letter for each row and are walked there and back", () => {
    expect(beds.map(({ code }) => code)).toEqual(["C01", "C02", "C03", "D01", "D02", "D03"]);
    const places = beds.map(({ outline }) => (outline.shape === "rectangle" ? outline.x : 0));
    const expected = [20, 21.7, 23.4, 23.4, 21.7, 20];
    places.forEach((x, index) => expect(x).toBeCloseTo(expected[index] ?? 0, 9));
    expect(beds[3]?.outline).toMatchObject({ y: 9 });
  });
  test("or one series through all, past codes that are taken", () => {
    const series = bedsInRows(littlePlan, layoutOf(littlePlan), {
      ...ROWS,
      scheme: "series",
      firstCode: "A01",
    });
    expect(series.map(({ code }) => code)).toEqual(["A03", "A04", "A05", "A06", "A07", "A08"]);
    expect(new Set(series.map(({ id }) => id)).size).toBe(6);
    expect(codesInWords(series.map(({ code }) => code))).toBe("A03, A04 ... A08");
  });
});

describe("the clipboard", () => {
  const layout = layoutOf(littlePlan);
  const text = clipText(littlePlan, layout, ["b1", "s1"]);

  test("holds a bed with what stands in it, and pastes it under new ids and codes", () => {
    const clip = clipOf(text);
    expect(clip.group.plantings).toHaveLength(2);
    const shift = pasteShift(littlePlan, layout, clip);
    expect(shift).not.toEqual({ x: 0, y: 0 });
    const next = pasteObjects(LAYOUT, clip, shift, "Paste").apply(littlePlan);
    expect(layoutOf(next).beds).toHaveLength(layout.beds.length + 1);
    expect(next.varieties).toBe(littlePlan.varieties);
    isSound(next);
  });

  test("comes back to the very place it was cut from", () => {
    const cut = removeObjects(LAYOUT, ["b1"], "Cut").apply(littlePlan);
    const clip = clipOf(clipText(littlePlan, layout, ["b1"]));
    expect(pasteShift(cut, layoutOf(cut), clip)).toEqual({ x: 0, y: 0 });
    const next = pasteObjects(LAYOUT, clip, { x: 0, y: 0 }, "Paste").apply(cut);
    expect(new Set(codes(next))).toEqual(new Set(codes(littlePlan)));
  });

  test("in another plan matches varieties by kind and name, adds the rest", () => {
    const clip = clipOf(text);
    const other: Plan = {
      ...littlePlan,
      id: "other",
      varieties: [{ id: "x7", name: "old ferry ", kind: "tomato" }],
      surroundings: [],
      layouts: [{ id: LAYOUT, name: "One", beds: [], plantings: [] }],
    };
    const next = pasteObjects(LAYOUT, clip, { x: 0, y: 0 }, "Paste").apply(other);
    expect(next.varieties).toEqual(other.varieties);
    expect(layoutOf(next).plantings.map(({ variety }) => variety)).toEqual(["x7", "x7"]);
    isSound(next);
    const bare = { ...other, varieties: [] };
    const added = pasteObjects(LAYOUT, clip, { x: 0, y: 0 }, "Paste").apply(bare);
    expect(added.varieties.map(({ name }) => name)).toEqual(["Old Ferry"]);
    isSound(added);
  });

  test.each([
    ["", "no text"],
    ["12 m of fence", "not copied from a plan"],
    ['{"format":"wideberth-objects","version":2,"plan":{}}', "newer"],
    ['{"format":"wideberth-objects","version":1,"plan":', "not whole"],
    ['{"format":"wideberth-objects","version":1,"plan":{"format":"x"}}', "format"],
    ['"wideberth-objects"', "not copied from a plan"],
    [`{"format":"wideberth-objects",${" ".repeat(8_000_001)}}`, "too much"],
  ])("refuses what is not sound: %.40s", (pasted, reason) => {
    const result = readClip(pasted, isKnown);
    expect(result.ok ? "" : result.reason).toContain(reason);
  });

  test("never takes a forbidden name into the plan", () => {
    const bad = (text ?? "").replace('"id"', '"__proto__": {"locked": true}, "id"');
    expect(readClip(bad, isKnown).ok).toBe(false);
  });
});

describe("rows of beds", () => {
  const across = (rows: BedRows) =>
    bedsInRows(littlePlan, layoutOf(littlePlan), rows).map(({ outline }) =>
      outline.shape === "rectangle" ? Math.round(outline.x * 100) / 100 : NaN,
    );
  const ONE: BedRows = { ...ROWS, rows: 1, x: 0, y: 0 };

  test("lie in blocks with a wider path between them", () => {
    const rows = { ...ONE, count: 5, blockOf: 2, blockPathM: 1.5 };
    expect(across(rows)).toEqual([0, 1.7, 4.4, 6.1, 8.8]);
    expect(across({ ...rows, direction: "left" })).toEqual([0, -1.7, -4.4, -6.1, -8.8]);
  });

  test("the next block lies beside the last bed, whichever way they go", () => {
    expect(blockBeside({ ...ONE, count: 3 })).toEqual({ x: 5.6, y: 0 });
    expect(blockBeside({ ...ONE, count: 3, direction: "left" })).toEqual({ x: -5.6, y: 0 });
    expect(blockBeside({ ...ONE, count: 1, direction: "left" })).toEqual({ x: -2.2, y: 0 });
    expect(blockBeside({ ...ONE, count: 3, rows: 2, direction: "far" })).toEqual({ x: 4.4, y: 0 });
  });

  test("a place is that of the near left corner or of the middle, turned beds as well", () => {
    const bed = { x: 10, y: 5, widthM: 1.2, lengthM: 8, turnDeg: 0 };
    expect(middleOf(bed, "corner")).toEqual({ x: 10.6, y: 9 });
    expect(middleOf(bed, "middle")).toEqual({ x: 10, y: 5 });
    // Its length running right, its left side is the upper one.
    expect(middleOf({ ...bed, turnDeg: 90 }, "corner")).toEqual({ x: 14, y: 4.4 });
    const there = anchorOf({ ...bed, turnDeg: 33 }, "corner");
    expect(middleOf({ ...bed, ...there, turnDeg: 33 }, "corner").x).toBeCloseTo(10, 5);
  });
});
