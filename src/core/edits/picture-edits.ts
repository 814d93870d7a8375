/** The picture under the drawing: laid down, scaled by a known length, moved, taken away. */
import { joinBounds } from "../geometry/bounds.ts";
import { outlineOf } from "../geometry/outline.ts";
import { type Point, pointDistance } from "../geometry/point.ts";
import type { Layout, Picture, Plan } from "../model/plan.ts";
import { type Edit, patched } from "./edit.ts";
import * as steps from "../words/step-words.ts";

type Changes = { readonly [Key in keyof Picture]?: Picture[Key] | undefined };

/** Marks nearer to each other than this, in metres of the sheet as it stands, mark no length. */
const LEAST_MARK_M = 1e-6;
/** So strong at first that ink on its darkest or lightest spot still has a contrast of 3:1. */
export const FIRST_OPACITY = 0.45;
/** Ground a picture is laid over when nothing is drawn yet, metres across. */
const EMPTY_GROUND_M = 50;

/** What a picture file became, ready to be laid under the drawing. */
export type PictureFile = Pick<Picture, "name" | "data" | "mediaType" | "widthPx" | "heightPx">;

/** Lays a picture under the drawing, in the place of one that is there. */
export function putPicture(picture: Picture): Edit {
  return {
    title: steps.layPicture(picture.name),
    apply: (plan) => ({ ...plan, picture }),
  };
}

/** Changes fields of the picture; without a picture nothing changes. */
export function changePicture(changes: Changes, title: string): Edit {
  return {
    title,
    apply: (plan) =>
      plan.picture ? { ...plan, picture: patched<Picture>(plan.picture, changes) } : plan,
  };
}

export function removePicture(): Edit {
  return {
    title: steps.deletePicture,
    apply: (plan) => patched<Plan>(plan, { picture: undefined }),
  };
}

/** The picture over all that is drawn, upright, for the grower to scale; metres are a guess. */
export function pictureOver(file: PictureFile, plan: Plan, layout: Layout): Picture {
  const shapes = [
    ...(plan.site.outline ? [plan.site.outline] : []),
    ...layout.beds.map((bed) => bed.outline),
    ...layout.plantings.map((planting) => planting.outline),
  ];
  const bounds = joinBounds(shapes.map((shape) => outlineOf(shape).bounds)) ?? {
    minX: 0,
    minY: 0,
    maxX: EMPTY_GROUND_M,
    maxY: EMPTY_GROUND_M,
  };
  const perPixel = Math.max(
    (bounds.maxX - bounds.minX) / file.widthPx,
    (bounds.maxY - bounds.minY) / file.heightPx,
  );
  return {
    ...file,
    x: (bounds.minX + bounds.maxX) / 2,
    y: (bounds.minY + bounds.maxY) / 2,
    metresPerPixel: perPixel > 0 ? perPixel : EMPTY_GROUND_M / file.widthPx,
    turnDeg: 0,
    opacity: FIRST_OPACITY,
  };
}

/** Two marks on the picture, in sheet metres as it lies now. */
export type Marks = readonly [Point, Point];

/**
 * How many times larger the picture must be drawn so that its marks lie so far apart; null when
 * the marks lie on one spot or the length is nothing.
 */
export function pictureFactor(marks: Marks, lengthM: number): number | null {
  const marked = pointDistance(...marks);
  return marked > LEAST_MARK_M && lengthM > 0 ? lengthM / marked : null;
}

/** The picture made larger or smaller; the ground under a spot stays under it. */
export function scalePicture(picture: Picture, factor: number, about: Point): Edit {
  return changePicture(
    {
      x: about.x + (picture.x - about.x) * factor,
      y: about.y + (picture.y - about.y) * factor,
      metresPerPixel: picture.metresPerPixel * factor,
    },
    steps.scalePicture,
  );
}
