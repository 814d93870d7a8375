/** Words of a PDF with the boxes that poppler finds for them in the file itself. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface PrintedWord {
  readonly text: string;
  /** Millimetres from the page's top left; the box goes from ascender to descender of the type. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const MM = 25.4 / 72;

export interface PrintedPage {
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  readonly words: readonly PrintedWord[];
}

/** Of each page, its words. */
export function printedWords(bytes: Uint8Array): readonly (readonly PrintedWord[])[] {
  return printedPages(bytes).map(({ words }) => words);
}

export function printedPages(bytes: Uint8Array): readonly PrintedPage[] {
  const folder = mkdtempSync(join(tmpdir(), "words-"));
  try {
    const path = join(folder, "pages.pdf");
    writeFileSync(path, bytes);
    const html = execFileSync("pdftotext", ["-bbox", "-enc", "UTF-8", path, "-"], {
      encoding: "utf8",
      maxBuffer: 1e8,
    });
    return html
      .split("<page ")
      .slice(1)
      .map((page) => {
        const [, width = 0, height = 0] = (SIZE.exec(page) ?? []).map((each) => Number(each) * MM);
        return { width, height, words: [...page.matchAll(WORD)].map(wordOf) };
      });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const SIZE = /^width="([\d.]+)" height="([\d.]+)"/;
const WORD =
  /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)<\/word>/g;

function wordOf(match: RegExpMatchArray): PrintedWord {
  const [left = 0, top = 0, right = 0, bottom = 0] = match
    .slice(1, 5)
    .map((each) => Number(each) * MM);
  const text = (match[5] ?? "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
  return { text, left, top, right, bottom };
}

/** Words of a page that come nearer to an edge than a margin; what is printed there may be lost. */
export function nearEdge(
  { width, height, words }: PrintedPage,
  marginMm: number,
): readonly string[] {
  return words
    .filter(
      ({ left, top, right, bottom }) =>
        left < marginMm || top < marginMm || right > width - marginMm || bottom > height - marginMm,
    )
    .map(({ text, left, top }) => `${text} at ${left.toFixed(1)}, ${top.toFixed(1)} mm`);
}

/** Room above capitals and below the line that the box of the type has and its letters have not. */
const EMPTY_SHARE = 0.2;

/** Pairs of words of a page whose letters lie on each other by more than a share of the smaller. */
export function overlaps(words: readonly PrintedWord[], share = 0.12): readonly string[] {
  const boxes = words.map((word) => {
    const cut = (word.bottom - word.top) * EMPTY_SHARE;
    return { ...word, top: word.top + cut, bottom: word.bottom - cut };
  });
  return boxes.flatMap((one, index) =>
    boxes.slice(index + 1).flatMap((other) => {
      const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      if (wide <= 0 || high <= 0) return [];
      const least = Math.min(
        ...[one, other].map((box) => (box.right - box.left) * (box.bottom - box.top)),
      );
      return wide * high > share * least
        ? [`${one.text} on ${other.text} at ${one.left.toFixed(0)}, ${one.top.toFixed(0)} mm`]
        : [];
    }),
  );
}
