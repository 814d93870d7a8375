/** Words of a PDF with the boxes poppler finds for them, and what of each box is ink. */
import { textOf } from "./printed.ts";

export interface PdfWord {
  readonly page: number;
  readonly text: string;
  /** Type size, points. */
  readonly sizePt: number;
  /** Box of the letters from the top of capitals to the foot of descenders, mm. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const MM = 25.4 / 72;
/** Noto Sans (its hhea table): what poppler adds above and below the baseline, of the type size. */
const ASCENT = 1.069;
const DESCENT = 0.293;
/** Of the face itself: height of capitals, and depth of g, j, p, q and y. */
const CAPITAL = 0.714;
const DESCENDER = 0.24;

/** Level words only: those set turned have no box that says anything. */
export function wordsOf(bytes: Uint8Array): readonly PdfWord[] {
  const words: PdfWord[] = [];
  let page = 0;
  for (const line of textOf(bytes, "-bbox").split("\n")) {
    if (line.includes("<page ")) page += 1;
    const match =
      /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*)<\/word>/.exec(
        line,
      );
    if (!match) continue;
    const [xMin = 0, yMin = 0, xMax = 0, yMax = 0] = match.slice(1, 5).map(Number);
    const sizePt = (yMax - yMin) / (ASCENT + DESCENT);
    const baseline = yMin + ASCENT * sizePt;
    const below = /^[A-PR-Z0-9.-]+$/.test(match[5] ?? "") ? 0 : DESCENDER;
    words.push({
      page,
      text: match[5] ?? "",
      sizePt: Math.round(sizePt * 10) / 10,
      left: xMin * MM,
      right: xMax * MM,
      top: (baseline - CAPITAL * sizePt) * MM,
      bottom: (baseline + below * sizePt) * MM,
    });
  }
  return words;
}

/** Pairs of words of one page whose letters lie on each other by more than a hair. */
export function overlaps(words: readonly PdfWord[], hairMm = 0.05): readonly string[] {
  const found: string[] = [];
  for (const [index, one] of words.entries()) {
    for (const other of words.slice(index + 1)) {
      if (one.page !== other.page) continue;
      const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      if (across > hairMm && down > hairMm) found.push(`${one.text} / ${other.text}`);
    }
  }
  return found;
}
