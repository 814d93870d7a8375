/** Scene to PDF: vector drawing and embedded type. The only place that knows pdfkit. */
import { PDFDocument } from "pdfkit";
import { hatchMarks } from "./hatch-marks.ts";
import {
  type AreaMark,
  type Box,
  type ImageMark,
  MM_PER_POINT,
  type Mark,
  type Page,
  type PagePoint,
  type Pen,
  type TextMark,
  type TextRuler,
} from "./scene.ts";

/** Font files (TrueType) as bytes; core reads no files. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface PdfWriter {
  readonly ruler: TextRuler;
  readonly addPage: (page: Page) => void;
  /** Ends the file and gives its bytes. */
  readonly finish: () => Promise<Uint8Array>;
}

/**
 * @param stamp when the file was made, as `2027-03-02 09:40` or `2027-03-02`; any other text
 * leaves the creation date out. The same pages and stamp give the same bytes.
 */
export function pdfWriter(title: string, stamp: string, fonts: PdfFonts): PdfWriter {
  const creation = creationDate(stamp);
  const pdf = new PDFDocument({
    autoFirstPage: false,
    font: null,
    lang: "en",
    displayTitle: true,
    margin: 0,
    info: { Title: title, Creator: "Wideberth", Producer: "Wideberth", CreationDate: creation },
  });
  if (creation.length === 0) Object.defineProperty(pdf.info, "CreationDate", { enumerable: false });
  pdf.registerFont("regular", fonts.regular).registerFont("bold", fonts.bold);
  const chunks: Uint8Array[] = [];
  const ended = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on("data", (chunk) => chunks.push(chunk));
    pdf.on("end", () => resolve(joined(chunks)));
    pdf.on("error", reject);
  });
  return {
    ruler: rulerOf(pdf),
    addPage: (page) => addPage(pdf, page),
    finish: () => {
      pdf.end();
      return ended;
    },
  };
}

/**
 * pdfkit stamps files by the clock unless it is given a date, and makes the file's id from it.
 * Core has no clock: this is the text of a PDF date that answers the two questions pdfkit asks.
 */
function creationDate(stamp: string): { readonly length: number } {
  const match = /^(\d{4})-(\d\d)-(\d\d)(?:[ T](\d\d):(\d\d))?/.exec(stamp);
  const [year, month, day, hour = "00", minute = "00"] = match?.slice(1) ?? [];
  const isDated = match !== null;
  return Object.assign(
    Object(isDated ? `D:${year}${month}${day}${hour}${minute}00` : "") as { length: number },
    {
      getTime: () => 0,
      toISOString: () => `${year}-${month}-${day}T${hour}:${minute}:00.000Z`,
    },
  );
}

function rulerOf(pdf: PDFDocument): TextRuler {
  const inFace = (isBold: boolean) => pdf.font(isBold ? "bold" : "regular");
  return {
    width: (text, sizePt, isBold = false) =>
      inFace(isBold).fontSize(sizePt).widthOfString(text) * MM_PER_POINT,
    canShow: (text) => {
      const { _font: face } = inFace(false);
      return Array.from(text).every((char) =>
        face.font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0),
      );
    },
  };
}

function addPage(pdf: PDFDocument, page: Page): void {
  const size = [page.widthMm / MM_PER_POINT, page.heightMm / MM_PER_POINT] as const;
  pdf.addPage({ size, margin: 0 });
  pdf.outline.addItem(page.name);
  // From here on one unit is a millimetre.
  pdf.save().scale(1 / MM_PER_POINT);
  drawMarks(pdf, page.marks);
  pdf.restore();
}

function drawMarks(pdf: PDFDocument, marks: readonly Mark[]): void {
  for (const mark of marks) {
    switch (mark.kind) {
      case "line":
        tracePath(pdf, mark.points);
        setPen(pdf, mark.pen);
        pdf.stroke();
        break;
      case "area":
        drawArea(pdf, mark);
        break;
      case "circle":
        if (mark.fill !== null) {
          pdf.circle(mark.centre.x, mark.centre.y, mark.radiusMm).fillColor(grey(mark.fill)).fill();
        }
        if (mark.pen) {
          pdf.circle(mark.centre.x, mark.centre.y, mark.radiusMm);
          setPen(pdf, mark.pen);
          pdf.stroke();
        }
        break;
      case "text":
        drawText(pdf, mark);
        break;
      case "image":
        drawImage(pdf, mark);
        break;
      case "group":
        pdf.save();
        pdf.rect(mark.clip.left, mark.clip.top, mark.clip.width, mark.clip.height).clip();
        drawMarks(pdf, mark.marks);
        pdf.restore();
        break;
    }
  }
}

function drawArea(pdf: PDFDocument, { rings, fill, hatch, pen }: AreaMark): void {
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
    drawMarks(pdf, hatchMarks(hatch, boxAround(rings[0] ?? [])));
    pdf.restore();
  }
  if (pen) {
    trace();
    setPen(pdf, pen);
    pdf.stroke();
  }
}

function boxAround(points: readonly PagePoint[]): Box {
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const left = Math.min(...xs);
  const top = Math.min(...ys);
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

function tracePath(pdf: PDFDocument, points: readonly PagePoint[]): void {
  points.forEach(({ x, y }, index) => (index === 0 ? pdf.moveTo(x, y) : pdf.lineTo(x, y)));
}

function setPen(pdf: PDFDocument, { widthMm, grey: level = 0, dashMm }: Pen): void {
  pdf.lineWidth(widthMm).strokeColor(grey(level)).lineCap("butt").lineJoin("miter");
  if (dashMm) pdf.dash(dashMm);
  else pdf.undash();
}

function drawText(pdf: PDFDocument, mark: TextMark): void {
  if (mark.text === "") return;
  pdf.font(mark.isBold ? "bold" : "regular").fontSize(mark.sizePt * MM_PER_POINT);
  const width = mark.align === "left" ? 0 : pdf.widthOfString(mark.text);
  const x = mark.at.x - (mark.align === "middle" ? width / 2 : width);
  pdf.save().fillColor(grey(0));
  if (mark.turnDeg !== 0) pdf.rotate(mark.turnDeg, { origin: [mark.at.x, mark.at.y] });
  pdf.text(mark.text, x, mark.at.y, { lineBreak: false, baseline: "alphabetic" });
  pdf.restore();
}

function drawImage(pdf: PDFDocument, mark: ImageMark): void {
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

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let offset = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, offset);
    offset += chunk.length;
  }
  return bytes;
}
