/** The picture under the drawing as a mark on paper; only where the grower asked for it. */
import { bytesOfBase64, pictureHeader } from "../model/picture-header.ts";
import type { Picture } from "../model/plan.ts";
import type { ImageMark } from "../page/scene.ts";
import type { SheetView } from "../page/sheet-view.ts";

/** Most dots that are unpacked for paper: 5,000 by 5,000 is 150 to the inch across an A0 sheet. */
const MOST_PRINTED_DOTS = 25_000_000;

/** Whether the grower wants the plan's picture on paper. */
export function isPictureWanted(picture: Picture | undefined): picture is Picture {
  return picture?.isPrinted === true && picture.isHidden !== true;
}

/** The plan's picture when it is to be printed and can be: a plan file may hold anything. */
export function printedPicture(picture: Picture | undefined): Picture | null {
  if (!isPictureWanted(picture)) return null;
  const bytes = bytesOfBase64(picture.data);
  const header = bytes && pictureHeader(bytes);
  if (header?.mediaType !== picture.mediaType) return null;
  return header.widthPx * header.heightPx <= MOST_PRINTED_DOTS ? picture : null;
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
