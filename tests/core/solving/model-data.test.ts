/** Models as the solver takes them, with answers worked out by hand. */
import loadHighs from "highs";
import { expect, test } from "vitest";
import { modelData } from "../../../src/core/solving/model-data.ts";

const highs = await loadHighs();

/** The columns of the cheapest answer. */
function solved(model: ReturnType<typeof modelData>): readonly number[] {
  return highs.withModel(model, (made) => {
    made.options.set({ output_flag: false });
    made.run();
    return [...made.getSolution().colValue];
  });
}

test("at least one and a half of two, whole ones dearer than parts", () => {
  const whole = { cost: 2, most: 1, isWhole: true };
  const part = { cost: 3, most: 1, isWhole: false };
  const sum = [
    [0, 1],
    [1, 1],
  ] as const;
  // The whole one is cheaper and full; the half that is missing is taken of the other.
  expect(solved(modelData([whole, part], [{ terms: sum, lower: 1.5, upper: Infinity }]))).toEqual([
    1, 0.5,
  ]);
});

test("a column named twice in a row counts for both", () => {
  const column = { cost: 1, most: 5, isWhole: false };
  const twice = [
    [0, 1],
    [0, 1],
  ] as const;
  const model = modelData([column], [{ terms: twice, lower: 6, upper: Infinity }]);
  expect(model.matrix.indices).toEqual(Int32Array.of(0));
  expect(solved(model)).toEqual([3]);
});
