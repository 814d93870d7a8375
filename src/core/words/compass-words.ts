/** Directions of the compass in words. */

/** North first, clockwise. */
const COMPASS: readonly string[] = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
];

/** Nearest of eight compass words for a true bearing in degrees clockwise from north. */
export function compassWord(bearingDeg: number): string {
  const turns = Math.round((((bearingDeg % 360) + 360) % 360) / 45) % 8;
  return COMPASS[turns] ?? "";
}
