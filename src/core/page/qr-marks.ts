/** A QR code as marks. The library makes the pattern; error correction Q, for a stake outdoors. */
import startCode from "qrcode-generator";
import { type Box, type Mark, area, boxRing } from "./scene.ts";

/** Empty modules all round that readers need. */
const QUIET = 4;
/** Smaller modules are not read by a telephone held in the hand. */
const LEAST_MODULE_MM = 0.4;
/** Signs of the alphanumeric mode, which takes the least room. */
const ALPHANUMERIC = /^[0-9A-Z $%*+\-./:]*$/;

/** Null when the code would not be read at that size. @param box a square */
export function qrMarks(words: string, box: Box): readonly Mark[] | null {
  const code = startCode(0, "Q");
  if (ALPHANUMERIC.test(words)) code.addData(words, "Alphanumeric");
  else code.addData(utf8(words), "Byte");
  code.make();
  const count = code.getModuleCount();
  const module = box.width / (count + 2 * QUIET);
  if (module < LEAST_MODULE_MM) return null;
  const marks: Mark[] = [area(boxRing(box), 1, null)];
  for (let row = 0; row < count; row += 1) {
    // Modules side by side are one bar: no hairlines between them.
    for (let from = 0; from < count; from += 1) {
      let to = from;
      while (to < count && code.isDark(row, to)) to += 1;
      if (to === from) continue;
      const bar = {
        left: box.left + (QUIET + from) * module,
        top: box.top + (QUIET + row) * module,
        width: (to - from) * module,
        height: module,
      };
      marks.push(area(boxRing(bar), 0, null));
      from = to;
    }
  }
  return marks;
}

/** Bytes of UTF-8 as signs of one byte each, which is what the library takes. */
function utf8(words: string): string {
  return encodeURIComponent(words.replace(/\p{Cs}/gu, "")).replace(/%([0-9A-F]{2})/g, (_, hex) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}
