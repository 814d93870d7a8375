/** The faces words are set in: the plot map's own, and one of the grower's for what it lacks. */
import type { PDFDocument } from "pdfkit";
import { MM_PER_POINT, type TextRuler } from "./scene.ts";

/** Font files (TrueType or OpenType) as bytes; core reads no files. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  /** Used for signs that the others lack; it has no bold of its own. */
  readonly extra?: Uint8Array;
}

/** Words that one face can set. */
interface Run {
  readonly face: string;
  readonly words: string;
}

/** Stands for a sign that no face has; itself in the plot map's face. */
const MISSING = "\uFFFD";

export interface PdfFaces {
  readonly runs: (words: string, isBold: boolean) => readonly Run[];
  readonly ruler: TextRuler;
}

/** Registers the faces with the file. */
export function pdfFaces(pdf: PDFDocument, fonts: PdfFonts): PdfFaces {
  pdf.registerFont("regular", fonts.regular).registerFont("bold", fonts.bold);
  if (fonts.extra) pdf.registerFont("extra", fonts.extra);
  const has = {
    regular: shown(pdf, "regular"),
    bold: shown(pdf, "bold"),
    extra: fonts.extra ? shown(pdf, "extra") : () => false,
  };
  const runs = (words: string, isBold: boolean): readonly Run[] => {
    const main = isBold ? "bold" : "regular";
    const chars = Array.from(words);
    if (chars.every(has[main])) return [{ face: main, words }];
    const made: { face: string; words: string }[] = [];
    for (const char of chars) {
      const isExtra = !has[main](char) && has.extra(char);
      const face = isExtra ? "extra" : main;
      const sign = isExtra || has[main](char) ? char : MISSING;
      const last = made.at(-1);
      // A space between two words of the other script stays with them.
      if (
        last &&
        (last.face === face || (char === " " && last.face === "extra" && has.extra(char)))
      )
        last.words += sign;
      else made.push({ face, words: sign });
    }
    return made;
  };
  return {
    runs,
    ruler: {
      width: (words, sizePt, isBold = false) =>
        runs(words, isBold).reduce(
          (sum, run) => sum + pdf.font(run.face).fontSize(sizePt).widthOfString(run.words),
          0,
        ) * MM_PER_POINT,
      canShow: (words) =>
        Array.from(words).every((char) => (has.regular(char) && has.bold(char)) || has.extra(char)),
    },
  };
}

/** Whether a face has a sign, kept for the next time. */
function shown(pdf: PDFDocument, face: string): (char: string) => boolean {
  const { _font: known } = pdf.font(face);
  const kept = new Map<string, boolean>();
  return (char) => {
    const found = kept.get(char);
    if (found !== undefined) return found;
    const is = known.font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0);
    kept.set(char, is);
    return is;
  };
}
