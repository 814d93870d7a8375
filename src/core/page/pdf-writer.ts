/** Scene to PDF: vector drawing, embedded type, and tags for readers that do not see the page. */
import { PDFDocument } from "pdfkit";
import { type PdfFonts, pdfFaces } from "./pdf-faces.ts";
import { xmpText } from "./pdf-metadata.ts";
import { type Painter, paintMarks } from "./pdf-painter.ts";
import { pdfStructure } from "./pdf-structure.ts";
import { MM_PER_POINT, type Page, type TextRuler } from "./scene.ts";

export type { PdfFonts } from "./pdf-faces.ts";

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
    pdfVersion: "1.7",
    subset: "PDF/UA",
    tagged: true,
    autoFirstPage: false,
    font: null,
    lang: "en",
    displayTitle: true,
    margin: 0,
    info: { Title: title, Creator: "Wideberth", Producer: "Wideberth", CreationDate: creation },
  });
  if (creation.length === 0) Object.defineProperty(pdf.info, "CreationDate", { enumerable: false });
  // pdfkit would write names with an ampersand into the XML as they are.
  Object.assign(pdf, {
    _addInfo: () =>
      pdf.appendXML(xmpText(title, creation.length === 0 ? "" : creation.toISOString())),
  });
  const faces = pdfFaces(pdf, fonts);
  const painter: Painter = { pdf, faces, structure: pdfStructure(pdf) };
  const chunks: Uint8Array[] = [];
  const ended = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on("data", (chunk) => chunks.push(chunk));
    pdf.on("end", () => resolve(joined(chunks)));
    pdf.on("error", reject);
  });
  return {
    ruler: faces.ruler,
    addPage: (page) => addPage(painter, page),
    finish: () => {
      pdf.end();
      return ended;
    },
  };
}

interface CreationDate {
  readonly length: number;
  readonly toISOString: () => string;
}

/**
 * pdfkit stamps files by the clock unless it is given a date, and makes the file's id from it.
 * Core has no clock: this is the text of a PDF date that answers the two questions pdfkit asks.
 */
function creationDate(stamp: string): CreationDate {
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

function addPage(painter: Painter, page: Page): void {
  const { pdf, structure } = painter;
  const size = [page.widthMm / MM_PER_POINT, page.heightMm / MM_PER_POINT] as const;
  pdf.addPage({ size, margin: 0 });
  pdf.outline.addItem(page.name);
  // From here on one unit is a millimetre.
  pdf.save().scale(1 / MM_PER_POINT);
  paintMarks(painter, page.marks);
  structure.leave();
  pdf.restore();
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
