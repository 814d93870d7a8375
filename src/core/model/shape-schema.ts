/** Shapes on the sheet: rectangle, polygon, point. */
import { z } from "zod/mini";
import { between, listOf, metres, record, ring, size } from "./schema-parts.ts";

/** Centre, size across and along, and the turn of the length clockwise from the sheet's up. */
export const rectangle = record({
  shape: z.literal("rectangle"),
  x: metres,
  y: metres,
  widthM: size,
  lengthM: size,
  turnDeg: between(-360, 360),
});
/** Simple outline, corners in order either way round, first corner not repeated. */
export const polygon = record({
  shape: z.literal("polygon"),
  corners: ring,
  holes: z.optional(listOf(ring, 100)),
});
export const point = record({ shape: z.literal("point"), x: metres, y: metres });

export const area = z.discriminatedUnion("shape", [rectangle, polygon]);
export const anyShape = z.discriminatedUnion("shape", [rectangle, polygon, point]);
