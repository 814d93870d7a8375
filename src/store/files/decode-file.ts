/** A file's bytes to text, or why they are none: too many, not UTF-8, or plainly something else. */
import { type Read, refuse } from "../../core/model/problem.ts";
import * as words from "./words.ts";

/** Largest file that is opened, bytes: some hundred times a large plan. */
export const MAX_FILE_BYTES = 20_000_000;

/** First bytes of things that get dropped by mistake. */
const SIGNATURES: readonly (readonly [string, string])[] = [
  ["\u0089PNG", words.pngPicture],
  ["\u00FF\u00D8\u00FF", words.jpegPicture],
  ["GIF8", words.gifPicture],
  ["%PDF", words.pdfDocument],
  ["PK\u0003\u0004", words.zipArchive],
  ["\u001F\u008B", words.gzipArchive],
  ["\u00FF\u00FE", words.utf16Text],
  ["\u00FE\u00FF", words.utf16Text],
];

/**
 * @param wanted what the file should be, in words
 * @param isXmlFine whether it may be XML
 */
export async function textOfFile(
  file: File,
  wanted = words.planOrGeoJson,
  isXmlFine = false,
): Promise<Read<string>> {
  const fail = (got: string, expected: string) =>
    refuse({ file: file.name, object: "", field: "", got, expected });
  if (file.size > MAX_FILE_BYTES) {
    return fail(words.byteCount(file.size), words.atMostBytes(MAX_FILE_BYTES));
  }
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return fail(words.unreadable, wanted);
  }
  const start = String.fromCharCode(...new Uint8Array(bytes.slice(0, 8)));
  const other = SIGNATURES.find(([signature]) => start.startsWith(signature));
  if (other) return fail(other[1], words.asUtf8(wanted));
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    const isXml = /^\s*</.test(text);
    return isXml && !isXmlFine ? fail(words.webPage, wanted) : { ok: true, value: text };
  } catch {
    return fail(words.notUtf8, words.asUtf8(wanted));
  }
}
