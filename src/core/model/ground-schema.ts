/** Schemas of what lies under the plan: crops of earlier years, marks, and a picture to draw on. */
import { z } from "zod/mini";
import { LIMITS } from "./limits.ts";
import {
  between,
  date,
  id,
  listOf,
  metres,
  name,
  note,
  record,
  size,
  whole,
} from "./schema-parts.ts";
import { area } from "./shape-schema.ts";

export const wentToSeed = ["yes", "no", "unknown"] as const;
/** `record`: written down in the field; `plan`: only planned; `told`: remembered, or told by others. */
export const knownFrom = ["record", "plan", "told"] as const;

/** What grew on a piece of ground in an earlier year: its seed may still come up there. */
export const earlierCrop = record({
  id,
  outline: area,
  kind: id,
  varietyName: z.optional(name),
  /** Calendar year it was harvested, or shed seed. */
  year: whole(1900, 2200),
  /** Code of the plot it was, as on its stake. */
  code: z.optional(name),
  /** Whether it stood until it bore seed; left out: not known. */
  wentToSeed: z.optional(z.enum(wentToSeed)),
  /** Where this is known from; left out: not said. */
  knownFrom: z.optional(z.enum(knownFrom)),
  note: z.optional(note),
});

/**
 * Something in the ground that stays there: a disease seen on it once. It holds until the grower
 * takes the mark away.
 */
export const groundMark = record({
  id,
  outline: area,
  /** Id of a disease known here (core/ground/ground-diseases.ts), or another word. */
  disease: id,
  /** What it is called, for one that is not known here. */
  name: z.optional(name),
  /** Kinds it harms, for one that is not known here. */
  kinds: z.optional(listOf(id, LIMITS.kinds)),
  /** The day it was seen, or told by a test. */
  seenOn: date,
  note: z.optional(note),
});

/** A photo or sketch that lies under the drawing, to scale. */
export const picture = record({
  name,
  /** Base64 of a JPEG or PNG file, made small and without the camera's notes. */
  data: z.string().check(z.minLength(1), z.maxLength(LIMITS.pictureText)),
  mediaType: z.enum(["image/jpeg", "image/png"]),
  widthPx: whole(1, 10_000),
  heightPx: whole(1, 10_000),
  /** Its middle, sheet metres. */
  x: metres,
  y: metres,
  metresPerPixel: size,
  /** Turn of its upper edge's outward direction, clockwise from the sheet's up. */
  turnDeg: z._default(between(-360, 360), 0),
  /** From 0, unseen, to 1. */
  opacity: z._default(between(0, 1), 0.6),
  isHidden: z.optional(z.boolean()),
  /** Printed on plot maps as well, unless it is hidden. */
  isPrinted: z.optional(z.boolean()),
  /** Is not moved, turned, resized or removed. */
  locked: z.optional(z.boolean()),
});
