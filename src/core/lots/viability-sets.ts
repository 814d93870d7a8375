/**
 * Constants of the seed viability equation (Ellis and Roberts 1980, Annals of Botany 45:13-30) per
 * species, one chosen set each from an open collection of published fits (the data of the R package
 * viabilitymetrics, CRAN), seen there; onion has two. A set fitted at one temperature has the
 * universal temperature constants 0.0329 and 0.000478 (Dickie and others 1990).
 */
import type { Kind } from "../kinds/crop.ts";

export interface ViabilityConstants {
  readonly species: string;
  readonly ke: number;
  readonly cw: number;
  readonly ch: number;
  readonly cq: number;
}

function set(species: string, ke: number, cw: number, ch: number, cq: number): ViabilityConstants {
  return { species, ke, cw, ch, cq };
}

const SETS: readonly ViabilityConstants[] = [
  set("Allium cepa", 6.975, 3.47, 0.04, 0.000428),
  set("Allium cepa", 9.083, 5.81, 0.0329, 0.000478),
  set("Arachis hypogaea", 6.718, 4.089, 0.0329, 0.000478),
  set("Beta vulgaris", 9.373, 5.152, 0.0372, 0.000467),
  set("Brassica juncea", 7.768, 4.56, 0.0329, 0.000478),
  set("Brassica napus", 7.718, 4.54, 0.0329, 0.000478),
  set("Capsicum annuum", 7.767, 4.67, 0.0329, 0.000478),
  set("Chenopodium quinoa", 8.58, 5.02, 0.0329, 0.000478),
  set("Cicer arietinum", 8.901, 4.847, 0.0329, 0.000478),
  set("Cucumis melo", 7.299, 3.707, 0.0367, 0.000473),
  set("Cucurbita pepo", 6.913, 3.604, 0.04, 0.0004),
  set("Eleusine coracana", 9.508, 5.08, 0.0329, 0.000478),
  set("Eragrostis tef", 10.098, 6.01, 0.0329, 0.000478),
  set("Glycine max", 7.525, 4.086, 0.0329, 0.000478),
  set("Gossypium hirsutum", 9.24, 5.19, 0.03965, 0.000426),
  set("Guizotia abyssinica", 7.578, 4.78, 0.0329, 0.000478),
  set("Helianthus annuus", 6.74, 4.16, 0.0329, 0.000478),
  set("Hordeum vulgare", 9.144, 5.342, 0.0329, 0.000478),
  set("Lactuca sativa", 7.938, 5.25, 0.0329, 0.000478),
  set("Linum usitatissimum", 7.76, 4.86, 0.0329, 0.000478),
  set("Solanum lycopersicum", 6.5017, 3.1807, 0.0324, 0.000431),
  set("Oryza sativa", 8.668, 5.03, 0.0329, 0.000478),
  set("Pennisetum glaucum", 8.728, 4.86, 0.0329, 0.000478),
  set("Phaseolus vulgaris", 9.09, 4.761, 0.0329, 0.000478),
  set("Pisum sativum", 9.858, 5.39, 0.0329, 0.000478),
  set("Sesamum indicum", 7.19, 4.02, 0.04, 0.000428),
  set("Setaria italica", 8.678, 4.95, 0.0329, 0.000478),
  set("Solanum tuberosum", 7.923, 5.063, 0.0325, 0.000432),
  set("Sorghum bicolor", 9.472, 5.426, 0.0324, 0.000478),
  set("Triticum aestivum", 9.043, 5.183, 0.0351, 0.000475),
  set("Vigna radiata", 10.858, 6.27, 0.0329, 0.000478),
  set("Vigna unguiculata", 9.401, 5.118, 0.0329, 0.000478),
  set("Zea mays", 8.579, 4.91, 0.0329, 0.000478),
];

/** What stands in for a genus without constants of its own; that it may is our reading. */
const PROXIES: ReadonlyMap<string, string> = new Map([
  ["Brassica", "Brassica napus"],
  ["Raphanus", "Brassica napus"],
  ["Allium", "Allium cepa"],
  ["Cucurbita", "Cucurbita pepo"],
  ["Phaseolus", "Phaseolus vulgaris"],
]);

/** Constants for a kind, and whose they are. */
export interface KindConstants {
  readonly sets: readonly ViabilityConstants[];
  /** The species they were measured on, where that is not the kind's own; else null. */
  readonly proxy: string | null;
}

/** Constants of the kind's species, else of what stands in for its genus; null for neither. */
export function constantsOf({ species }: Pick<Kind, "species">): KindConstants | null {
  const own = SETS.filter((each) => each.species === species);
  if (own.length > 0) return { sets: own, proxy: null };
  const proxy = PROXIES.get(species.split(" ")[0] ?? "");
  if (proxy === undefined) return null;
  return { sets: SETS.filter((each) => each.species === proxy), proxy };
}
