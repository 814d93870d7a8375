/** Marks drawn a little smaller, type and lines with them, about one fixed point. */
import type { Box, Mark, PagePoint, Part, Pen } from "./scene.ts";

/** @param share of the size, 1 leaves all as it is @param about the point that stays */
export function scaledMarks(
  marks: readonly Mark[],
  about: PagePoint,
  share: number,
): readonly Mark[] {
  if (share === 1) return marks;
  const at = ({ x, y }: PagePoint): PagePoint => ({
    x: about.x + (x - about.x) * share,
    y: about.y + (y - about.y) * share,
  });
  const box = (each: Box) => scaledBox(each, at, share);
  // One object is one part of the document: it stays one.
  const parts = new Map<Part, Part>();
  const scaledPart = (part: Part): Part => {
    if (!part.box) return part;
    const made = parts.get(part) ?? { ...part, box: box(part.box) };
    parts.set(part, made);
    return made;
  };
  return marks.map((mark) => {
    const made = scaledMark(mark, at, share);
    return mark.part ? { ...made, part: scaledPart(mark.part) } : made;
  });
}

type Place = (point: PagePoint) => PagePoint;

function scaledMark(mark: Mark, at: Place, share: number): Mark {
  switch (mark.kind) {
    case "line":
      return { ...mark, points: mark.points.map(at), pen: scaledPen(mark.pen, share) };
    case "area":
      return {
        ...mark,
        rings: mark.rings.map((ring) => ring.map(at)),
        pen: mark.pen && scaledPen(mark.pen, share),
      };
    case "circle":
      return {
        ...mark,
        centre: at(mark.centre),
        radiusMm: mark.radiusMm * share,
        pen: mark.pen && scaledPen(mark.pen, share),
      };
    case "text":
      return { ...mark, at: at(mark.at), sizePt: mark.sizePt * share };
    case "image":
      return {
        ...mark,
        centre: at(mark.centre),
        widthMm: mark.widthMm * share,
        heightMm: mark.heightMm * share,
      };
    case "group":
      return {
        ...mark,
        clip: scaledBox(mark.clip, at, share),
        marks: mark.marks.map((each) => scaledMark(each, at, share)),
      };
  }
}

function scaledBox({ left, top, width, height }: Box, at: Place, share: number): Box {
  const corner = at({ x: left, y: top });
  return { left: corner.x, top: corner.y, width: width * share, height: height * share };
}

function scaledPen(pen: Pen, share: number): Pen {
  const dashMm = pen.dashMm?.map((length) => length * share);
  return { ...pen, widthMm: pen.widthMm * share, ...(dashMm ? { dashMm } : {}) };
}
