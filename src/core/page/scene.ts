/**
 * What is drawn on a page, before any file format: millimetres from the page's top left corner,
 * x to the right, y down. The same scene can become PDF or SVG.
 */
import type { Hatch } from "./hatch.ts";

/** A place on the page, millimetres. */
export interface PagePoint {
  readonly x: number;
  readonly y: number;
}

/** An upright box on the page, millimetres. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Pen {
  readonly widthMm: number;
  /** 0 is black, 1 is white. */
  readonly grey?: number;
  /** Lengths of strokes and gaps, mm; absent: unbroken. */
  readonly dashMm?: readonly number[];
}

/** What a part of a page is, for whoever hears or feels it instead of seeing it. */
export type PartRole =
  | "section"
  | "heading"
  | "paragraph"
  | "table"
  | "row"
  | "head cell"
  | "cell"
  | "figure"
  | "decoration";

/**
 * What marks belong to. One object is one part of the document, over pages too; parts are read in
 * the order they are first met. Words that belong to none are a paragraph each, and drawing that
 * belongs to none is decoration.
 */
export interface Part {
  readonly role: PartRole;
  /** What it is inside of; absent: the document. */
  readonly within?: Part;
  /** Of a heading, 1 for the title; a level is never skipped in the file. */
  readonly level?: 1 | 2 | 3;
  /** Said in place of a figure. */
  readonly alt?: string;
  /** Where a figure stands on its page. */
  readonly box?: Box;
  /** Read once: further parts of this name are decoration, as a title repeated on every page. */
  readonly once?: string;
}

/** Not read out. */
export const DECORATION: Part = { role: "decoration" };

interface PartMark {
  readonly part?: Part;
}

/** The marks as belonging to one part, whatever they belonged to before. */
export function inPart(part: Part, marks: readonly Mark[]): readonly Mark[] {
  return marks.map((mark) => ({ ...mark, part }));
}

/** A drawing with the words said in its place. */
export function figure(alt: string, box: Box, marks: readonly Mark[]): readonly Mark[] {
  return inPart({ role: "figure", alt, box }, marks);
}

export interface LineMark extends PartMark {
  readonly kind: "line";
  readonly points: readonly PagePoint[];
  readonly pen: Pen;
}

export interface AreaMark extends PartMark {
  readonly kind: "area";
  /** Outer ring, then holes; closed without repeating the first corner. */
  readonly rings: readonly (readonly PagePoint[])[];
  /** Grey of the ground, 0 black to 1 white; null leaves what lies beneath. */
  readonly fill: number | null;
  readonly hatch: Hatch | null;
  readonly pen: Pen | null;
}

export interface CircleMark extends PartMark {
  readonly kind: "circle";
  readonly centre: PagePoint;
  readonly radiusMm: number;
  readonly fill: number | null;
  readonly pen: Pen | null;
}

export interface TextMark extends PartMark {
  readonly kind: "text";
  /** On the baseline, at the left end, middle or right end of the text. */
  readonly at: PagePoint;
  readonly text: string;
  readonly sizePt: number;
  readonly isBold: boolean;
  readonly align: "left" | "middle" | "right";
  /** Degrees clockwise about `at`. */
  readonly turnDeg: number;
}

/** A picture of dots. */
export interface ImageMark extends PartMark {
  readonly kind: "image";
  readonly centre: PagePoint;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Degrees clockwise about its centre. */
  readonly turnDeg: number;
  /** 0 unseen to 1. */
  readonly opacity: number;
  /** A whole JPEG or PNG file as a `data:` address. */
  readonly dataUrl: string;
}

/** Marks seen only inside a box; those that belong to no part belong to its own. */
export interface GroupMark extends PartMark {
  readonly kind: "group";
  readonly clip: Box;
  readonly marks: readonly Mark[];
}

export type Mark = LineMark | AreaMark | CircleMark | TextMark | ImageMark | GroupMark;

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Shown in the list of pages, e.g. "Sheet 2". */
  readonly name: string;
  readonly marks: readonly Mark[];
}

/** Measures text; the font belongs to whoever writes the file. */
export interface TextRuler {
  /** Width in mm. */
  readonly width: (text: string, sizePt: number, isBold?: boolean) => number;
  /** Whether the font has a shape for every character. */
  readonly canShow: (text: string) => boolean;
}

export const MM_PER_POINT = 25.4 / 72;
/** Height of capitals as a share of the type size, for the plot map's face. */
export const CAP_HEIGHT = 0.714;

/** Height of capitals in mm. */
export function capHeight(sizePt: number): number {
  return sizePt * MM_PER_POINT * CAP_HEIGHT;
}

export function line(points: readonly PagePoint[], pen: Pen): LineMark {
  return { kind: "line", points, pen };
}

export function area(
  ring: readonly PagePoint[],
  fill: number | null,
  pen: Pen | null,
  hatch: Hatch | null = null,
): AreaMark {
  return { kind: "area", rings: [ring], fill, hatch, pen };
}

export interface TextStyle {
  readonly isBold?: boolean;
  readonly align?: TextMark["align"];
  readonly turnDeg?: number;
}

export function text(
  at: PagePoint,
  words: string,
  sizePt: number,
  style: TextStyle = {},
): TextMark {
  return {
    kind: "text",
    at,
    text: words,
    sizePt,
    isBold: style.isBold ?? false,
    align: style.align ?? "left",
    turnDeg: style.turnDeg ?? 0,
  };
}

export function boxRing({ left, top, width, height }: Box): readonly PagePoint[] {
  return [
    { x: left, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left, y: top + height },
  ];
}

/** Every mark, those inside groups included. */
export function allMarks(marks: readonly Mark[]): readonly Mark[] {
  return marks.flatMap((mark) => (mark.kind === "group" ? allMarks(mark.marks) : [mark]));
}
