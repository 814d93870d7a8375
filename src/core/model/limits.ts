/** Which plan file this is, and limits of what it may hold. A module of its own, so that workers need no schemas for them. */

export const PLAN_FORMAT = "wideberth-plan";
export const PLAN_VERSION = 3;

/** Largest coordinate or size, metres: a plan covers some fields, not a country. */
export const MAX_COORDINATE_M = 100_000;
export const LIMITS = {
  /** Forty years: enough to tell how often a season brings two blooms together. */
  recordedDays: 40 * 366,
  name: 200,
  note: 4000,
  corners: 2000,
  items: 20_000,
  kinds: 500,
  adjustments: 20,
  places: 500,
  lotRefs: 50,
  /** Pollen sources in the isolation record of one lot. */
  isolationSources: 200,
  entries: 100_000,
  stays: 100,
  tests: 200,
  overwintered: 100,
  /** Characters of a picture's base64: about 3 MB of file. */
  pictureText: 4_000_000,
} as const;
