/**
 * Lengths as people write them. Inside the program a length is metres; units appear only here.
 */
import { type DecimalMark, plainMarks } from "./decimal-marks.ts";

export type LengthUnit = "m" | "ft";

export const METRES_PER_FOOT = 0.3048;
const METRES_PER_INCH = 0.0254;

/** A Map, not an object: "constructor" is no unit. */
const UNIT_METRES: ReadonlyMap<string, number> = new Map([
  ["mm", 0.001],
  ["cm", 0.01],
  ["m", 1],
  ["metre", 1],
  ["metres", 1],
  ["meter", 1],
  ["meters", 1],
  ["km", 1000],
  ["in", METRES_PER_INCH],
  ["inch", METRES_PER_INCH],
  ["inches", METRES_PER_INCH],
  ['"', METRES_PER_INCH],
  ["ft", METRES_PER_FOOT],
  ["foot", METRES_PER_FOOT],
  ["feet", METRES_PER_FOOT],
  ["'", METRES_PER_FOOT],
  ["yd", 0.9144],
  ["yard", 0.9144],
  ["yards", 0.9144],
  ["rod", 5.0292],
  ["rods", 5.0292],
  ["mi", 1609.344],
  ["mile", 1609.344],
  ["miles", 1609.344],
]);

export type ParsedLength =
  | { readonly ok: true; readonly metres: number }
  | { readonly ok: false; readonly reason: string };

/**
 * Reads a length in any unit: `3.2 m`, `3,2`, `320cm`, `12' 6"`, `12ft 6 1/2 in`, `12'6`, `5 yd`.
 * A bare number is in the document unit. Zero is a length; signs are read only when `canBeNegative`.
 * `1,320 ft` is 1320 feet; where a mark may be a decimal or a thousands mark, such as `1,320 m`,
 * the text is refused with both readings.
 * @param decimalMark of the writer's language or of the file; left out: not known
 * @example parseLength(`12' 6"`, "m") // { ok: true, metres: 3.81 }
 */
export function parseLength(
  input: string,
  documentUnit: LengthUnit,
  canBeNegative = false,
  decimalMark?: DecimalMark,
): ParsedLength {
  const marked = plainMarks(plainText(input), documentUnit, decimalMark);
  if (!marked.ok) return refuse(marked.reason);
  const { text } = marked;
  if (text === "") return refuse("Type a length, for example 3.2 m or 12' 6\"");
  const isNegative = text.startsWith("-");
  if (isNegative && !canBeNegative) return refuse("A length cannot be negative");
  const body = isNegative ? text.slice(1).trim() : text;

  const feetInches = /^(\d+(?:\.\d+)?) ?(?:'|ft|foot|feet) ?([^ ].*)$/.exec(body);
  if (feetInches) {
    const after = feetInches[2] ?? "";
    // 1'000 is a thousand to some, and a foot to others.
    if (/^\d{3}$/.test(after)) return twoWays(input, feetInches[1] ?? "", after);
    const inches = inchesOf(after.replace(/(?:"|in|inch|inches)$/, ""));
    if (inches === null) return unreadable(input);
    if (inches >= 12)
      return refuse(`${feetInches[2]} is a foot or more: write it as feet and inches`);
    return sized(Number(feetInches[1]) * METRES_PER_FOOT + inches * METRES_PER_INCH, isNegative);
  }
  const written = lastWord(body);
  const unit = written === "" ? documentUnit : written;
  const factor = UNIT_METRES.get(unit);
  const number = inchesOf(body.slice(0, body.length - written.length));
  if (number === null) return unreadable(input);
  if (factor === undefined) return refuse(`"${unit}" is not a unit of length known here`);
  return sized(number * factor, isNegative);
}

/** The letters and marks at the end; by hand, for the reason of `trailingDigits`. */
function lastWord(text: string): string {
  let from = text.length;
  while (from > 0 && /^[a-z'"]$/.test(text.charAt(from - 1))) from -= 1;
  return text.slice(from);
}

/** Typographic marks, fractions, digits of other scripts and odd spaces to plain ASCII, lower case. */
function plainText(input: string): string {
  return input
    .replace(/\u00B4/g, "'")
    .replace(/[\u00BC-\u00BE\u2150-\u215E]/g, " $&")
    .normalize("NFKC")
    .replace(/\u2044/g, "/")
    .replace(/[\u2032\u2019\u2018\u02BC`]/g, "'")
    .replace(/[\u2033\u201D\u201C]|''/g, '"')
    .replace(/\u2212/g, "-")
    .replace(/\u066B/g, ".")
    .replace(/\p{Nd}/gu, (digit) => String(digitValue(digit)))
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();
}

/** Decimal digits of every script come in runs of ten that start at a multiple found by walking back. */
function digitValue(digit: string): number {
  const code = digit.codePointAt(0) ?? 48;
  let zero = code;
  while (code - zero < 9 && /\p{Nd}/u.test(String.fromCodePoint(zero - 1))) zero -= 1;
  return (code - zero) % 10;
}

/** A number, a fraction or a whole number with a fraction: `6`, `1/2`, `6 1/2`; null if none. */
function inchesOf(text: string): number | null {
  const match = /^(\d+(?:\.\d+)?|\.\d+)?(?:\s*(?:^|\s)(\d+)\/(\d+))?$/.exec(text.trim());
  if (!match || (match[1] === undefined && match[2] === undefined)) return null;
  const denominator = match[3] === undefined ? 1 : Number(match[3]);
  if (denominator === 0) return null;
  return Number(match[1] ?? 0) + Number(match[2] ?? 0) / denominator;
}

function sized(metres: number, isNegative: boolean): ParsedLength {
  if (!Number.isFinite(metres) || metres > 100_000) return refuse("That is longer than 100 km");
  const rounded = Math.round(metres * 1e9) / 1e9;
  return { ok: true, metres: isNegative ? -rounded : rounded };
}

function refuse(reason: string): ParsedLength {
  return { ok: false, reason };
}

function twoWays(input: string, feet: string, after: string): ParsedLength {
  return refuse(
    `"${input.trim()}" can be read two ways: write ${feet}${after} with its unit, or ${feet}' ${Number(after)}"`,
  );
}

function unreadable(input: string): ParsedLength {
  return refuse(`"${input.trim()}" is not a length: write for example 3.2 m or 12' 6"`);
}

/**
 * A length for reading and for typing back: metres to the centimetre (`3.2 m`), or feet and
 * inches to the quarter inch (`12' 6 1/4"`). Trailing zeros are dropped.
 */
export function formatLength(metres: number, unit: LengthUnit): string {
  return unit === "m" ? `${trimmed(metres, 2)} m` : feetAndInches(metres);
}

/** @param step inches of which whole ones are shown: a quarter for sizes, one for distances */
function feetAndInches(metres: number, step = 0.25): string {
  const steps = Math.round(Math.abs(metres) / METRES_PER_INCH / step);
  const quarters = Math.round(steps * step * 4);
  const sign = metres < 0 && quarters > 0 ? "-" : "";
  const feet = Math.floor(quarters / 48);
  const inches = Math.floor((quarters % 48) / 4);
  const fraction = ["", "1/4", "1/2", "3/4"][quarters % 4] ?? "";
  const inchText = [inches > 0 || fraction === "" ? String(inches) : "", fraction]
    .filter((part) => part !== "")
    .join(" ");
  if (feet === 0) return `${sign}${inchText}"`;
  return inchText === "0" ? `${sign}${feet}'` : `${sign}${feet}' ${inchText}"`;
}

/**
 * A distance on the ground, less finely than a size: `2.7 m`, from 100 m up whole metres; or feet
 * and inches, `8' 10"`, from 100 feet up whole feet.
 */
export function formatDistance(metres: number, unit: LengthUnit): string {
  if (unit === "m") return `${trimmed(metres, metres >= FAR_M ? 0 : 1)} m`;
  return feetAndInches(metres, metres >= FAR_FEET_M ? 12 : 1);
}

/** Square metres or square feet. */
export function formatArea(squareMetres: number, unit: LengthUnit): string {
  return unit === "m"
    ? `${trimmed(squareMetres, 1)} m²`
    : `${trimmed(squareMetres / (METRES_PER_FOOT * METRES_PER_FOOT), 0)} sq ft`;
}

/** `measured of required`, such that the shown numbers never contradict the verdict. */
export interface ShownMeasure {
  readonly measured: string;
  readonly required: string;
  /** What stands behind a number: ` m`; nothing in feet, whose marks are in the text. */
  readonly after: string;
}

/**
 * A measured distance beside its requirement. A distance that falls short is rounded down, and
 * shown more finely until the two differ; one that passes is never shown as less. A requirement
 * from 100 m up is shown in whole metres, rounded up: a mile is 1610 m.
 */
export function formatMeasured(
  measuredM: number,
  requiredM: number,
  isShort: boolean,
  unit: LengthUnit,
): ShownMeasure {
  const after = unit === "m" ? " m" : "";
  const shownAs = (metres: number, step: number) =>
    unit === "m"
      ? trimmed(metres, Math.round(-Math.log10(step)))
      : feetAndInches(metres, step / METRES_PER_INCH);
  for (const step of stepsFor(requiredM, unit)) {
    const required = step === 1 ? wholeMetres(requiredM) : Math.round(requiredM / step);
    const down = Math.floor(measuredM / step + 1e-9);
    if (isShort && down >= required) continue;
    // Between the requirement and the whole metre above it only finer steps tell that it passes.
    if (!isShort && step === 1 && down < required) continue;
    // Of a far requirement much is missing where tenths are shown, so none contradicts it.
    const isNear = step === 1 && measuredM < FAR_M;
    return {
      measured: isNear
        ? shownAs(Math.floor(measuredM * 10 + 1e-9) / 10, 0.1)
        : shownAs((isShort ? down : Math.max(down, required)) * step, step),
      required: shownAs(required * step, step),
      after,
    };
  }
  const required = formatRequired(requiredM, unit).replace(/ m$/, "");
  return { measured: `just under ${required}`, required, after };
}

/** A distance that must be kept: as `formatDistance`, but whole metres are rounded up. */
export function formatRequired(metres: number, unit: LengthUnit): string {
  return unit === "m" && metres >= FAR_M
    ? `${wholeMetres(metres)} m`
    : formatDistance(metres, unit);
}

/** Metres up to the next whole one; what sums leave behind (100.0000001) is none. */
function wholeMetres(metres: number): number {
  return Math.ceil(metres - 1e-6);
}

function stepsFor(requiredM: number, unit: LengthUnit): readonly number[] {
  if (unit === "m") return requiredM >= FAR_M ? [1, ...METRE_STEPS] : METRE_STEPS;
  return requiredM >= FAR_FEET_M ? FAR_INCH_STEPS : INCH_STEPS;
}

/** From here on metres are shown whole. */
const FAR_M = 99.95;
/** From here on feet are shown whole, metres. */
const FAR_FEET_M = 100 * METRES_PER_FOOT;
/** How finely a distance is shown at first and then, metres: tenths of a metre; feet, inches, quarters. */
const METRE_STEPS = [1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6];
const INCH_STEPS = [METRES_PER_INCH, METRES_PER_INCH / 4];
const FAR_INCH_STEPS = [METRES_PER_FOOT, ...INCH_STEPS];

function trimmed(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}
