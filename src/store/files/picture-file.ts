/**
 * A photo or sketch to the picture of a plan: looked at before it is decoded, turned upright, made
 * small, and drawn anew. Only its dots are kept: what a camera notes, its position above all, is
 * not carried over.
 */
import type { PictureFile } from "../../core/edits/picture-edits.ts";
import { type PictureHeader, pictureHeader } from "../../core/model/picture-header.ts";
import * as words from "./words.ts";

/** Largest file that is looked at, bytes. */
const MAX_BYTES = 60_000_000;
/** Most dots that are decoded: four bytes of memory each. */
const MAX_DOTS = 100_000_000;
/** Letters of base64 a picture should take at most: each kept copy of the plan holds it. */
const WANTED_LETTERS = 1_400_000;
/** Longer side in dots and quality, tried in turn. */
const TRIES = [
  [2000, 0.82],
  [2000, 0.65],
  [1600, 0.65],
  [1200, 0.65],
  [1000, 0.5],
] as const;

export type TakenPicture =
  | { readonly ok: true; readonly file: PictureFile; readonly notice: string }
  | { readonly ok: false; readonly reason: string };

export async function takePicture(file: File): Promise<TakenPicture> {
  const refuse = (reason: string): TakenPicture => ({
    ok: false,
    reason,
  });
  if (file.size > MAX_BYTES) {
    return refuse(words.pictureTooHeavy(file.name, megabytes(file.size), megabytes(MAX_BYTES)));
  }
  let header: PictureHeader | null;
  try {
    header = pictureHeader(new Uint8Array(await file.arrayBuffer()));
  } catch {
    return refuse(words.pictureUnreadable(file.name));
  }
  if (!header) return refuse(words.noPicture(file.name));
  const { widthPx, heightPx } = header;
  if (widthPx * heightPx > MAX_DOTS) {
    return refuse(words.pictureTooLarge(file.name, sizeText(widthPx, heightPx), MAX_DOTS / 1e6));
  }
  try {
    const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
    const made = madeSmall(bitmap);
    bitmap.close();
    return {
      ok: true,
      file: { name: shortName(file.name), mediaType: "image/jpeg", ...made },
      notice: words.pictureKept(
        file.name,
        `${sizeText(widthPx, heightPx)}, ${megabytes(file.size)}`,
        `${sizeText(made.widthPx, made.heightPx)}, ${megabytes(made.data.length * 0.75)}`,
      ),
    };
  } catch {
    return refuse(words.pictureDamaged(file.name));
  }
}

function madeSmall(bitmap: ImageBitmap): Pick<PictureFile, "data" | "widthPx" | "heightPx"> {
  const canvas = document.createElement("canvas");
  const context = canvas.getContext("2d");
  if (!context) throw new Error("No drawing surface");
  const longer = Math.max(bitmap.width, bitmap.height);
  let made = { data: "", widthPx: 0, heightPx: 0 };
  for (const [side, quality] of TRIES) {
    const share = Math.min(1, side / longer);
    const widthPx = Math.max(1, Math.round(bitmap.width * share));
    const heightPx = Math.max(1, Math.round(bitmap.height * share));
    Object.assign(canvas, { width: widthPx, height: heightPx });
    // JPEG knows no glass: what is see-through becomes paper.
    context.fillStyle = "#fff";
    context.fillRect(0, 0, widthPx, heightPx);
    context.imageSmoothingQuality = "high";
    context.drawImage(bitmap, 0, 0, widthPx, heightPx);
    const url = canvas.toDataURL("image/jpeg", quality);
    made = { data: url.slice(url.indexOf(",") + 1), widthPx, heightPx };
    if (made.data.length <= WANTED_LETTERS) break;
  }
  Object.assign(canvas, { width: 0, height: 0 });
  return made;
}

function shortName(name: string): string {
  return name.length > 80 ? `${name.slice(0, 77)}...` : name;
}

function sizeText(widthPx: number, heightPx: number): string {
  return words.pixels(widthPx, heightPx);
}

function megabytes(bytes: number): string {
  return bytes < 100_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
