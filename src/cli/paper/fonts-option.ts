/** `--font FILE`: a face of the grower's own for signs that the program's has not. */
import { readFile } from "node:fs/promises";
import { faceFault, tryFace } from "../../core/page/face-check.ts";
import type { PdfFonts } from "../../core/page/pdf-faces.ts";
import { fileTrouble } from "../file-trouble.ts";
import { Refusal } from "../refusal.ts";

export const fontOption = { font: { type: "string" } } as const;

/** The program's faces, and the one of a file beside them when it is given. */
export async function facesOf(path: string | undefined): Promise<PdfFonts> {
  const { mapFonts } = await import("./font.ts");
  if (path === undefined) return mapFonts;
  let extra: Uint8Array;
  try {
    extra = new Uint8Array(await readFile(path));
  } catch (error) {
    throw new Refusal([`${path}: ${fileTrouble(error)}.`]);
  }
  try {
    const fault = faceFault(extra);
    if (fault !== null) throw new RangeError(fault);
    await tryFace(extra, mapFonts, ["A"]);
  } catch (error) {
    throw new Refusal([`${path}: ${error instanceof Error ? error.message : String(error)}.`]);
  }
  const { regular, bold } = mapFonts;
  return { regular, bold, extra };
}
