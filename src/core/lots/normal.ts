/** The normal distribution and the limits of a rate seen in a test. */

/** Part of the standard normal distribution below z; absolute error under 1e-12 where it matters. */
export function normalBelow(z: number): number {
  if (z === 0) return 0.5;
  const half = regularisedGamma(0.5, (z * z) / 2) / 2;
  return z > 0 ? 0.5 + half : 0.5 - half;
}

/**
 * The inverse: z below which the part p lies (the probit without its old constant 5). Wichura 1988,
 * Algorithm AS 241, Applied Statistics 37:477-484, to about 1e-16. @param p between 0 and 1
 */
export function probit(p: number): number {
  if (p <= 0) return -Infinity;
  if (p >= 1) return Infinity;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * along(CENTRE_TOP, r)) / along(CENTRE_FOOT, r);
  }
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  const z =
    r <= 5
      ? along(MIDDLE_TOP, r - 1.6) / along(MIDDLE_FOOT, r - 1.6)
      : along(TAIL_TOP, r - 5) / along(TAIL_FOOT, r - 5);
  return q < 0 ? -z : z;
}

/** Value of a polynomial, its constant first. */
function along(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, each) => sum * x + each, 0);
}

const CENTRE_TOP = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
  45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
];
const CENTRE_FOOT = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
  39307.89580009271061, 28729.085735721942674, 5226.495278852545925,
];
const MIDDLE_TOP = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833,
  7.7454501427834140764e-4,
];
const MIDDLE_FOOT = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
];
const TAIL_TOP = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
  0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5,
  2.01033439929228813265e-7,
];
const TAIL_FOOT = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525,
  7.868691311456132591e-4, 1.8463183175100546818e-5, 1.4215117583164458887e-7,
  2.04426310338993978564e-15,
];

/** Lower regularised incomplete gamma function, for a = 1/2 (Abramowitz and Stegun 6.5.29, 6.5.31). */
function regularisedGamma(a: number, x: number): number {
  if (x > 700) return 1;
  const front = Math.exp(-x + a * Math.log(x) - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 500 && term > sum * 1e-17; n += 1) {
      term *= x / (a + n);
      sum += term;
    }
    return sum * front;
  }
  return (
    1 -
    front *
      fraction(
        (n) => n * (a - n),
        (n) => x + 2 * n + 1 - a,
      )
  );
}

/** 1 / (b0 + a1 / (b1 + a2 / (b2 + ...))) by Lentz' method. */
function fraction(a: (n: number) => number, b: (n: number) => number): number {
  const tiny = 1e-300;
  let d = 1 / (b(0) || tiny);
  let c = 1e300;
  let value = d;
  for (let n = 1; n < 1000; n += 1) {
    d = 1 / (b(n) + a(n) * d || tiny);
    c = b(n) + a(n) / c || tiny;
    const step = c * d;
    value *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return value;
}

/** Logarithm of the gamma function (Lanczos 1964, g = 7, nine terms), to about 1e-14. */
function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const t = x + 6.5;
  const sum = LANCZOS.reduce((total, each, n) => total + (n === 0 ? each : each / (x - 1 + n)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];

/** Regularised incomplete beta function (Abramowitz and Stegun 26.5.8). */
function regularisedBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - regularisedBeta(1 - x, b, a);
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x),
  );
  const term = (n: number): number => {
    const m = Math.floor(n / 2);
    return n % 2 === 0
      ? (m * (b - m) * x) / ((a + n - 1) * (a + n))
      : (-(a + m) * (a + b + m) * x) / ((a + n - 1) * (a + n));
  };
  return (front / a) * betaFraction(term);
}

/** 1 / (1 + d1 / (1 + d2 / (1 + ...))). */
function betaFraction(term: (n: number) => number): number {
  return fraction(term, () => 1);
}

/** Limits of a rate: [least, most], fractions of 1. */
export type Rates = readonly [number, number];

const limits = new Map<string, Rates>();
const LIMITS_KEPT = 20_000;

/**
 * Exact two-sided 95 % limits of the rate behind `sprouted` of `sown` (Clopper and Pearson 1934,
 * Biometrika 26:404-413).
 */
export function exactLimits(sprouted: number, sown: number): Rates {
  const key = `${sprouted}/${sown}`;
  const known = limits.get(key);
  if (known) return known;
  const left = sown - sprouted;
  const made: Rates = [
    sprouted === 0 ? 0 : betaQuantile(0.025, sprouted, left + 1),
    left === 0 ? 1 : betaQuantile(0.975, sprouted + 1, left),
  ];
  if (limits.size >= LIMITS_KEPT) limits.clear();
  limits.set(key, made);
  return made;
}

/** x with the part p of the beta distribution below it, by halving. */
function betaQuantile(p: number, a: number, b: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 52; step += 1) {
    const middle = (low + high) / 2;
    if (regularisedBeta(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Lower one-sided 95 % limit: the rate a test proves. */
export function provedRate(sprouted: number, sown: number): number {
  return sprouted === 0 ? 0 : betaQuantile(0.05, sprouted, sown - sprouted + 1);
}
