/** A hatch spread over a box on the page. Anchored to the page, so neighbouring areas join up. */
import type { Hatch, HatchLines, HatchMarks } from "./hatch.ts";
import { type Box, type CircleMark, type LineMark, type Pen, line } from "./scene.ts";

/** Hatch units are quarter millimetres on paper. */
export const HATCH_UNIT_MM = 0.25;
const HATCH_PEN: Pen = { widthMm: 0.18 };

/** Lines and dots that cover the box and reach over its edges; the caller clips them. */
export function hatchMarks(hatch: Hatch, box: Box): readonly (LineMark | CircleMark)[] {
  return [
    ...hatch.lines.flatMap((lines) => hatchLines(lines, box)),
    ...(hatch.marks ? latticeMarks(hatch.marks, box) : []),
  ];
}

function hatchLines({ angleDeg, spacing, dash }: HatchLines, box: Box): readonly LineMark[] {
  const angle = (angleDeg * Math.PI) / 180;
  // The page's y runs down, so an anticlockwise angle turns the other way.
  const along = { x: Math.cos(angle), y: -Math.sin(angle) };
  const across = { x: Math.sin(angle), y: Math.cos(angle) };
  const step = spacing * HATCH_UNIT_MM;
  const dashMm = dash?.map((length) => length * HATCH_UNIT_MM);
  const period = dashMm?.reduce((sum, length) => sum + length, 0) ?? 0;
  const [alongMin, alongMax] = extent(along, box);
  const [acrossMin, acrossMax] = extent(across, box);
  const from = period > 0 ? Math.floor(alongMin / period) * period : alongMin;
  const pen: Pen = dashMm ? { ...HATCH_PEN, dashMm } : HATCH_PEN;
  const lines: LineMark[] = [];
  for (let index = Math.ceil(acrossMin / step); index * step <= acrossMax; index += 1) {
    const place = (distance: number) => ({
      x: across.x * index * step + along.x * distance,
      y: across.y * index * step + along.y * distance,
    });
    lines.push(line([place(from), place(alongMax)], pen));
  }
  return lines;
}

/** Least and greatest place of a box's corners along a direction. */
function extent(direction: { readonly x: number; readonly y: number }, box: Box) {
  const places = [box.left, box.left + box.width].flatMap((x) =>
    [box.top, box.top + box.height].map((y) => x * direction.x + y * direction.y),
  );
  return [Math.min(...places), Math.max(...places)] as const;
}

function latticeMarks(
  { mark, spacing, radius }: HatchMarks,
  box: Box,
): readonly (LineMark | CircleMark)[] {
  const step = spacing * HATCH_UNIT_MM;
  const size = radius * HATCH_UNIT_MM;
  const rowStep = step * Math.sqrt(0.75);
  const found: (LineMark | CircleMark)[] = [];
  const lastRow = Math.floor((box.top + box.height + size) / rowStep);
  for (let row = Math.ceil((box.top - size) / rowStep); row <= lastRow; row += 1) {
    const shift = Math.abs(row % 2) * 0.5;
    const last = Math.floor((box.left + box.width + size) / step - shift);
    for (let index = Math.ceil((box.left - size) / step - shift); index <= last; index += 1) {
      found.push(...latticeMark(mark, (index + shift) * step, row * rowStep, size));
    }
  }
  return found;
}

function latticeMark(
  mark: HatchMarks["mark"],
  x: number,
  y: number,
  size: number,
): readonly (LineMark | CircleMark)[] {
  if (mark === "plus") {
    return [
      line(
        [
          { x: x - size, y },
          { x: x + size, y },
        ],
        HATCH_PEN,
      ),
      line(
        [
          { x, y: y - size },
          { x, y: y + size },
        ],
        HATCH_PEN,
      ),
    ];
  }
  const isDot = mark === "dot";
  return [
    {
      kind: "circle",
      centre: { x, y },
      radiusMm: size,
      fill: isDot ? 0 : null,
      pen: isDot ? null : HATCH_PEN,
    },
  ];
}
