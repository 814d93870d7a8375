/** The rows of 7 CFR 201.58 Table 2 and 201.36c; what they mean is in test-conditions.ts. */
import type { TestConditions } from "./test-row.ts";

type Extras = Pick<
  TestConditions,
  "otherTemperature" | "canBeHard" | "needs" | "fresh" | "sealedMoisturePct"
>;

type Row = readonly [readonly string[], TestConditions];

function row(
  kinds: readonly string[],
  name: string,
  substrata: string,
  temperature: string,
  firstDays: number | null,
  lastDays: number,
  extras: Extras,
): Row {
  return [kinds, { row: name, substrata, temperature, firstDays, lastDays, ...extras }];
}

export const testRows: readonly Row[] = [
  row(["artichoke"], "Artichoke", "B,T", "20-30", 7, 21, { sealedMoisturePct: 6.0 }),
  row(["asparagus"], "Asparagus", "B,T,S", "20-30", 7, 21, { sealedMoisturePct: 6.0 }),
  row(["yardlong-bean"], "Asparagusbean (yard-long bean)", "B,T,S", "20-30", 5, 8, {
    canBeHard: true,
    sealedMoisturePct: 6.0,
  }),
  row(["common-bean"], "Bean, garden", "B,T,S,TC", "20-30", null, 8, {
    otherTemperature: "25",
    canBeHard: true,
    needs: "if hypocotyl collar rot shows, retest with 0.3-0.6 % calcium nitrate",
    sealedMoisturePct: 7.0,
  }),
  row(["lima-bean"], "Bean, lima", "B,T,C,S", "20-30", 5, 9, {
    canBeHard: true,
    sealedMoisturePct: 7.0,
  }),
  row(["runner-bean"], "Bean, runner", "B,T,S", "20-30", 5, 9, {
    canBeHard: true,
    sealedMoisturePct: 6.0,
  }),
  row(["beet"], "Beet", "B,T,S", "20-30", 3, 14, {
    needs: "soak 2 h (at least 250 ml per 100 seeds, water not below 20 C), wash, blot",
    fresh: "if roots discolour, retest in soil or wash 3 h",
    sealedMoisturePct: 7.5,
  }),
  row(["broad-bean"], "Broadbean", "S,C", "20", 4, 14, {
    canBeHard: true,
    needs: "18 C desirable",
    fresh: "prechill 10 C 3 days",
    sealedMoisturePct: 6.0,
  }),
  row(["broccoli"], "Broccoli", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["brussels-sprouts"], "Brussels sprouts", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["cabbage"], "Cabbage", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["chinese-cabbage"], "Cabbage, Chinese", "B,T", "20-30", 3, 7, { sealedMoisturePct: 5.0 }),
  row(["cardoon"], "Cardoon", "B,T", "20-30", 7, 21, { sealedMoisturePct: 6.0 }),
  row(["carrot"], "Carrot", "B,T", "20-30", 6, 14, { sealedMoisturePct: 7.0 }),
  row(["cauliflower"], "Cauliflower", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["celeriac"], "Celeriac", "P", "15-25", 10, 21, {
    otherTemperature: "20",
    needs: "light",
    sealedMoisturePct: 7.0,
  }),
  row(["celery"], "Celery", "P", "15-25", 10, 21, {
    otherTemperature: "20",
    needs: "light",
    sealedMoisturePct: 7.0,
  }),
  row(["chard"], "Chard, Swiss", "B,T,S", "20-30", 3, 14, {
    needs: "soak as beet",
    fresh: "as beet",
    sealedMoisturePct: 7.5,
  }),
  row(["chicory"], "Chicory", "P,TS", "20-30", 5, 14, {
    needs: "light; KNO3 or soil",
    sealedMoisturePct: 6.0,
  }),
  row(["chives"], "Chives", "B,T", "20", 6, 14, { sealedMoisturePct: 6.5 }),
  row(["citron-melon"], "Citron", "B,T", "20-30", 7, 14, {
    needs: "soak 6 h",
    fresh: "test at 30 C",
    sealedMoisturePct: 6.0,
  }),
  row(["collards"], "Collards", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["sweet-corn"], "Corn, sweet", "B,T,S,TC", "20-30", 4, 7, {
    otherTemperature: "25",
    sealedMoisturePct: 8.0,
  }),
  row(["corn-salad"], "Cornsalad (all other vars.)", "B,T", "15", 7, 28, {
    fresh: "test at 10 C",
    sealedMoisturePct: 6.0,
  }),
  row(["cowpea"], "Cowpea", "B,T,S", "20-30", 5, 8, { canBeHard: true, sealedMoisturePct: 6.0 }),
  row(["cucumber"], "Cucumber", "B,T,S", "20-30", 3, 7, {
    needs: "keep substratum on the dry side",
    sealedMoisturePct: 6.0,
  }),
  row(["dill"], "Dill", "B,T", "20-30", 7, 21, { sealedMoisturePct: 6.0 }),
  row(["eggplant"], "Eggplant", "P,TB,RB,T", "20-30", 7, 14, {
    needs: "light; KNO3",
    sealedMoisturePct: 6.0,
  }),
  row(["endive"], "Endive", "P,TS", "20-30", 5, 14, {
    needs: "light; KNO3 or soil",
    fresh: "about 1/8 in water for the first 24 h",
    sealedMoisturePct: 6.0,
  }),
  row(["kale"], "Kale", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["chinese-kale"], "Kale, Chinese", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 6.0,
  }),
  row(["siberian-kale"], "Kale, Siberian", "B,P,T", "20-30", 3, 7, {
    otherTemperature: "20",
    sealedMoisturePct: 6.0,
  }),
  row(["kohlrabi"], "Kohlrabi", "B,P,T", "20-30", 3, 10, {
    fresh: "prechill 5 or 10 C 3 days; KNO3 and light",
    sealedMoisturePct: 5.0,
  }),
  row(["leek"], "Leek", "B,T", "20", 6, 14, { sealedMoisturePct: 6.5 }),
  row(["lettuce"], "Lettuce", "P", "20", null, 7, {
    needs: "light",
    fresh: "prechill 10 C 3 days or test at 15 C",
    sealedMoisturePct: 5.5,
  }),
  row(["melon"], "Melon", "B,T,S", "20-30", 4, 10, {
    needs: "keep substratum on the dry side",
    sealedMoisturePct: 6.0,
  }),
  row(["mustard"], "Mustard, India", "P", "20-30", 3, 7, {
    needs: "light",
    fresh: "prechill 10 C 7 days and test 5 more days; KNO3",
    sealedMoisturePct: 5.0,
  }),
  row(["mustard-spinach"], "Mustard, spinach", "B,T", "20-30", 3, 7, { sealedMoisturePct: 6.0 }),
  row(["okra"], "Okra", "B,T", "20-30", 4, 14, { canBeHard: true, sealedMoisturePct: 6.0 }),
  row(["onion"], "Onion", "B,T", "20", 6, 10, {
    needs: "alternate method: sand, 20 C, 6 and 12 days",
    sealedMoisturePct: 6.5,
  }),
  row(["bunching-onion"], "Onion, Welsh", "B,T", "20", 6, 10, { sealedMoisturePct: 6.5 }),
  row(["pak-choi"], "Pak-choi", "B,T", "20-30", 3, 7, { sealedMoisturePct: 6.0 }),
  row(["parsley"], "Parsley", "B,T,TS", "20-30", 11, 28, { sealedMoisturePct: 6.5 }),
  row(["parsnip"], "Parsnip", "B,T,TS", "20-30", 6, 28, { sealedMoisturePct: 6.0 }),
  row(["pea"], "Pea", "B,T,S", "20", 5, 8, { canBeHard: true, sealedMoisturePct: 7.0 }),
  row(
    ["pepper", "hot-pepper", "habanero", "bird-pepper", "aji", "rocoto"],
    "Pepper",
    "TB,RB,T",
    "20-30",
    6,
    14,
    { fresh: "light and KNO3", sealedMoisturePct: 4.5 },
  ),
  row(["pumpkin"], "Pumpkin", "B,T,S", "20-30", 4, 7, {
    needs: "keep substratum on the dry side",
    sealedMoisturePct: 6.0,
  }),
  row(["radish"], "Radish", "B,T", "20", 4, 6, { sealedMoisturePct: 5.0 }),
  row(["rutabaga"], "Rutabaga", "B,T", "20-30", 3, 14, { sealedMoisturePct: 5.0 }),
  row(["soybean"], "Soybean", "B,T,S,TC", "20-30", 5, 8, {
    otherTemperature: "25",
    canBeHard: true,
    sealedMoisturePct: 6.0,
  }),
  row(["spinach"], "Spinach", "TB,T", "15", 7, 21, {
    otherTemperature: "10",
    needs: "keep substratum on the dry side",
    sealedMoisturePct: 8.0,
  }),
  row(["summer-squash", "winter-squash", "butternut", "cushaw"], "Squash", "B,T,S", "20-30", 4, 7, {
    needs: "keep substratum on the dry side",
    sealedMoisturePct: 6.0,
  }),
  row(["tomato"], "Tomato", "B,P,RB,T", "20-30", 5, 14, {
    fresh: "light; KNO3",
    sealedMoisturePct: 5.5,
  }),
  row(["husk-tomato"], "Tomato, husk", "P,TB", "20-30", 7, 28, {
    needs: "light; KNO3",
    sealedMoisturePct: 6.0,
  }),
  row(["turnip"], "Turnip", "B,T", "20-30", 3, 7, { sealedMoisturePct: 5.0 }),
  row(["watermelon"], "Watermelon", "B,T,S", "20-30", 4, 14, {
    otherTemperature: "25",
    needs: "keep substratum on the dry side",
    fresh: "test at 30 C",
    sealedMoisturePct: 6.5,
  }),
  row(["barley"], "Barley", "B,T,S", "20", 4, 7, {
    otherTemperature: "15",
    fresh: "prechill 5 days at 5 or 10 C, or predry",
  }),
  row(["mung-bean"], "Bean, mung", "B,T,S", "20-30", 3, 7, { canBeHard: true }),
  row(["fodder-beet"], "Beet, field", "B,T,S", "20-30", 3, 14, {
    needs: "soak as garden beet",
    sealedMoisturePct: 7.5,
  }),
  row(["sugar-beet"], "Beet, sugar", "B,T,S", "20-30", 3, 10, {
    otherTemperature: "20",
    needs: "soak as garden beet; may need 16 h at 25 C",
    sealedMoisturePct: 7.5,
  }),
  row(["broomcorn"], "Broomcorn", "B,T,S", "20-30", 3, 10, {}),
  row(["buckwheat"], "Buckwheat", "B,T", "20-30", 3, 6, {}),
  row(["chickpea"], "Chickpea", "T,S", "20-30", 3, 17, { canBeHard: true }),
  row(["maize"], "Corn, field", "B,T,S,TC", "20-30", 4, 7, { otherTemperature: "25" }),
  row(["popcorn"], "Corn, pop", "B,T,S,TC", "20-30", 4, 7, { otherTemperature: "25" }),
  row(["flax"], "Flax", "B,T,S", "20-30", 3, 7, {}),
  row(["pearl-millet"], "Millet, pearl", "B,T", "20-30", 3, 7, {}),
  row(["black-mustard"], "Mustard, black", "P", "20-30", 3, 7, {
    needs: "light",
    fresh: "KNO3 and prechill 10 C 3 days",
  }),
  row(["white-mustard"], "Mustard, white", "P", "20-30", 3, 5, { needs: "light" }),
  row(["oat"], "Oat", "B,T,S", "20", 5, 10, {
    otherTemperature: "15",
    fresh: "prechill 5 days and test 7, or predry and test 10",
  }),
  row(["peanut"], "Peanut", "B,T,S", "20-30", 5, 10, {
    otherTemperature: "25",
    canBeHard: true,
    needs: "remove shells",
    fresh: "ethephon or ethylene",
  }),
  row(["oilseed-rape"], "Rape, winter", "B,T", "20-30", 3, 7, {}),
  row(["rice"], "Rice", "T,S", "20-30", 5, 14, {
    otherTemperature: "30",
    fresh: "presoak 24-48 h in 40 C water",
  }),
  row(["rye"], "Rye", "B,T,S", "20", 4, 7, {
    otherTemperature: "15",
    fresh: "prechill 5 days at 5 or 10 C, or predry",
  }),
  row(["safflower"], "Safflower", "P,B,T,S", "15", 4, 14, {
    otherTemperature: "20",
    needs: "light at 15 C",
  }),
  row(["sesame"], "Sesame", "B,T,TB", "20-30", 3, 6, {}),
  row(["sorghum"], "Sorghum", "B,T,S", "20-30", 4, 10, {
    fresh: "prechill grain types 5 days at 5 or 10 C; sweet types 30-45 C",
  }),
  row(["sunflower"], "Sunflower", "T,B", "20", 4, 7, {}),
  row(["tobacco"], "Tobacco", "P,TB", "20-30", 7, 14, { needs: "light" }),
  row(["wheat"], "Wheat, common", "B,T,S", "20", 4, 7, {
    otherTemperature: "15",
    fresh: "prechill 5 days at 5 or 10 C, or predry",
  }),
];
