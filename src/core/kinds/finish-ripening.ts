/**
 * What can be done for seed that frost would catch: seed in a fleshy fruit goes on ripening in the
 * fruit that is cut, dry seed does not ripen off its plant. And what frost does to unripe seed,
 * where that was measured.
 */
import type { Kind } from "./crop.ts";

/** `fruit`: can be cut and rested; `dry`: cannot. */
export type Finish =
  | { readonly by: "fruit"; readonly rest: string; readonly source: string }
  | { readonly by: "dry" };

const WATERMELON = {
  by: "fruit",
  rest: "cut at 30 days and opened at once under half of watermelon seed came up, after 20 days in the cut fruit 92 %",
  source: "Park and others 2015",
} as const;
const CHILLI = {
  by: "fruit",
  rest: "chillies picked as they turned gave 93 % after 15 days in the fruit, 7 % without",
  source: "Revista Fitotecnia Mexicana",
} as const;
const BY_HABIT = {
  by: "fruit",
  rest: "let it lie two to three weeks before the seed is taken out",
  source: "common practice",
} as const;

/** Fruits whose seed is taken when they are dry, of families that bear fleshy ones. */
const DRY_FRUIT: ReadonlySet<string> = new Set(["tobacco", "luffa", "angled-luffa"]);
const CHILLIES: ReadonlySet<string> = new Set(["pepper", "hot-pepper"]);

export function finishOf({ id, family, species }: Pick<Kind, "id" | "family" | "species">): Finish {
  const isFleshy = family === "Cucurbitaceae" || family === "Solanaceae";
  if (!isFleshy || DRY_FRUIT.has(id)) return { by: "dry" };
  if (species === "Citrullus lanatus") return WATERMELON;
  return CHILLIES.has(id) ? CHILLI : BY_HABIT;
}

/** What frost does to seed that is not ripe, by species; undefined: nothing was found published. */
const FROST: ReadonlyMap<string, string> = new Map(
  Object.entries<string>({
    "Glycine max":
      "Soybean seed freezes at -2 °C while it is green (68 % water) and at -20 °C near ripe (30 %); green pods were not hurt at -2 °C (Judd and others 1982).",
    "Zea mays":
      "Maize seed freezes at -0.5 °C above 50 % water, below -4 °C near 30 % (Woltz and others 2005).",
  }),
);

export function frostLimit({ species }: Pick<Kind, "species">): string | undefined {
  return FROST.get(species);
}
