/** Marks of a label's side put where it lies on the sheet, upside down where it is folded over. */
import type { Box, Mark, PagePoint, Part } from "../page/scene.ts";

/** @param marks on a side whose corner is at 0, 0 */
export function turnedMarks(marks: readonly Mark[], side: Box, isTurned: boolean): readonly Mark[] {
  const move = ({ x, y }: PagePoint): PagePoint =>
    isTurned
      ? { x: side.left + side.width - x, y: side.top + side.height - y }
      : { x: side.left + x, y: side.top + y };
  const moveBox = ({ left, top, width, height }: Box): Box => {
    const corner = move(isTurned ? { x: left + width, y: top + height } : { x: left, y: top });
    return { left: corner.x, top: corner.y, width, height };
  };
  // Marks of one part stay of one part.
  const parts = new Map<Part, Part>();
  const partOf = (part: Part): Part => {
    const known = parts.get(part) ?? (part.box ? { ...part, box: moveBox(part.box) } : part);
    parts.set(part, known);
    return known;
  };
  const moved = (mark: Mark): Mark => {
    switch (mark.kind) {
      case "text":
        return { ...mark, at: move(mark.at), turnDeg: mark.turnDeg + (isTurned ? 180 : 0) };
      case "area":
        return { ...mark, rings: mark.rings.map((ring) => ring.map(move)) };
      case "line":
        return { ...mark, points: mark.points.map(move) };
      case "circle":
      case "image":
        return { ...mark, centre: move(mark.centre) };
      case "group":
        return { ...mark, clip: moveBox(mark.clip), marks: mark.marks.map(movedPart) };
    }
  };
  const movedPart = (mark: Mark): Mark => {
    const made = moved(mark);
    return mark.part ? { ...made, part: partOf(mark.part) } : made;
  };
  return marks.map(movedPart);
}
