/**
 * Heat to flower, of bloom and to ripe seed from two open tables of crop models. Each is one
 * place's or a few cultivars' figure, with the base and cap of its model and the simple average,
 * so it carries no more than a rule of thumb for another variety. The spread is ours: from a
 * fifth below the least to a quarter above the most; in another such table the cultivars of
 * soybean, sunflower and chickpea lie 6 to 28 percent below and 16 to 45 above their middle.
 */
import type { HeatToFlower, Kind, Sourced, Timing } from "./crop.ts";

/** Below and above a published sum; ours. */
const SPREAD = [0.8, 1.25] as const;

type Scale = readonly [baseC: number, capC: number | null];
type Sum = number | readonly [number, number];

function sourced(
  source: string,
  [baseC, capC]: Scale,
  sum: Sum,
  of: string,
): Sourced<HeatToFlower> {
  const [least, most] = typeof sum === "number" ? [sum, sum] : sum;
  const cDays = [Math.round(least * SPREAD[0]), Math.round(most * SPREAD[1])] as const;
  const printed = least === most ? `${least}` : `${least} to ${most}`;
  return {
    value: { method: "simple average", baseC, capC, cDays },
    source,
    note: `${printed} C-days ${of}; the spread about it is ours`,
    fewVarieties: true,
    onePlace: true,
  };
}

/** FAO defaults: sowing to flower, length of bloom, start of flowering to maturity, one scale. */
function fao(baseC: number, toFlower: number | null, ofBloom: number, toSeed: number): Timing {
  const scale = [baseC, null] as const;
  return {
    ...(toFlower === null
      ? {}
      : { heatToFlower: sourced("fao-crop-defaults", scale, toFlower, "from sowing to flower") }),
    heatOfBloom: sourced("fao-crop-defaults", scale, ofBloom, "of bloom"),
    heatToSeed: sourced("fao-crop-defaults", scale, toSeed, "from first flower to maturity"),
  };
}

/** Open crop parameters: flowering to maturity alone. */
function seedHeat(scale: Scale, sum: Sum): Timing {
  return { heatToSeed: sourced("open-crop-parameters", scale, sum, "from flower to maturity") };
}

const maize = fao(8, 880, 180, 820);
const sorghum = fao(8, 1041, 306, 719);

/** By kind. A heat to flower that the kind has from elsewhere stays. */
const heat: ReadonlyMap<string, Timing> = new Map(
  Object.entries<Timing>({
    barley: {
      ...fao(0, 867, 160, 429),
      heatToSeed: sourced(
        "fao-crop-defaults",
        [0, null],
        [429, 750],
        "from flower to maturity; the larger by the other table",
      ),
    },
    "common-bean": fao(9, 556, 233, 742),
    maize,
    "sweet-corn": maize,
    popcorn: maize,
    sorghum,
    broomcorn: sorghum,
    soybean: fao(5, 1500, 600, 1200),
    sunflower: fao(4, 1266, 350, 1134),
    // The heat to flower printed for tomato counts from setting out; heat here counts from sowing.
    tomato: fao(7, null, 750, 1408),
    wheat: fao(0, 1250, 200, 1150),
    chickpea: seedHeat([7, 20], 714),
    cowpea: seedHeat([8, 28], 630),
    "broad-bean": seedHeat([0, 25], 1351),
    peanut: seedHeat([10, 30], 952),
    "pearl-millet": seedHeat([10, 27], 483),
    "mung-bean": seedHeat([10, 28], 753),
    "oilseed-rape": seedHeat([4, 35], [600, 1150]),
    tobacco: seedHeat([0, null], 1948),
  }),
);

/** Ids of the kinds above. */
export const heatKinds: readonly string[] = [...heat.keys()];

/** A kind with its heat figures beside what it has. */
export function withHeatFigures(kind: Kind): Kind {
  const found = heat.get(kind.id);
  if (!found) return kind;
  // A bloom counted in heat ends on the scale of its own heat to flower, or not at all.
  const { heatOfBloom: _bloom, ...rest } = found;
  const has = kind.timing.heatToFlower;
  return { ...kind, timing: { ...(has ? rest : found), ...kind.timing } };
}
