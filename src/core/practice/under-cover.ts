/**
 * Which cover keeps a kind true and still gives seed. A mesh lets the pollen of the wind through,
 * whoever sits inside it; a bag keeps out the insects that an outcrosser lives by.
 */
import type { Cover } from "../model/plan.ts";
import { handWay } from "./by-hand.ts";
import { type Rule, type RuledKind, rulesOf } from "./practice.ts";

/**
 * Who does the work under a cover. `itself`: it sets seed alone. `bees`, `flies`, `flies and bees`,
 * `bumblebees`: let in. `shaken`: flowers of several plants in one bag, shaken. `hand`: see
 * by-hand.ts.
 */
export type UnderCover =
  | "itself"
  | "bees"
  | "flies"
  | "flies and bees"
  | "bumblebees"
  | "shaken"
  | "hand";

/** Insects let into a cage, for kinds that need them. */
const caged = rulesOf<UnderCover>([
  [
    `carrot parsnip celery celeriac parsley dill wild-carrot wild-parsnip`,
    "flies and bees",
    "ars-pollinators",
  ],
  ["coriander fennel caraway", "flies and bees", "home-practice"],
  ["onion", "flies", "onion-flies"],
  ["bunching-onion leek elephant-garlic chives", "flies", "manual-seed-saving"],
  [
    `cabbage kale broccoli sprouting-broccoli cauliflower brussels-sprouts kohlrabi collards
     chinese-kale turnip chinese-cabbage pak-choi mizuna mustard-spinach rutabaga siberian-kale
     cucumber melon chicory`,
    "bees",
    "ars-pollinators",
  ],
  [
    `broccoli-raab radish winter-radish rocket white-mustard black-mustard basil buckwheat tomatillo rocoto
     calendula african-marigold french-marigold zinnia cosmos nasturtium corn-salad
     west-india-gherkin artichoke cardoon`,
    "bees",
    "home-practice",
  ],
  ["runner-bean broad-bean", "bumblebees", "home-practice"],
]);

/**
 * Wind carries their pollen and they do not take their own: several plants are tied together and
 * their flowers put into one bag of a cloth that pollen does not pass.
 */
const bagged = rulesOf<UnderCover>([["beet chard sugar-beet fodder-beet", "shaken", "memory"]]);

/** How a cover of a kind gives true seed, and who says so; undefined: it does not, or nobody knows. */
export function underCover(
  kind: RuledKind,
  cover: Exclude<Cover, "none">,
): Rule<UnderCover> | undefined {
  const doesSelf = kind.breeding !== "outcrossing";
  switch (cover) {
    case "cage": {
      if (kind.carrier !== "insects") return undefined;
      return doesSelf ? { value: "itself", source: "home-practice" } : caged.get(kind.id);
    }
    case "bags": {
      if (!doesSelf) return bagged.get(kind.id);
      return {
        value: "itself",
        source: BAGGED_READ.has(kind.id) ? "learn-seed-saving" : "home-practice",
      };
    }
    case "hand": {
      const way = handWay(kind);
      return way && { value: "hand", source: way.source };
    }
  }
}

/** Of these it was read that unopened flowers are bagged: trusses of tomato and bean, pepper, okra. */
const BAGGED_READ: ReadonlySet<string> = new Set(["tomato", "common-bean", "pepper", "okra"]);

/**
 * Whether two cages can be opened by turns, so that insects of the garden visit one of them at a
 * time. Only where every source they must be kept from is caged too: what flies in the open comes in.
 */
export function mayOpenByTurns(kind: RuledKind): Rule<true> | undefined {
  if (kind.carrier !== "insects" || kind.breeding !== "outcrossing") return undefined;
  if (!caged.has(kind.id)) return undefined;
  if (kind.family === "Brassicaceae") return { value: true, source: "washburn" };
  if (kind.family === "Apiaceae") return { value: true, source: "diy-seeds" };
  return { value: true, source: "home-practice" };
}

/** Ids of the kinds that have a row, for the tests. */
export const coverKinds: readonly string[] = [...caged.keys(), ...bagged.keys()];
