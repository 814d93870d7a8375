/** The picture under the drawing as a mark on paper; only where the grower asked for it. */
import { bytesOfBase64, pictureHeader } from "../model/picture-header.ts";
import type { Picture } from "../model/plan.ts";
import type { ImageMark } from "../page/scene.ts";
import type { SheetView } from "../page/sheet-view.ts";

/** The plan's picture when it is to be printed and can be: a plan file may hold anything. */
export function printedPicture(picture: Picture | undefined): Picture | null {
  if (!picture || picture.isPrinted !== true || picture.isHidden === true) return null;
  const bytes = bytesOfBase64(picture.data);
  return bytes && pictureHeader(bytes)?.mediaType === picture.mediaType ? picture : null;
}

/** Where a picture lies on the page. */
export function pictureMark(picture: Picture, view: SheetView): ImageMark {
  const mmPerMetre = view.box.width / (view.window.maxX - view.window.minX);
  const mmPerPixel = picture.metresPerPixel * mmPerMetre;
  return {
    kind: "image",
    centre: view.toPage(picture),
    widthMm: picture.widthPx * mmPerPixel,
    heightMm: picture.heightPx * mmPerPixel,
    turnDeg: picture.turnDeg,
    opacity: picture.opacity,
    dataUrl: `data:${picture.mediaType};base64,${picture.data}`,
  };
}
