/** Schemas of what lies under the plan: crops of earlier years, and a picture to draw on. */
import { z } from "zod";
import { LIMITS } from "./limits.ts";
import { id, metres, name, note, record, size } from "./schema-parts.ts";
import { area } from "./shape-schema.ts";

/** What grew on a piece of ground in an earlier year: its seed may still come up there. */
export const earlierCrop = record({
  id,
  outline: area,
  kind: id,
  varietyName: name.optional(),
  /** Calendar year it was harvested, or shed seed. */
  year: z.int().min(1900).max(2200),
  note: note.optional(),
});

/** A photo or sketch that lies under the drawing, to scale. */
export const picture = record({
  name,
  /** Base64 of a JPEG or PNG file, made small and without the camera's notes. */
  data: z.string().min(1).max(LIMITS.pictureText),
  mediaType: z.enum(["image/jpeg", "image/png"]),
  widthPx: z.int().min(1).max(10_000),
  heightPx: z.int().min(1).max(10_000),
  /** Its middle, sheet metres. */
  x: metres,
  y: metres,
  metresPerPixel: size,
  /** Turn of its upper edge's outward direction, clockwise from the sheet's up. */
  turnDeg: z.number().min(-360).max(360).default(0),
  /** From 0, unseen, to 1. */
  opacity: z.number().min(0).max(1).default(0.6),
  isHidden: z.boolean().optional(),
  /** Printed on plot maps as well, unless it is hidden. */
  isPrinted: z.boolean().optional(),
  /** Is not moved, turned, resized or removed. */
  locked: z.boolean().optional(),
});
