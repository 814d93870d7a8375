/** What a planting may state about its distance, as the particulars offer it. */
import { describe, expect, test } from "vitest";
import {
  adjustmentChoices,
  strayAdjustments,
  withAdjustment,
} from "../../../src/panel/particulars/adjustment-choices.ts";
import { fieldAreaText, readFieldArea } from "../../../src/panel/particulars/field-area.ts";

/** A distance that rests on 7 CFR 201.76. */
const CFR = { source: "cfr-201-76" };

describe("choices", () => {
  test("only for kinds they are printed for, with the condition in words", () => {
    expect(adjustmentChoices("lettuce", [], CFR)).toEqual([]);
    expect(adjustmentChoices("watermelon", [], CFR)).toEqual([
      {
        id: "watermelon-barriers",
        condition: "natural or artificial barriers protect the field well",
        effect: "half the distance; 7 CFR 201.76 Table 5, footnote 26",
        asks: [],
        stated: null,
        whyIdle: null,
      },
    ]);
  });

  test("those with numbers show what the numbers come to", () => {
    const effect = (borderRows: number) =>
      adjustmentChoices("sweet-corn", [{ id: "sweet-corn-field", borderRows }], CFR)[0]?.effect;
    expect(effect(8)).toContain("at most 500 ft (152.4 m)");
    expect(effect(2)).toContain("changes nothing while its condition is not met");
    expect(adjustmentChoices("sweet-corn", [], CFR)[0]?.effect).toContain(
      "by the number of border rows",
    );
  });
});

describe("what does not act on the figure in force says so", () => {
  const idle = (kindId: string, source: string | null) =>
    adjustmentChoices(kindId, [], { source }).map(({ whyIdle }) => whyIdle);

  test("what one regulation shortens, another source's figure does not", () => {
    expect(idle("watermelon", "icar-ecourse")[0]).toContain(
      "the distance in force is from another source (",
    );
    expect(idle("watermelon", "cfr-201-76")).toEqual([null]);
    expect(idle("watermelon", "own")[0]).toContain("the distance in force is your own");
  });

  test("border rows too, before their number is stated, and Washington's table beside its figure", () => {
    expect(idle("sweet-corn", "cfr-201-76")).toContain(null);
    expect(idle("sweet-corn", "seed-corn-book").every((why) => why !== null)).toBe(true);
    const washington = (source: string) =>
      adjustmentChoices("maize", [], { source }).find(({ effect }) => effect.includes("WAC"));
    expect(washington("wac-16-302-290")?.whyIdle).toBeNull();
    expect(washington("cfr-201-76")?.whyIdle).toContain("its own regulation");
  });

  test("nothing acts where no figure is known", () => {
    expect(adjustmentChoices("watermelon", [], null)[0]?.whyIdle).toContain("no distance is known");
  });
});

test("the record: put in, changed in place, taken out", () => {
  const rows = { id: "a", borderRows: 2 };
  expect(withAdjustment([], "a", { id: "a" })).toEqual([{ id: "a" }]);
  expect(withAdjustment([{ id: "a" }, { id: "b" }], "a", rows)).toEqual([rows, { id: "b" }]);
  expect(withAdjustment([rows, { id: "b" }], "a", null)).toEqual([{ id: "b" }]);
  expect(withAdjustment([rows], "a", null)).toBeUndefined();
});

test("what is recorded for another kind is shown as such", () => {
  const stated = [{ id: "watermelon-barriers" }, { id: "maize-same-colour" }];
  expect(strayAdjustments("maize", stated)).toEqual([{ id: "watermelon-barriers" }]);
});

describe("the size of a field", () => {
  test.each([
    ["2 ha", "m", 2],
    ["0,5 ha", "m", 0.5],
    ["3", "m", 3],
    ["10", "ft", 4.0468564224],
    ["4 acres", "m", 1.61874256896],
    ["1 ac", "ft", 0.40468564224],
  ] as const)("%j in a plan of %s is %d ha", (text, unit, hectares) => {
    const read = readFieldArea(text, unit);
    expect(read.ok && read.hectares).toBeCloseTo(hectares, 12);
  });

  test.each(["", "0", "-2", "large", "2 m", "200000 ha"])("%j is none", (text) => {
    expect(readFieldArea(text, "m").ok).toBe(false);
  });

  test("is shown in the unit of the plan", () => {
    expect(fieldAreaText(1.61874256896, "m")).toBe("1.62 ha");
    expect(fieldAreaText(1.61874256896, "ft")).toBe("4 acres");
  });
});
