/**
 * The tags of a PDF: which marks are headings, paragraphs, tables and figures, in which order they
 * are read, and which are decoration. After ISO 32000-1, 14.6 to 14.8, and ISO 14289-1 (PDF/UA-1):
 * all content is tagged or decoration (7.1), headings skip no level (7.4.2), figures have words in
 * their place (7.3), head cells say what they head (7.5).
 */
import type { PDFDocument, StructElement, StructOptions } from "pdfkit";
import { MM_PER_POINT, type Part, type PartRole } from "./scene.ts";

const TAGS: Readonly<Record<Exclude<PartRole, "heading" | "decoration">, string>> = {
  section: "Sect",
  paragraph: "P",
  table: "Table",
  row: "TR",
  "head cell": "TH",
  cell: "TD",
  figure: "Figure",
};

export interface PdfStructure {
  /** What is painted from now on belongs to the part. */
  readonly enter: (part: Part) => void;
  /** Ends what is open: before clips, and at the end of a page. */
  readonly leave: () => void;
}

interface Known {
  readonly element: StructElement;
  readonly tag: string;
}

export function pdfStructure(pdf: PDFDocument): PdfStructure {
  const root = pdf.struct("Document");
  pdf.addStructure(root);
  const known = new Map<Part, Known>();
  const said = new Set<string>();
  let level = 0;
  let open: Part | null = null;

  const tagOf = ({ role, level: wanted = 3 }: Part): string => {
    if (role !== "heading") return TAGS[role as keyof typeof TAGS];
    level = Math.min(wanted, level + 1);
    return `H${level}`;
  };
  const elementOf = (part: Part): Known => {
    const found = known.get(part);
    if (found) return found;
    const tag = tagOf(part);
    const parent = part.within ? elementOf(part.within).element : root;
    const made = { element: pdf.struct(tag, optionsOf(part)), tag };
    parent.add(made.element);
    known.set(part, made);
    return made;
  };
  const isDecoration = (part: Part) => {
    if (part.role === "decoration") return true;
    if (part.once === undefined || known.has(part)) return false;
    const name = `${part.role} ${part.once}`;
    if (said.has(name)) return true;
    said.add(name);
    return false;
  };
  const leave = () => {
    if (open !== null) pdf.endMarkedContent();
    open = null;
  };
  return {
    leave,
    enter: (part) => {
      if (open === part) return;
      leave();
      open = part;
      if (isDecoration(part)) {
        pdf.markContent("Artifact", { type: "Layout" });
        return;
      }
      const { element, tag } = elementOf(part);
      element.add(pdf.markStructureContent(tag));
    },
  };
}

function optionsOf({ role, alt, box }: Part): StructOptions {
  if (role === "head cell") return { scope: "Column" };
  if (alt === undefined) return {};
  if (!box) return { alt };
  const { left, top, width, height } = box;
  const corners = [left, top, left + width, top + height].map((mm) => mm / MM_PER_POINT);
  return { alt, bbox: corners };
}
