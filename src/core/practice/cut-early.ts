/**
 * Whether cutting a stand before it flowers leaves the grower anything. A beet pulled before it
 * bolts was grown to be pulled; a squash cut before it flowers is a squash thrown away.
 */
import { type Rule, type RuledKind, rulesOf } from "./practice.ts";

/**
 * `eaten before`: leaf, root, bulb or head, taken before it flowers. `lost`: fruit, seed or flowers
 * are what it is grown for. `weed`: nothing is lost.
 */
export type CutEarly = "eaten before" | "lost" | "weed";

const rules = rulesOf<CutEarly>([
  [
    `cabbage kale broccoli sprouting-broccoli cauliflower brussels-sprouts kohlrabi collards
     chinese-kale turnip chinese-cabbage pak-choi mizuna broccoli-raab mustard-spinach mustard rutabaga
     siberian-kale radish winter-radish rocket lettuce chicory endive beet chard sugar-beet
     fodder-beet spinach leaf-amaranth orach carrot parsnip celery celeriac parsley coriander
     dill fennel onion bunching-onion leek elephant-garlic chives basil corn-salad`,
    "eaten before",
    "home-practice",
  ],
  [
    `wild-turnip wild-radish prickly-lettuce wild-sunflower sea-beet pigweed lambsquarters
     pitseed-goosefoot wild-carrot wild-parsnip johnsongrass`,
    "weed",
    "home-practice",
  ],
]);

/** Everything else is grown for its fruit, its seed or its flowers. */
export function cutEarly({ id }: Pick<RuledKind, "id">): Rule<CutEarly> {
  return rules.get(id) ?? { value: "lost", source: "home-practice" };
}

/** Who says that a wild plant is to be cut or pulled before its buds open; undefined: common practice. */
const WILD_CUT = new Map([
  ["wild-carrot", "runabergs"],
  ["prickly-lettuce", "lettuce-hybrids"],
  ["pigweed", "amaranth-pigweed"],
]);

export function wildCutSource({ id }: Pick<RuledKind, "id">): string {
  return WILD_CUT.get(id) ?? "home-practice";
}

/** Ids of the kinds that have a row, for the tests. */
export const cutKinds: readonly string[] = [...rules.keys()];
