/**
 * Whether a file is a face that can be printed with, after the OpenType specification (ISO/IEC
 * 14496-22): the header and table directory, and the rights in the OS/2 table. Setting a word with
 * it is the last proof.
 */
import { pdfWriter } from "./pdf-writer.ts";
import type { PdfFonts } from "./pdf-faces.ts";
import { text } from "./scene.ts";

const MOST_BYTES = 40_000_000;
/** First four bytes. */
const TRUETYPE = new Set(["\u0000\u0001\u0000\u0000", "true", "OTTO"]);
const OTHERS: ReadonlyMap<string, string> = new Map([
  ["ttcf", "a collection of several faces"],
  ["wOFF", "a face packed for the web (WOFF)"],
  ["wOF2", "a face packed for the web (WOFF2)"],
]);
const NEEDED = ["cmap", "head", "hhea", "hmtx", "maxp"];
/** Bit of fsType by which the maker forbids putting the face into a document. */
const RESTRICTED = 0x0002;
const EXPECTED = "expected a TrueType or OpenType face (.ttf, .otf)";

/** Why a file is no face that can be used, in words; null when it can be tried. */
export function faceFault(bytes: Uint8Array): string | null {
  if (bytes.length > MOST_BYTES) {
    return `got ${Math.ceil(bytes.length / 1e6)} MB, expected at most ${MOST_BYTES / 1e6} MB`;
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tag = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
  const first = tag(0);
  if (!TRUETYPE.has(first)) return `got ${OTHERS.get(first) ?? "some other file"}, ${EXPECTED}`;
  const tables = new Map<string, number>();
  const count = bytes.length < 12 ? 0 : view.getUint16(4);
  for (let index = 0; index < count; index += 1) {
    const at = 12 + index * 16;
    if (at + 16 > bytes.length) return `got a file that is cut short, ${EXPECTED}`;
    const [offset, length] = [view.getUint32(at + 8), view.getUint32(at + 12)];
    if (offset + length > bytes.length) return `got a file that is cut short, ${EXPECTED}`;
    tables.set(tag(at), offset);
  }
  const missing = NEEDED.filter((name) => !tables.has(name));
  if (missing.length > 0) return `got a face without ${missing.join(", ")}, ${EXPECTED}`;
  if (!tables.has("glyf") && !tables.has("CFF ")) {
    return `got a face without outlines, ${EXPECTED}`;
  }
  const rights = tables.get("OS/2");
  if (rights !== undefined && (view.getUint16(rights + 8) & 0x000f) === RESTRICTED) {
    return "got a face whose maker does not allow it in documents, expected one that may be put into them";
  }
  return null;
}

/**
 * Sets words with it beside the program's own. Throws with the reason when it cannot be used.
 * @param words names that are to be printed with it
 * @returns those of the names that still cannot be set
 */
export async function tryFace(
  extra: Uint8Array,
  fonts: Pick<PdfFonts, "regular" | "bold">,
  words: readonly string[],
): Promise<readonly string[]> {
  const fault = faceFault(extra);
  if (fault !== null) throw new RangeError(fault);
  try {
    const writer = pdfWriter("Face", "", { ...fonts, extra });
    const marks = words.map((each, index) => text({ x: 10, y: 10 + index * 5 }, each, 10));
    writer.addPage({ widthMm: 210, heightMm: 297, name: "Face", marks });
    await writer.finish();
    return words.filter((each) => !writer.ruler.canShow(each));
  } catch {
    throw new RangeError(`got a face that is damaged, ${EXPECTED}`);
  }
}
