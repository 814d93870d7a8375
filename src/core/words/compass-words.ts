/** Directions of the compass in words. */

const [NORTH, EAST, SOUTH, WEST] = ["north", "east", "south", "west"] as const;
const between = (one: string, other: string) => `${one}-${other}`;

/** North first, clockwise. */
const COMPASS: readonly string[] = [
  NORTH,
  between(NORTH, EAST),
  EAST,
  between(SOUTH, EAST),
  SOUTH,
  between(SOUTH, WEST),
  WEST,
  between(NORTH, WEST),
];

/** Nearest of eight compass words for a true bearing in degrees clockwise from north. */
export function compassWord(bearingDeg: number): string {
  const turns = Math.round((((bearingDeg % 360) + 360) % 360) / 45) % 8;
  return COMPASS[turns] ?? "";
}
