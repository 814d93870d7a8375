/** A file's bytes to text, or why they are none: too many, not UTF-8, or plainly something else. */
import { type Read, refuse } from "../../core/model/problem.ts";

/** Largest file that is opened, bytes: some hundred times a large plan. */
export const MAX_FILE_BYTES = 20_000_000;

/** First bytes of things that get dropped by mistake. */
const SIGNATURES: readonly (readonly [string, string])[] = [
  ["\u0089PNG", "a PNG picture"],
  ["\u00FF\u00D8\u00FF", "a JPEG picture"],
  ["GIF8", "a GIF picture"],
  ["%PDF", "a PDF document"],
  ["PK\u0003\u0004", "a ZIP archive or office document"],
  ["\u001F\u008B", "a gzip archive"],
  ["\u00FF\u00FE", "text in UTF-16"],
  ["\u00FE\u00FF", "text in UTF-16"],
];

/**
 * @param wanted what the file should be, in words
 * @param isXmlFine whether it may be XML
 */
export async function textOfFile(
  file: File,
  wanted = "a plan file or GeoJSON",
  isXmlFine = false,
): Promise<Read<string>> {
  const fail = (got: string, expected: string) =>
    refuse({ file: file.name, object: "", field: "", got, expected });
  if (file.size > MAX_FILE_BYTES) {
    return fail(`${file.size} bytes`, `at most ${MAX_FILE_BYTES} bytes`);
  }
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return fail("a file that cannot be read (moved, deleted or not permitted)", wanted);
  }
  const start = String.fromCharCode(...new Uint8Array(bytes.slice(0, 8)));
  const other = SIGNATURES.find(([signature]) => start.startsWith(signature));
  if (other) return fail(other[1], `${wanted}, as text in UTF-8`);
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    const isXml = /^\s*</.test(text);
    return isXml && !isXmlFine ? fail("a web page or XML", wanted) : { ok: true, value: text };
  } catch {
    return fail("text that is not UTF-8", `${wanted}, as text in UTF-8`);
  }
}
