/**
 * Places on earth as people write them: decimal degrees, degrees with minutes and seconds, with
 * letters or signs, one coordinate or both (ISO 6709, annexes D and H, and what maps print).
 */

export type Axis = "latitude" | "longitude";

export type PositionText =
  /** Degrees, north and east positive; the axes that the text tells. */
  | { readonly ok: true; readonly latitude?: number; readonly longitude?: number }
  | { readonly ok: false; readonly reason: string };

const LIMIT: Readonly<Record<Axis, number>> = { latitude: 90, longitude: 180 };
const AXIS_OF: ReadonlyMap<string, Axis> = new Map([
  ["N", "latitude"],
  ["S", "latitude"],
  ["E", "longitude"],
  ["W", "longitude"],
]);
const LONGEST = 80;
const EXPECTED =
  "Type degrees, such as 51.42, 51.42 N or 51 25 12 N; or latitude and longitude with a comma between";

const failed = (reason: string = EXPECTED): PositionText => ({ ok: false, reason });

/**
 * Reads one coordinate or both.
 * @param axis what a single number without a letter is
 */
export function readPosition(text: string, axis: Axis): PositionText {
  const plain = plainText(text);
  if (plain === "" || plain.length > LONGEST) return failed();
  const parts = inTwo(plain);
  if (!parts) return readOne(plain, axis);
  const [first, second] = parts;
  const one = readOne(first, "latitude");
  if (!one.ok) return one;
  const isLatitudeFirst = one.latitude !== undefined;
  const other = readOne(second, isLatitudeFirst ? "longitude" : "latitude");
  if (!other.ok) return other;
  const both = { ...one, ...other };
  return both.latitude === undefined || both.longitude === undefined
    ? failed("Both numbers are of one axis: latitude is N or S, longitude E or W")
    : both;
}

/** Signs, quotes and spaces as one writes them by machine. */
function plainText(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/[\u2212\u2013]/g, "-")
    .replace(/[\u2032\u2019\u02b9]/g, "'")
    .replace(/[\u2033\u201d\u02ba]/g, '"')
    .replace(/\s+/g, " ")
    .trim()
    .toUpperCase();
}

/** The two coordinates of a pair; null where the text is one. */
function inTwo(plain: string): readonly [string, string] | null {
  return atSeparator(plain) ?? atLetters(plain) ?? atSign(plain) ?? atSpace(plain);
}

/** `51.42, -0.35` or `51,42; -0,35`. */
function atSeparator(plain: string): readonly [string, string] | null {
  const mark = plain.includes(";") ? ";" : ",";
  const pieces = plain.split(mark).map((piece) => piece.trim());
  const [first, second] = pieces;
  if (pieces.length !== 2 || !first || !second) return null;
  // A comma alone between digits is a decimal one: 51,42.
  if (mark === "," && !plain.includes(".") && !plain.includes(", ") && !/[NSEW]/.test(plain))
    return null;
  return [first, second];
}

/** `51 25 12 N 0 21 0 W` or `N 51.42 W 0.35`. */
function atLetters(plain: string): readonly [string, string] | null {
  const letters = plain.split("").flatMap((letter, at) => (AXIS_OF.has(letter) ? [at] : []));
  const [first, second] = letters;
  if (letters.length !== 2 || first === undefined || second === undefined) return null;
  const cut = first === 0 ? second : first + 1;
  return [plain.slice(0, cut).trim(), plain.slice(cut).trim()];
}

/** `+51.42-000.35/`, as ISO 6709 writes both. */
function atSign(plain: string): readonly [string, string] | null {
  const body = plain.endsWith("/") ? plain.slice(0, -1) : plain;
  const at = Math.max(body.indexOf("+", 1), body.indexOf("-", 1));
  if (at < 1) return null;
  return [body.slice(0, at).trim(), body.slice(at).trim()];
}

/** `51.42 0.35`: the first has decimals, so the second cannot be its minutes. */
function atSpace(plain: string): readonly [string, string] | null {
  const pieces = plain.split(" ");
  const [first, second] = pieces;
  if (pieces.length !== 2 || !first || !second || /[NSEW]/.test(plain)) return null;
  return /[.,]\d/.test(first) ? [first, second] : null;
}

function readOne(text: string, axis: Axis): PositionText {
  const letters = text.split("").filter((letter) => AXIS_OF.has(letter));
  const [letter] = letters;
  if (letters.length > 1) return failed();
  const told = letter === undefined ? axis : (AXIS_OF.get(letter) ?? axis);
  const body = (letter === undefined ? text : text.replace(letter, " ")).trim();
  const degrees = degreesOf(body);
  if (degrees === null) return failed();
  if (letter !== undefined && body.startsWith("-")) {
    return failed(`A minus and ${letter} say the same twice: leave one out`);
  }
  const value = letter === "S" || letter === "W" ? -degrees : degrees;
  if (Math.abs(value) > LIMIT[told]) {
    return failed(
      `${told === "latitude" ? "Latitude" : "Longitude"} goes to ${LIMIT[told]} degrees`,
    );
  }
  return { ok: true, [told]: value };
}

/** Degrees, or degrees and minutes, or these and seconds: only the last may have decimals. */
function degreesOf(body: string): number | null {
  const isNegative = body.startsWith("-");
  const numbers = body
    .replace(/^[+-]/, "")
    .replace(/[°:'"]/g, " ")
    .trim()
    .split(/\s+/)
    .map((piece) => piece.replace(",", "."));
  if (numbers.length > 3) return null;
  const isRead = numbers.every((piece, index) =>
    index < numbers.length - 1 ? /^\d{1,3}$/.test(piece) : /^\d{1,3}(?:\.\d{1,12})?$/.test(piece),
  );
  if (!isRead) return null;
  const [degrees = 0, minutes = 0, seconds = 0] = numbers.map(Number);
  if (minutes >= 60 || seconds >= 60) return null;
  const value = degrees + minutes / 60 + seconds / 3600;
  return isNegative ? -value : value;
}
