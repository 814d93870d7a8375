/** A picture that is to be printed and cannot be unpacked is refused before anything is written. */
import { printedPicture } from "../../core/map/picture-mark.ts";
import type { Picture } from "../../core/model/plan.ts";
import { Refusal } from "../refusal.ts";
import { pngFault } from "./whole-png.ts";

/** @param path of the plan, as given */
export function refusePictureFault(picture: Picture | undefined, path: string): void {
  const printed = printedPicture(picture);
  const fault = printed && pngFault(printed);
  if (fault === null) return;
  const file = path === "-" ? "stdin" : path;
  throw new Refusal([`${file}: picture.data: got ${fault}, expected a whole PNG picture.`]);
}
