/** Labels of the plan's fixed values. */
import type { Cover, Flowering, Purpose, PurityLevel, Surrounding } from "../../core/model/plan.ts";

/** A value and what it is called where it is picked. */
export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

export const levelWords: Readonly<Record<PurityLevel, string>> = {
  home: "home: for one's own garden",
  sale: "sale: passed on or sold",
  stock: "stock: mother seed of a variety",
};

export const purposeWords: Readonly<Record<Purpose, string>> = {
  seed: "for seed",
  food: "eaten",
  other: "other, not for seed",
};

export const coverWords: Readonly<Record<Cover, string>> = {
  none: "none",
  cage: "mesh cage",
  bags: "bags",
  hand: "taped, pollinated by hand",
};

export const floweringWords: Readonly<Record<Flowering, string>> = {
  yes: "will flower",
  cut: "cut before bloom",
  "first-year": "first year, does not flower",
};

export const surroundingWords: Readonly<Record<Surrounding["what"], string>> = {
  pollen: "pollen source",
  hedge: "hedge",
  fence: "fence",
  tree: "tree",
  building: "building",
  water: "water",
  path: "path",
  slope: "slope",
  other: "other",
};

export const unitWords: Readonly<Record<"m" | "ft", string>> = {
  m: "metres",
  ft: "feet and inches",
};

export const temperatureUnits: readonly Choice<"C" | "F">[] = [
  { value: "C", label: "degrees Celsius" },
  { value: "F", label: "degrees Fahrenheit" },
];

/** The entries of a table of words as choices, in its order. */
export function choicesOf<Value extends string>(
  words: Readonly<Record<Value, string>>,
): readonly Choice<Value>[] {
  return Object.entries<string>(words).map(([value, label]) => ({ value: value as Value, label }));
}
