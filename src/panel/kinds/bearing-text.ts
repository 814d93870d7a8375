/** Directions as people write them: degrees from north, letters or words of the compass. */

/** The sixteen points, clockwise from north. */
const POINTS = [
  "n",
  "nne",
  "ne",
  "ene",
  "e",
  "ese",
  "se",
  "sse",
  "s",
  "ssw",
  "sw",
  "wsw",
  "w",
  "wnw",
  "nw",
  "nnw",
] as const;
const DEGREES: ReadonlyMap<string, number> = new Map(
  POINTS.map((point, index) => [point, index * 22.5]),
);

/** Degrees clockwise from true north, 0 to below 360; null when the text is no direction. */
export function readBearing(text: string): number | null {
  const plain = text.trim().toLowerCase().replaceAll("°", "").trim();
  if (/^\d{1,3}(?:[.,]\d{1,6})?$/.test(plain)) {
    const degrees = Number(plain.replace(",", "."));
    return degrees <= 360 ? degrees % 360 : null;
  }
  const letters = plain
    .replaceAll("north", "n")
    .replaceAll("south", "s")
    .replaceAll("east", "e")
    .replaceAll("west", "w")
    .replaceAll("-", "")
    .replaceAll(" ", "");
  return DEGREES.get(letters) ?? null;
}
