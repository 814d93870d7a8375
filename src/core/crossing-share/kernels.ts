/**
 * Where pollen lands around a plant, as the share that flies farther than a distance. Both curves
 * are normalised over the plane and the same in every direction (wind is left out).
 */
export interface Kernel {
  /** Share of a plant's pollen that lands farther away than `metres`, 1 at 0. */
  readonly tail: (metres: number) => number;
  /** Pollen landing on one square metre at a distance, as a share of all of it. */
  readonly density: (metres: number) => number;
}

/**
 * Power law with a fat tail: density b(b+1)/(2 pi a^2) (1+r/a)^-(b+2). Algebra as in Austerlitz et
 * al. 2004 (Molecular Ecology 13:937).
 * @param a scale, metres
 * @param b shape; the mean distance 2a/(b-1) exists for b > 1
 */
export function powerKernel(a: number, b: number): Kernel {
  const scale = (b * (b + 1)) / (2 * Math.PI * a * a);
  // exp(log) and not **, which takes twice as long: these two are nearly all of an estimate's work.
  return {
    tail: (metres) => (1 + ((b + 1) * metres) / a) * Math.exp(-(b + 1) * Math.log(1 + metres / a)),
    density: (metres) => scale * Math.exp(-(b + 2) * Math.log(1 + metres / a)),
  };
}

/**
 * Normal inverse Gaussian kernel of maize in still air (Klein et al. 2003; Angevin et al. 2008, as
 * coded in the R package briskaR 1.0.4). With S = sqrt(1 + d^2 r^2) its tail is exp(l(1-S))/S.
 * @param heightM from tassel to silk, metres
 */
export function stillAirKernel(heightM: number): Kernel {
  const d = (0.499 * 0.831) / heightM;
  const l = (0.027 * heightM) / 0.831;
  const spread = (metres: number) => Math.sqrt(1 + d * d * metres * metres);
  return {
    tail: (metres) => {
      const s = spread(metres);
      return Math.exp(l * (1 - s)) / s;
    },
    density: (metres) => {
      const s = spread(metres);
      return ((d * d) / (2 * Math.PI)) * ((1 / s + l) / (s * s)) * Math.exp(l * (1 - s));
    },
  };
}

/**
 * Our least-squares fit to the shares of a 1 ha field of maize within 36 ha in Iowa (Goggi et al.
 * 2007, Int. J. Biometeorol. 51:493), source taken as square. Three points and one limit: the two
 * parameters are barely determined.
 */
export const MAIZE_FIT = powerKernel(1.68, 1.56);

/** The published maize kernel, tassels one metre above silks, still air. */
export const MAIZE_PUBLISHED = stillAirKernel(1);
