/** The small schemas that plan files are made of. Lengths are metres; dates are day numbers inside. */
import { z } from "zod";
import { dayFromIso, isoFromDay } from "./day.ts";
import { LIMITS, MAX_COORDINATE_M } from "./limits.ts";

/**
 * An object whose unknown fields survive reading and writing. The runtime schema is loose; the
 * static type stays exact so that a mistyped field name is still an error in our own code.
 */
export function record<Fields extends z.core.$ZodLooseShape>(
  fields: Fields,
): z.ZodObject<Fields, z.core.$strip> {
  return z.looseObject(fields) as z.ZodObject<Fields, z.core.$strip>;
}

export const id = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[A-Za-z0-9._:-]+$/, "expected an id of letters, digits, dot, dash, colon or underscore");
export const name = z.string().max(LIMITS.name);
export const note = z.string().max(LIMITS.note);
export const metres = z.number().min(-MAX_COORDINATE_M).max(MAX_COORDINATE_M);
export const size = z.number().positive().max(MAX_COORDINATE_M);
export const distance = z.number().min(0).max(MAX_COORDINATE_M);
export const count = z.int().min(0).max(10_000_000);

/** ISO 8601 date in the file, day number inside. */
export const date = z.codec(z.string().meta({ format: "date" }), z.int(), {
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

export const dayWindow = record({ first: date, last: date }).refine(
  (window) => window.first <= window.last,
  {
    message: "expected the last day not to be before the first",
  },
);

/** [least, most] whole days, from a least number on. */
export function dayRangeFrom(least: number) {
  const days = z.int().min(least).max(1000);
  return z
    .tuple([days, days])
    .refine(([from, to]) => from <= to, { message: "expected [least, most] with least first" });
}
export const dayRange = dayRangeFrom(0);

export const corner = z.tuple([metres, metres]);
export const ring = z.array(corner).min(3).max(LIMITS.corners);
