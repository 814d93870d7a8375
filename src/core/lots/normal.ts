/** The normal distribution and the limits of a rate seen in a test. */

/** Part of the standard normal distribution below z; absolute error under 1e-12 where it matters. */
export function normalBelow(z: number): number {
  if (z === 0) return 0.5;
  const half = gammaBelow((z * z) / 2) / 2;
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
  let sum = 0;
  for (let at = coefficients.length - 1; at >= 0; at -= 1) sum = sum * x + (coefficients[at] ?? 0);
  return sum;
}

const CENTRE_TOP = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
];
const CENTRE_FOOT = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852546,
];
const MIDDLE_TOP = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
];
const MIDDLE_FOOT = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008,
  0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
];
const TAIL_TOP = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
  0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
];
const TAIL_FOOT = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
];

/**
 * Lower regularised incomplete gamma function, for a = 1/2 (Abramowitz and Stegun 6.5.29, 6.5.31).
 * The fraction is written out: it is asked for twice for every lot of a shelf.
 */
function gammaBelow(x: number): number {
  const a = 0.5;
  if (x > 700) return 1;
  const front = Math.exp(-x + a * Math.log(x) - LOG_GAMMA_HALF);
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 500 && term > sum * 1e-17; n += 1) {
      term *= x / (a + n);
      sum += term;
    }
    return sum * front;
  }
  let d = 1 / (x + 1 - a);
  let c = 1e300;
  let value = d;
  for (let n = 1; n < 1000; n += 1) {
    const over = n * (a - n);
    const under = x + 2 * n + 1 - a;
    d = 1 / (under + over * d || TINY);
    c = under + over / c || TINY;
    const step = c * d;
    value *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return 1 - front * value;
}

/** Stands for a zero that would be divided by. */
const TINY = 1e-300;

/** 1 / (1 + d1 / (1 + d2 / (1 + ...))) by Lentz' method. */
function betaFraction(term: (n: number) => number): number {
  let d = 1;
  let c = 1e300;
  let value = d;
  for (let n = 1; n < 1000; n += 1) {
    const over = term(n);
    d = 1 / (1 + over * d || TINY);
    c = 1 + over / c || TINY;
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
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
  12.507343278686905, -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

const LOG_GAMMA_HALF = logGamma(0.5);

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
