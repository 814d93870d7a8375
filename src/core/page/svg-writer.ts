/**
 * Scene to SVG: the same marks as the PDF. Only plain shapes and text are written, and the picture
 * under the drawing within the file: no scripts, no styles, no links, nothing that is fetched;
 * names are escaped.
 */
import { hatchMarks } from "./hatch-marks.ts";
import { boxOf } from "./label-box.ts";
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
  boxRing,
} from "./scene.ts";
import { xmlText } from "../formats/xml-text.ts";

/** The face is named, not embedded; where it is missing, words are fitted to the same widths. */
const FACE = "'Noto Sans', 'Liberation Sans', Arial, sans-serif";

/**
 * One page as an SVG file; a unit is a millimetre.
 * @param title for readers that do not see it
 * @param part some marks of the page and the box they stand in; absent: the whole page
 */
export function svgPage(
  page: Page,
  title: string,
  ruler: TextRuler,
  part: { readonly marks: readonly Mark[]; readonly box: Box } = {
    marks: page.marks,
    box: { left: 0, top: 0, width: page.widthMm, height: page.heightMm },
  },
): string {
  const clips: string[] = [];
  const body = part.marks.map((mark) => markElement(mark, ruler, clips)).join("");
  const [left, top, width, height] = [
    part.box.left,
    part.box.top,
    part.box.width,
    part.box.height,
  ].map(number);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${left} ${top} ${width} ${height}" role="img">`,
    `<title>${xmlText(title)}</title>`,
    `<defs>${clips.join("")}</defs>`,
    `<rect x="${left}" y="${top}" width="${width}" height="${height}" fill="#fff"/>`,
    `${body}</svg>\n`,
  ].join("\n");
}

function markElement(mark: Mark, ruler: TextRuler, clips: string[]): string {
  switch (mark.kind) {
    case "line":
      return `<path d="${path(mark.points)}" fill="none"${stroke(mark.pen)}/>\n`;
    case "area":
      return areaElement(mark, ruler, clips);
    case "circle":
      return `<circle cx="${number(mark.centre.x)}" cy="${number(mark.centre.y)}" r="${number(mark.radiusMm)}" fill="${mark.fill === null ? "none" : grey(mark.fill)}"${mark.pen ? stroke(mark.pen) : ""}/>\n`;
    case "text":
      return textElement(mark, ruler);
    case "image":
      return imageElement(mark);
    case "group": {
      const clip = clipTo([boxRing(mark.clip)], clips);
      const inside = mark.marks.map((each) => markElement(each, ruler, clips)).join("");
      return `<g clip-path="url(#${clip})">\n${inside}</g>\n`;
    }
  }
}

function imageElement(mark: ImageMark): string {
  const { centre, widthMm, heightMm } = mark;
  const turn =
    mark.turnDeg === 0
      ? ""
      : ` transform="rotate(${number(mark.turnDeg)} ${number(centre.x)} ${number(centre.y)})"`;
  return `<image x="${number(centre.x - widthMm / 2)}" y="${number(centre.y - heightMm / 2)}" width="${number(widthMm)}" height="${number(heightMm)}" preserveAspectRatio="none" opacity="${number(mark.opacity)}"${turn} href="${xmlText(mark.dataUrl)}"/>\n`;
}

function areaElement({ rings, fill, hatch, pen }: AreaMark, ruler: TextRuler, clips: string[]) {
  const d = rings.map((ring) => `${path(ring)}Z`).join("");
  const filled = fill === null ? "" : `<path d="${d}" fill="${grey(fill)}" fill-rule="evenodd"/>\n`;
  const hatched = hatch
    ? `<g clip-path="url(#${clipTo(rings, clips)})">\n${hatchMarks(hatch, boxOf(rings[0] ?? []))
        .map((mark) => markElement(mark, ruler, clips))
        .join("")}</g>\n`
    : "";
  const edged = pen ? `<path d="${d}" fill="none"${stroke(pen)}/>\n` : "";
  return filled + hatched + edged;
}

function clipTo(rings: readonly (readonly PagePoint[])[], clips: string[]): string {
  const id = `clip-${clips.length + 1}`;
  const d = rings.map((ring) => `${path(ring)}Z`).join("");
  clips.push(`<clipPath id="${id}"><path d="${d}" clip-rule="evenodd"/></clipPath>`);
  return id;
}

function textElement(mark: TextMark, ruler: TextRuler): string {
  const words = xmlText(mark.text);
  if (words === "") return "";
  const { x, y } = mark.at;
  const anchor = { left: "start", middle: "middle", right: "end" }[mark.align];
  const width = ruler.width(mark.text, mark.sizePt, mark.isBold);
  const turn =
    mark.turnDeg === 0
      ? ""
      : ` transform="rotate(${number(mark.turnDeg)} ${number(x)} ${number(y)})"`;
  return `<text x="${number(x)}" y="${number(y)}" font-family="${FACE}" font-size="${number(mark.sizePt * MM_PER_POINT)}"${mark.isBold ? ' font-weight="700"' : ""} text-anchor="${anchor}" textLength="${number(width)}" lengthAdjust="spacingAndGlyphs"${turn}>${words}</text>\n`;
}

function path(points: readonly PagePoint[]): string {
  return points
    .map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${number(x)} ${number(y)}`)
    .join("");
}

function stroke({ widthMm, grey: level = 0, dashMm }: Pen): string {
  const dash = dashMm ? ` stroke-dasharray="${dashMm.map(number).join(" ")}"` : "";
  return ` stroke="${grey(level)}" stroke-width="${number(widthMm)}"${dash}`;
}

function grey(level: number): string {
  const part = Math.round(level * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${part}${part}${part}`;
}

/** To the micrometre. */
function number(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
