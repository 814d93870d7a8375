/** Shapes on the sheet: rectangle, polygon, point. */
import { z } from "zod";
import { metres, record, ring, size } from "./schema-parts.ts";

/** Centre, size across and along, and the turn of the length clockwise from the sheet's up. */
export const rectangle = record({
  shape: z.literal("rectangle"),
  x: metres,
  y: metres,
  widthM: size,
  lengthM: size,
  turnDeg: z.number().min(-360).max(360),
});
/** Simple outline, corners in order either way round, first corner not repeated. */
export const polygon = record({
  shape: z.literal("polygon"),
  corners: ring,
  holes: z.array(ring).max(100).optional(),
});
export const point = record({ shape: z.literal("point"), x: metres, y: metres });

export const area = z.discriminatedUnion("shape", [rectangle, polygon]);
export const anyShape = z.discriminatedUnion("shape", [rectangle, polygon, point]);
