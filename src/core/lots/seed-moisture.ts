/**
 * Moisture of seed that lies open to air (Cromarty, Ellis and Roberts 1982, The Design of Seed
 * Storage Facilities for Genetic Conservation; the formula seen in viabilitymetrics, the book not).
 */
import type { Kind } from "../kinds/crop.ts";

/** Moisture, percent of the dry weight. @param oil fraction of the dry weight */
export function moistureDry(oil: number, humidityPct: number, celsius: number): number {
  const wetting = Math.sqrt(-440 * Math.log(1 - humidityPct / 100));
  return ((1 - oil) * wetting) / (1.1 + celsius / 90);
}

/** Percent of dry weight to percent of fresh weight. */
export function wetFromDry(pct: number): number {
  return (100 * pct) / (100 + pct);
}

/** Humidities the formula holds for, percent. */
export const HUMIDITY_RANGE = [10, 70] as const;

/**
 * Oil, fraction of the dry weight, [least, most]. From memory of general oilseed analyses: a
 * default for want of a source, and wide on purpose.
 */
const OIL: ReadonlyMap<string, readonly [number, number]> = new Map([
  ["Allium cepa", [0.15, 0.25]],
  ["Allium", [0.15, 0.25]],
  ["Arachis", [0.44, 0.5]],
  ["Beta", [0.04, 0.06]],
  ["Brassica rapa", [0.33, 0.42]],
  ["Brassica", [0.3, 0.45]],
  ["Raphanus", [0.33, 0.4]],
  ["Capsicum", [0.18, 0.25]],
  ["Chenopodium", [0.05, 0.07]],
  ["Cicer", [0.04, 0.07]],
  ["Cucumis", [0.3, 0.4]],
  ["Cucurbita", [0.3, 0.4]],
  ["Glycine", [0.18, 0.22]],
  ["Helianthus", [0.35, 0.48]],
  ["Hordeum", [0.02, 0.03]],
  ["Lactuca", [0.33, 0.4]],
  ["Linum", [0.38, 0.44]],
  ["Solanum lycopersicum", [0.18, 0.26]],
  ["Oryza", [0.02, 0.03]],
  ["Pennisetum", [0.04, 0.06]],
  ["Phaseolus", [0.015, 0.025]],
  ["Pisum", [0.015, 0.025]],
  ["Sesamum", [0.45, 0.55]],
  ["Sorghum", [0.03, 0.04]],
  ["Triticum", [0.015, 0.025]],
  ["Vigna", [0.01, 0.025]],
  ["Zea", [0.05, 0.09]],
]);
/** Anything from starch to oil. */
const ANY_OIL = [0.02, 0.45] as const;

/** Range of oil in seed of a species. */
export function oilOf({ species }: Pick<Kind, "species">): readonly [number, number] {
  return OIL.get(species) ?? OIL.get(species.split(" ")[0] ?? "") ?? ANY_OIL;
}

/** Fahrenheit plus relative humidity: at most 100 is the rule of thumb for dry storage. */
export function hundredRule(celsius: number, humidityPct: number) {
  const sum = celsius * 1.8 + 32 + humidityPct;
  return { sum, keeps: sum <= 100 + 1e-9 };
}
