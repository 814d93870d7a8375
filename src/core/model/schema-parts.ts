/** The small schemas that plan files are made of. Lengths are metres; dates are day numbers inside. */
import { z } from "zod/mini";
import { dayFromIso, isoFromDay } from "./day.ts";
import { LIMITS, MAX_COORDINATE_M } from "./limits.ts";

/**
 * An object whose unknown fields survive reading and writing. The runtime schema is loose; the
 * static type stays exact so that a mistyped field name is still an error in our own code.
 */
export function record<Fields extends z.core.$ZodLooseShape>(
  fields: Fields,
): z.ZodMiniObject<Fields, z.core.$strip> {
  return z.looseObject(fields) as z.ZodMiniObject<Fields, z.core.$strip>;
}

/** A number from the least to the most. */
export function between(least: number, most: number) {
  return z.number().check(z.gte(least), z.lte(most));
}

/** A whole number from the least to the most. */
export function whole(least: number, most: number) {
  return z.int().check(z.gte(least), z.lte(most));
}

/** A number above 0, up to the most. */
export function moreThanZero(most: number) {
  return z.number().check(z.gt(0), z.lte(most));
}

/** A list of at most so many items. */
export function listOf<Item extends z.core.SomeType>(item: Item, most: number, least = 0) {
  const list = z.array(item).check(z.maxLength(most));
  return least === 0 ? list : list.check(z.minLength(least));
}

export const id = z
  .string()
  .check(
    z.minLength(1),
    z.maxLength(64),
    z.regex(
      /^[A-Za-z0-9._:-]+$/,
      "expected an id of letters, digits, dot, dash, colon or underscore",
    ),
  );
export const name = z.string().check(z.maxLength(LIMITS.name));
export const note = z.string().check(z.maxLength(LIMITS.note));
export const metres = between(-MAX_COORDINATE_M, MAX_COORDINATE_M);
export const size = moreThanZero(MAX_COORDINATE_M);
export const distance = between(0, MAX_COORDINATE_M);
export const count = whole(0, 10_000_000);

/** ISO 8601 date in the file, day number inside. */
export const date = z.codec(z.string().check(z.meta({ format: "date" })), z.int(), {
  decode: (text, context) => {
    const day = dayFromIso(text);
    if (day !== null) return day;
    context.issues.push({
      code: "custom",
      input: text,
      message: "expected a real date as YYYY-MM-DD",
    });
    return z.NEVER;
  },
  encode: isoFromDay,
});

const inOrder = z.refine<{ readonly first: number; readonly last: number }>(
  (window) => window.first <= window.last,
  { message: "expected the last day not to be before the first" },
);

/** On what days of bloom rest that came with a file as another program's forecast. */
export const forecastBases = ["published", "planned end", "rule of thumb"] as const;

/** Days of bloom; without a basis they are the grower's own. */
export const bloomDays = record({
  first: date,
  last: date,
  basis: z.optional(z.enum(forecastBases)),
}).check(inOrder);

/** [least, most] whole days, from a least number on. */
export function dayRangeFrom(least: number) {
  const days = whole(least, 1000);
  return z
    .tuple([days, days])
    .check(
      z.refine(([from, to]) => from <= to, { message: "expected [least, most] with least first" }),
    );
}
export const dayRange = dayRangeFrom(0);

export const corner = z.tuple([metres, metres]);
export const ring = listOf(corner, LIMITS.corners, 3);
