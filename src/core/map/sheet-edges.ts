/** What stands around the drawing on every map sheet: title, north, grid letters, bars. */
import type { LengthUnit } from "../model/length.ts";
import { longestRound, paperMm, ratioText } from "../page/drawing-ratio.ts";
import { cutToWidth } from "../page/flow.ts";
import { type MapGrid, columnLetters } from "./map-grid.ts";
import { TYPE_PT } from "./map-style.ts";
import { GRID_STRIP_MM, type PageFrame } from "../page/page-frame.ts";
import { MM_PER_INCH } from "../page/paper.ts";
import {
  type Box,
  type Mark,
  type PagePoint,
  type Pen,
  type TextRuler,
  area,
  boxRing,
  DECORATION,
  capHeight,
  figure,
  inPart,
  line,
  text,
} from "../page/scene.ts";
import type { SheetView } from "../page/sheet-view.ts";
import { keyWords } from "./map-words.ts";

const RULE: Pen = { widthMm: 0.25 };
const NORTH_ROOM_MM = 20;

/**
 * Title in bold, then one or two lines beneath; north arrow at the right. What is the same on
 * further pages is read once. @param chapter what the last line is the heading of, if it is one
 */
export function headerMarks(
  box: Box,
  title: string,
  lines: readonly string[],
  upBearingDeg: number | null,
  ruler: TextRuler,
): readonly Mark[] {
  const width = box.width - (upBearingDeg === null ? 0 : NORTH_ROOM_MM);
  const fitting = [TYPE_PT.title, 13, 11].find((size) => ruler.width(title, size, true) <= width);
  const size = fitting ?? 11;
  return [
    ...inPart({ role: "heading", level: 1, once: title }, [
      text({ x: box.left, y: box.top + 5 }, cutToWidth(title, width, size, ruler, true), size, {
        isBold: true,
      }),
    ]),
    ...lines.flatMap((words, index) =>
      inPart({ role: "paragraph", once: words }, [
        text(
          { x: box.left, y: box.top + 10.4 + index * 4.6 },
          cutToWidth(words, width, TYPE_PT.body, ruler),
          TYPE_PT.body,
        ),
      ]),
    ),
    ...(upBearingDeg === null
      ? []
      : northArrow({ x: box.left + box.width - 10, y: box.top + 9 }, upBearingDeg)),
  ];
}

/** An arrow to true north. With the sheet's up at 30 degrees, north lies 30 degrees to the left. */
export function northArrow(centre: PagePoint, upBearingDeg: number): readonly Mark[] {
  const angle = (-upBearingDeg * Math.PI) / 180;
  const place = (right: number, up: number): PagePoint => ({
    x: centre.x + right * Math.cos(angle) + up * Math.sin(angle),
    y: centre.y + right * Math.sin(angle) - up * Math.cos(angle),
  });
  const tip = place(0, 5);
  const notch = place(0, -4);
  const letter = place(0, 7.2);
  const box = { left: centre.x - 9, top: centre.y - 9, width: 18, height: 18 };
  return figure(northWords(upBearingDeg), box, [
    area([tip, place(-2.2, -6), notch], 1, RULE),
    area([tip, place(2.2, -6), notch], 0, RULE),
    text({ x: letter.x, y: letter.y + capHeight(TYPE_PT.body) / 2 }, "N", TYPE_PT.body, {
      isBold: true,
      align: "middle",
    }),
  ]);
}

function northWords(upBearingDeg: number): string {
  const turn = Math.round(((upBearingDeg % 360) + 360) % 360);
  return turn === 0 ? keyWords.northUp : keyWords.northTurned(turn);
}

/** Frame, ticks at the grid lines, letters above and below, numbers left and right. */
export function gridEdgeMarks(grid: MapGrid, view: SheetView): readonly Mark[] {
  const { box, window } = view;
  const step = grid.spacing.metres;
  const marks: Mark[] = [area(boxRing(box), null, { widthMm: 0.4 })];
  const firstColumn = Math.floor((window.minX - grid.left) / step + 1e-9);
  for (let column = firstColumn; grid.left + column * step < window.maxX; column += 1) {
    const from = Math.max(grid.left + column * step, window.minX);
    const to = Math.min(grid.left + (column + 1) * step, window.maxX);
    const edge = view.toPage({ x: from, y: window.maxY }).x;
    const end = view.toPage({ x: to, y: window.maxY }).x;
    if (from > window.minX) marks.push(...ticks("x", edge, box));
    if (end - edge > 4) marks.push(...edgeWords("x", (edge + end) / 2, columnLetters(column), box));
  }
  const firstRow = Math.floor((grid.top - window.maxY) / step + 1e-9);
  for (let row = firstRow; grid.top - row * step > window.minY; row += 1) {
    const from = Math.min(grid.top - row * step, window.maxY);
    const to = Math.max(grid.top - (row + 1) * step, window.minY);
    const edge = view.toPage({ x: window.minX, y: from }).y;
    const end = view.toPage({ x: window.minX, y: to }).y;
    if (from < window.maxY) marks.push(...ticks("y", edge, box));
    if (end - edge > 4) marks.push(...edgeWords("y", (edge + end) / 2, String(row + 1), box));
  }
  return marks;
}

function ticks(axis: "x" | "y", at: number, box: Box): readonly Mark[] {
  const across = (from: number, to: number) =>
    axis === "x"
      ? line(
          [
            { x: at, y: from },
            { x: at, y: to },
          ],
          RULE,
        )
      : line(
          [
            { x: from, y: at },
            { x: to, y: at },
          ],
          RULE,
        );
  const [near, far] =
    axis === "x" ? [box.top, box.top + box.height] : [box.left, box.left + box.width];
  return [across(near - 2.5, near + 1.5), across(far - 1.5, far + 2.5)];
}

function edgeWords(axis: "x" | "y", at: number, words: string, box: Box): readonly Mark[] {
  const drop = capHeight(TYPE_PT.small) / 2;
  const out = GRID_STRIP_MM / 2;
  const places: readonly PagePoint[] =
    axis === "x"
      ? [
          { x: at, y: box.top - out },
          { x: at, y: box.top + box.height + out },
        ]
      : [
          { x: box.left - out, y: at },
          { x: box.left + box.width + out, y: at },
        ];
  // Letters and numbers along the edge are read off the drawing by eye; rows name their square.
  return inPart(
    DECORATION,
    places.map(({ x, y }) => text({ x, y: y + drop }, words, TYPE_PT.small, { align: "middle" })),
  );
}

/** Small crosses where grid lines meet: the same places on every sheet that shows them. */
export function gridCrosses(grid: MapGrid, view: SheetView): readonly Mark[] {
  const step = grid.spacing.metres;
  const pen: Pen = { widthMm: 0.12 };
  const marks: Mark[] = [];
  const { window } = view;
  for (
    let x = grid.left + Math.ceil((window.minX - grid.left) / step) * step;
    x < window.maxX;
    x += step
  ) {
    for (
      let y = grid.top - Math.ceil((grid.top - window.maxY) / step) * step;
      y > window.minY;
      y -= step
    ) {
      const at = view.toPage({ x, y });
      marks.push(
        line(
          [
            { x: at.x - 1.2, y: at.y },
            { x: at.x + 1.2, y: at.y },
          ],
          pen,
        ),
        line(
          [
            { x: at.x, y: at.y - 1.2 },
            { x: at.x, y: at.y + 1.2 },
          ],
          pen,
        ),
      );
    }
  }
  return marks;
}

/** Scale bar, and level and upright bars to check the printer with. */
export function barMarks(frame: PageFrame, ratio: number, unit: LengthUnit): readonly Mark[] {
  const { foot, sideBar, isFootInOneRow } = frame;
  const right = foot.left + foot.width;
  const checkLeft = isFootInOneRow ? right - 4 * MM_PER_INCH - 13 : foot.left + 1;
  return figure(keyWords.bars(ratioText(ratio, unit)), foot, [
    ...scaleBar({ x: foot.left + 1, y: foot.top + 5 }, ratio, unit),
    ...checkBars({ x: checkLeft, y: foot.top + (isFootInOneRow ? 0 : 12) }),
    ...uprightCheckBars(sideBar),
  ]);
}

function scaleBar(at: PagePoint, ratio: number, unit: LengthUnit): readonly Mark[] {
  const whole = longestRound(60, ratio, unit);
  const parts = String(whole.count).replace(/[0.]/g, "") === "2" ? 4 : 5;
  const length = paperMm(whole.metres, ratio);
  const label = (share: number, words: string) =>
    text({ x: at.x + length * share, y: at.y - 1.4 }, words, TYPE_PT.small, {
      align: share === 0 ? "left" : "middle",
    });
  return [
    ...Array.from({ length: parts }, (_, index) =>
      area(
        boxRing({
          left: at.x + (length * index) / parts,
          top: at.y,
          width: length / parts,
          height: 1.8,
        }),
        index % 2 === 0 ? 0 : 1,
        RULE,
      ),
    ),
    label(0, "0"),
    label(1, `${whole.count} ${unit}`),
  ];
}

const CHECKS = [
  { words: "100 mm", length: 100 },
  { words: "4 in", length: 4 * MM_PER_INCH },
] as const;

function checkBars({ x, y }: PagePoint): readonly Mark[] {
  return [
    text({ x, y: y + 2.6 }, keyWords.checkBars, TYPE_PT.small),
    ...CHECKS.flatMap(({ words, length }, index) => {
      const level = y + 5.4 + index * 4;
      return [
        line(
          [
            { x, y: level },
            { x: x + length, y: level },
          ],
          RULE,
        ),
        ...[x, x + length].map((end) =>
          line(
            [
              { x: end, y: level - 1.2 },
              { x: end, y: level + 1.2 },
            ],
            RULE,
          ),
        ),
        text({ x: x + 103, y: level + 1 }, words, TYPE_PT.small),
      ];
    }),
  ];
}

function uprightCheckBars(box: Box): readonly Mark[] {
  const top = box.top + 9;
  return CHECKS.flatMap(({ words, length }, index) => {
    const x = box.left + 3.4 + index * 4;
    return [
      line(
        [
          { x, y: top },
          { x, y: top + length },
        ],
        RULE,
      ),
      ...[top, top + length].map((end) =>
        line(
          [
            { x: x - 1.2, y: end },
            { x: x + 1.2, y: end },
          ],
          RULE,
        ),
      ),
      text({ x: x + 1, y: top - 1.6 }, words, TYPE_PT.small, { turnDeg: -90 }),
    ];
  });
}
