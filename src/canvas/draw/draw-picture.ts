/** The picture under the drawing. */
import { bytesOfBase64, pictureHeader } from "../../core/model/picture-header.ts";
import type { Picture } from "../../core/model/plan.ts";
import type { Brush } from "./brush.ts";
import { toPx } from "../scene/viewport.ts";

/** Most dots that are decoded; a plan file may hold any picture. */
const MAX_DOTS = 100_000_000;

/** The picture's dots; null when the plan's data are no picture that can be shown. */
export async function decodedPicture(
  data: string,
  mediaType: Picture["mediaType"],
): Promise<ImageBitmap | null> {
  const bytes = bytesOfBase64(data);
  const header = bytes && pictureHeader(bytes);
  if (!bytes || !header || header.widthPx * header.heightPx > MAX_DOTS) return null;
  try {
    return await createImageBitmap(new Blob([bytes], { type: mediaType }));
  } catch {
    return null;
  }
}

export function drawPicture(brush: Brush, picture: Picture, dots: ImageBitmap): void {
  const { context, view } = brush;
  const middle = toPx(view, picture);
  const width = picture.widthPx * picture.metresPerPixel * view.scale;
  const height = picture.heightPx * picture.metresPerPixel * view.scale;
  context.save();
  context.globalAlpha = picture.opacity;
  context.translate(middle.x, middle.y);
  context.rotate((picture.turnDeg * Math.PI) / 180);
  context.drawImage(dots, -width / 2, -height / 2, width, height);
  context.restore();
}
