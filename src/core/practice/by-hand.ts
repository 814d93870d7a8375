/**
 * Whether and how a kind is pollinated by hand so that seed stays true. A kind without a row, and a
 * grower's own kind, is not offered it: nothing says that it can be done.
 */
import { type Rule, type RuledKind, rulesOf } from "./practice.ts";

/**
 * `buds taped`: large flowers, shut the evening before. `at night`: the same, in the evening.
 * `buds bagged`: too small to tape. `ears and tassels`: maize. `heads brushed`: a composite's head
 * in a bag. `umbels brushed`: daily under a bag. `tripped`: legumes that need the weight of a bee.
 */
export type HandWay =
  | "buds taped"
  | "at night"
  | "buds bagged"
  | "ears and tassels"
  | "heads brushed"
  | "umbels brushed"
  | "tripped"
  | "plant to plant";

const rules = rulesOf<HandWay>([
  [
    "summer-squash pumpkin ornamental-gourd winter-squash butternut cushaw fig-leaf-gourd",
    "buds taped",
    "manual-seed-saving",
  ],
  ["bottle-gourd", "at night", "home-practice"],
  ["watermelon citron-melon", "buds bagged", "manual-seed-saving"],
  ["melon", "buds bagged", "melon-by-hand"],
  [
    "cucumber west-india-gherkin luffa angled-luffa bitter-gourd wax-gourd",
    "buds bagged",
    "home-practice",
  ],
  ["maize sweet-corn popcorn", "ears and tassels", "manual-seed-saving"],
  ["sunflower", "heads brushed", "ars-by-hand"],
  ["onion bunching-onion", "umbels brushed", "manual-seed-saving"],
  ["leek elephant-garlic", "umbels brushed", "home-practice"],
  ["runner-bean broad-bean", "tripped", "home-practice"],
  ["tomatillo rocoto", "plant to plant", "home-practice"],
]);

/** How a kind is pollinated by hand, and who says so; undefined: it is not done. */
export function handWay({ id }: Pick<RuledKind, "id">): Rule<HandWay> | undefined {
  return rules.get(id);
}

/** Why a kind is not pollinated by hand. */
export type NoHand = "sets by itself" | "florets" | "wind" | "not known";

export function whyNotByHand(kind: RuledKind): Rule<NoHand> | null {
  if (rules.has(kind.id)) return null;
  const common = (value: NoHand): Rule<NoHand> => ({ value, source: "home-practice" });
  if (kind.breeding !== "outcrossing") return common("sets by itself");
  if (kind.carrier !== "insects") return common("wind");
  return common(FLORETS.has(kind.family) ? "florets" : "not known");
}

/** Families whose seed comes from hundreds of florets, one or two seeds each. */
const FLORETS: ReadonlySet<string> = new Set(["Apiaceae", "Brassicaceae", "Asteraceae"]);

/** Ids of the kinds that have a row, for the tests. */
export const handKinds: readonly string[] = [...rules.keys()];
