/** Lists that name kinds beside the crop base. */
import { expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { growthKinds, growthOf } from "../../../src/core/kinds/growth.ts";
import { heatKinds } from "../../../src/core/kinds/heat-figures.ts";

const book = cropBook();

test("every kind named as tender or open-ended is in the crop base", () => {
  const missing = growthKinds.filter((id) => id !== "tomatillo" && !book.kind(id));
  expect(missing).toEqual([]);
});

/**
 * The other side of both lists: what frost does not kill, and what ends by itself. A new kind must
 * be put on one side of each by whoever adds it. Common practice.
 */
const HARDY = `
  broad-bean pea chickpea fenugreek sweet-pea cabbage kale broccoli cauliflower brussels-sprouts
  kohlrabi collards chinese-kale turnip chinese-cabbage pak-choi mizuna broccoli-raab mustard-spinach
  wild-turnip mustard black-mustard rutabaga siberian-kale oilseed-rape white-mustard radish
  wild-radish winter-radish sprouting-broccoli rocket lettuce prickly-lettuce jerusalem-artichoke chicory endive artichoke
  cardoon safflower calendula beet chard sugar-beet fodder-beet sea-beet spinach quinoa
  lambsquarters pitseed-goosefoot orach carrot wild-carrot parsnip wild-parsnip celery celeriac
  parsley coriander dill fennel caraway onion bunching-onion leek elephant-garlic chives
  johnsongrass wheat barley oat rye flax asparagus corn-salad
`;
/** Bloom that ends although nothing cuts it. */
const ENDING = `
  broad-bean pea soybean fenugreek cabbage kale broccoli cauliflower brussels-sprouts kohlrabi
  collards chinese-kale turnip chinese-cabbage pak-choi mizuna broccoli-raab mustard-spinach wild-turnip
  mustard black-mustard rutabaga siberian-kale oilseed-rape white-mustard radish
  winter-radish sprouting-broccoli wild-radish rocket lettuce prickly-lettuce sunflower jerusalem-artichoke chicory endive artichoke cardoon
  safflower beet chard sugar-beet fodder-beet sea-beet spinach grain-amaranth blood-amaranth
  leaf-amaranth pigweed quinoa lambsquarters pitseed-goosefoot orach carrot wild-carrot parsnip
  wild-parsnip celery celeriac parsley coriander dill caraway onion bunching-onion leek
  elephant-garlic chives maize sweet-corn popcorn sorghum broomcorn johnsongrass wheat barley
  oat rye rice proso-millet foxtail-millet pearl-millet flax asparagus corn-salad
`;

test("every kind is named as tender or hardy, and as open-ended or ending", () => {
  const ids = (words: string) => words.trim().split(/\s+/).sort();
  const found = (isOne: (kind: { readonly id: string }) => boolean) =>
    book.kinds
      .filter(isOne)
      .map(({ id }) => id)
      .sort();
  expect(found((kind) => !growthOf(kind).isTender)).toEqual(ids(HARDY));
  expect(found((kind) => !growthOf(kind).isOpenEnded)).toEqual(ids(ENDING));
});

test("heat is known for some twenty kinds", () => {
  expect(heatKinds.filter((id) => !book.kind(id))).toEqual([]);
  const known = book.kinds.filter(({ timing }) => timing.heatToFlower ?? timing.heatToSeed);
  expect(known.length).toBeGreaterThanOrEqual(20);
});

/**
 * C-days as printed by the two open crop-model tables, middle of the range shipped: FAO defaults
 * of the water productivity model (crop_params of an open copy, October 2025) and the open crop
 * parameters of WOFOST (June 2025).
 */
test.each([
  ["barley", "heatToFlower", 0, 867, 867],
  ["common-bean", "heatToFlower", 9, 556, 556],
  ["sorghum", "heatToFlower", 8, 1041, 1041],
  ["soybean", "heatToFlower", 5, 1500, 1500],
  ["wheat", "heatToFlower", 0, 1250, 1250],
  ["barley", "heatOfBloom", 0, 160, 160],
  ["common-bean", "heatOfBloom", 9, 233, 233],
  ["soybean", "heatOfBloom", 5, 600, 600],
  ["wheat", "heatOfBloom", 0, 200, 200],
  ["barley", "heatToSeed", 0, 429, 750],
  ["common-bean", "heatToSeed", 9, 742, 742],
  ["maize", "heatToSeed", 8, 820, 820],
  ["sorghum", "heatToSeed", 8, 719, 719],
  ["soybean", "heatToSeed", 5, 1200, 1200],
  ["sunflower", "heatToSeed", 4, 1134, 1134],
  ["tomato", "heatToSeed", 7, 1408, 1408],
  ["wheat", "heatToSeed", 0, 1150, 1150],
  ["chickpea", "heatToSeed", 7, 714, 714],
  ["cowpea", "heatToSeed", 8, 630, 630],
  ["broad-bean", "heatToSeed", 0, 1351, 1351],
  ["peanut", "heatToSeed", 10, 952, 952],
  ["pearl-millet", "heatToSeed", 10, 483, 483],
  ["mung-bean", "heatToSeed", 10, 753, 753],
  ["oilseed-rape", "heatToSeed", 4, 600, 1150],
  ["tobacco", "heatToSeed", 0, 1948, 1948],
] as const)("%s %s: base %d, %d to %d C-days as printed", (id, which, base, least, most) => {
  const figure = book.kind(id)?.timing[which];
  expect(figure?.value.baseC).toBe(base);
  expect(figure?.value.cDays).toEqual([Math.round(least * 0.8), Math.round(most * 1.25)]);
  expect(figure?.fewVarieties).toBe(true);
});
