/** Paints the marks of a page with pdfkit, each in the part of the document it belongs to. */
import type { PDFDocument } from "pdfkit";
import { hatchMarks } from "./hatch-marks.ts";
import { boxOf } from "./label-box.ts";
import type { PdfFaces } from "./pdf-faces.ts";
import type { PdfStructure } from "./pdf-structure.ts";
import {
  type AreaMark,
  type CircleMark,
  DECORATION,
  type GroupMark,
  type ImageMark,
  MM_PER_POINT,
  type Mark,
  type PagePoint,
  type Part,
  type Pen,
  type TextMark,
} from "./scene.ts";

export interface Painter {
  readonly pdf: PDFDocument;
  readonly faces: PdfFaces;
  readonly structure: PdfStructure;
}

/** @param within part of the group the marks stand in */
export function paintMarks(painter: Painter, marks: readonly Mark[], within?: Part): void {
  for (const mark of marks) {
    const part = mark.part ?? within;
    if (mark.kind === "group") paintGroup(painter, mark, part);
    else {
      painter.structure.enter(part ?? partAlone(mark));
      paintMark(painter, mark);
    }
  }
}

function partAlone(mark: Mark): Part {
  return mark.kind === "text" && mark.text !== "" ? { role: "paragraph" } : DECORATION;
}

/** Clips begin and end between parts: what is opened inside a clip is closed inside it. */
function paintGroup(painter: Painter, { clip, marks }: GroupMark, part?: Part): void {
  const { pdf, structure } = painter;
  structure.leave();
  pdf.save();
  pdf.rect(clip.left, clip.top, clip.width, clip.height).clip();
  paintMarks(painter, marks, part);
  structure.leave();
  pdf.restore();
}

function paintMark({ pdf, faces }: Painter, mark: Exclude<Mark, GroupMark>): void {
  switch (mark.kind) {
    case "line":
      tracePath(pdf, mark.points);
      setPen(pdf, mark.pen);
      pdf.stroke();
      break;
    case "area":
      paintArea(pdf, mark);
      break;
    case "circle":
      paintCircle(pdf, mark);
      break;
    case "text":
      paintText(pdf, faces, mark);
      break;
    case "image":
      paintImage(pdf, mark);
      break;
  }
}

function paintCircle(pdf: PDFDocument, { centre, radiusMm, fill, pen }: CircleMark): void {
  if (fill !== null) pdf.circle(centre.x, centre.y, radiusMm).fillColor(grey(fill)).fill();
  if (!pen) return;
  pdf.circle(centre.x, centre.y, radiusMm);
  setPen(pdf, pen);
  pdf.stroke();
}

function paintArea(pdf: PDFDocument, { rings, fill, hatch, pen }: AreaMark): void {
  const trace = () => {
    for (const ring of rings) {
      tracePath(pdf, ring);
      pdf.closePath();
    }
  };
  if (fill !== null) {
    trace();
    pdf.fillColor(grey(fill)).fill("even-odd");
  }
  if (hatch) {
    pdf.save();
    trace();
    pdf.clip("even-odd");
    for (const mark of hatchMarks(hatch, boxOf(rings[0] ?? []))) paintHatchMark(pdf, mark);
    pdf.restore();
  }
  if (pen) {
    trace();
    setPen(pdf, pen);
    pdf.stroke();
  }
}

/** A hatch is lines and dots, of the part its area belongs to. */
function paintHatchMark(pdf: PDFDocument, mark: Mark): void {
  if (mark.kind === "circle") paintCircle(pdf, mark);
  else if (mark.kind === "line") {
    tracePath(pdf, mark.points);
    setPen(pdf, mark.pen);
    pdf.stroke();
  } else throw new Error(`A hatch with a mark of the kind ${mark.kind}.`);
}

function tracePath(pdf: PDFDocument, points: readonly PagePoint[]): void {
  points.forEach(({ x, y }, index) => (index === 0 ? pdf.moveTo(x, y) : pdf.lineTo(x, y)));
}

function setPen(pdf: PDFDocument, { widthMm, grey: level = 0, dashMm }: Pen): void {
  pdf.lineWidth(widthMm).strokeColor(grey(level)).lineCap("butt").lineJoin("miter");
  if (dashMm) pdf.dash(dashMm);
  else pdf.undash();
}

function paintText(pdf: PDFDocument, { runs, ruler }: PdfFaces, mark: TextMark): void {
  if (mark.text === "") return;
  const width = mark.align === "left" ? 0 : ruler.width(mark.text, mark.sizePt, mark.isBold);
  let x = mark.at.x - (mark.align === "middle" ? width / 2 : width);
  // Lines of one paragraph are read on without a break: a space keeps their words apart.
  const words = mark.part !== undefined && mark.align === "left" ? `${mark.text} ` : mark.text;
  pdf.save().fillColor(grey(0));
  if (mark.turnDeg !== 0) pdf.rotate(mark.turnDeg, { origin: [mark.at.x, mark.at.y] });
  for (const run of runs(words, mark.isBold)) {
    pdf.font(run.face).fontSize(mark.sizePt * MM_PER_POINT);
    pdf.text(run.words, x, mark.at.y, { lineBreak: false, baseline: "alphabetic" });
    x += pdf.widthOfString(run.words);
  }
  pdf.restore();
}

function paintImage(pdf: PDFDocument, mark: ImageMark): void {
  const { centre, widthMm: width, heightMm: height } = mark;
  pdf.save().fillOpacity(mark.opacity);
  pdf.rotate(mark.turnDeg, { origin: [centre.x, centre.y] });
  pdf.image(mark.dataUrl, centre.x - width / 2, centre.y - height / 2, { width, height });
  pdf.restore();
}

/** RGB 0 to 255 of a grey from 0 black to 1 white. */
function grey(level: number): readonly [number, number, number] {
  const value = Math.round(level * 255);
  return [value, value, value];
}
