/** Beds with their codes, stakes and fixed marks, not to a round ratio. */
import type { SetOut } from "../fieldwork/set-out.ts";
import type { StakeTies } from "../fieldwork/stake-ties.ts";
import { type Bounds, growBounds, joinBounds } from "../geometry/bounds.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { STAKE_RING_MM, stakeMarks } from "../map/stake-marks.ts";
import type { Layout } from "../model/plan.ts";
import type { FlowItem } from "../page/flow.ts";
import { type Ring, boxOf, labelBox } from "../page/label-box.ts";
import type { Ground } from "../page/label-places.ts";
import { type LabelPlacer, labelPlacer } from "../page/label-placer.ts";
import {
  type Box,
  type Mark,
  type PagePoint,
  type TextRuler,
  area,
  boxRing,
  capHeight,
  figure,
  line,
  text,
} from "../page/scene.ts";
import { type SheetView, sheetView } from "../page/sheet-view.ts";
import { setOutWords } from "./page-words.ts";

const MOST_HIGH_MM = 84;
const CODE_PT = TYPE_PT.small;
/** A mark farther off than this share of the sketch would leave the beds too small. */
const MARK_REACH = 0.6;
const EDGE_MM = 7;

export function setOutSketch(
  layout: Layout,
  { p, q }: SetOut,
  ties: StakeTies | null,
  widthMm: number,
  ruler: TextRuler,
): FlowItem {
  const items = [...layout.beds, ...layout.plantings].map(({ outline }) => outlineOf(outline));
  const ground = joinBounds([...items.map(({ bounds }) => bounds), boundsOf(p), boundsOf(q)]);
  const marks = (ties?.marks ?? []).map(({ place }) => place);
  const whole = ground && withMarks(ground, marks);
  if (!whole) return { height: 0, draw: () => [] };
  const [width, height] = [whole.maxX - whole.minX, whole.maxY - whole.minY];
  const mmPerMetre = Math.min(
    (widthMm - 2 * EDGE_MM) / width,
    (MOST_HIGH_MM - 2 * EDGE_MM) / height,
  );
  const window = growBounds(whole, EDGE_MM / mmPerMetre);
  const size = {
    width: width * mmPerMetre + 2 * EDGE_MM,
    height: height * mmPerMetre + 2 * EDGE_MM,
  };
  return {
    height: size.height + 2,
    draw: (left, top) => {
      const view = sheetView(window, { left, top, ...size }, 1000 / mmPerMetre);
      const words = setOutWords.sketch(layout.beds.map(({ code }) => code).join(", "));
      const drawn = sketchMarks(
        layout,
        { p, q, marks: marks.filter((each) => isIn(each, window)) },
        view,
        ruler,
      );
      return figure(words, view.box, drawn);
    },
  };
}

function boundsOf({ x, y }: Point): Bounds {
  return { minX: x, maxX: x, minY: y, maxY: y };
}

function isIn({ x, y }: Point, { minX, maxX, minY, maxY }: Bounds): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}

/** With the fixed marks that are near enough to be drawn. */
function withMarks(ground: Bounds, marks: readonly Point[]): Bounds | null {
  const reach = MARK_REACH * Math.max(ground.maxX - ground.minX, ground.maxY - ground.minY);
  const near = marks.filter((mark) => isIn(mark, growBounds(ground, reach)));
  return joinBounds([ground, ...near.map(boundsOf)]) ?? null;
}

interface Places {
  readonly p: Point;
  readonly q: Point;
  readonly marks: readonly Point[];
}

function sketchMarks(
  layout: Layout,
  { p, q, marks }: Places,
  view: SheetView,
  ruler: TextRuler,
): readonly Mark[] {
  const grounds = [
    ...layout.beds,
    ...layout.plantings.filter((each) => !isOnBed(each, layout)),
  ].map(({ id, code, outline }) => ({
    code,
    ground: groundOf(id, view.ringsOf(outlineOf(outline))),
  }));
  const [from, to] = [view.toPage(p), view.toPage(q)];
  const placer = labelPlacer(
    view.box,
    grounds.map(({ ground }) => ground),
  );
  takePlaces(
    placer,
    from,
    to,
    marks.map((mark) => view.toPage(mark)),
  );
  return [
    ...grounds.map(({ ground }): Mark => ({
      kind: "area",
      rings: ground.rings,
      fill: null,
      hatch: null,
      pen: { widthMm: 0.25 },
    })),
    // From ring to ring, so that no letter is struck through.
    line(
      [
        { x: from.x + STAKE_RING_MM, y: from.y },
        { x: to.x - STAKE_RING_MM, y: to.y },
      ],
      { widthMm: 0.2, dashMm: [2, 1] },
    ),
    ...stakeMarks("P", from, "below"),
    ...stakeMarks("Q", to, "below"),
    ...marks.flatMap((mark, index) => fixedMarkMarks(String(index + 1), view.toPage(mark), from)),
    ...grounds.flatMap(({ code, ground }) => codeMarks(code, ground, placer, ruler)),
  ];
}

/** Codes keep off the line between the stakes, the stakes with their letters, and the marks. */
function takePlaces(
  placer: LabelPlacer,
  from: PagePoint,
  to: PagePoint,
  marks: readonly PagePoint[],
): void {
  const middle = { x: (from.x + to.x) / 2, y: from.y + 1 };
  placer.firstFree([labelBox(middle, to.x - from.x + 2 * STAKE_RING_MM, 4, 0)]);
  for (const mark of marks) placer.firstFree([labelBox(mark, 7, 3.4, 0)]);
}

function isOnBed({ bed }: Layout["plantings"][number], { beds }: Layout): boolean {
  return beds.some(({ id }) => id === bed);
}

function groundOf(id: string, rings: readonly Ring[]): Ground {
  return { id, rings, box: boxOf(rings[0] as Ring), isPlanted: false, isSymbol: false };
}

function codeMarks(
  code: string,
  ground: Ground,
  placer: LabelPlacer,
  ruler: TextRuler,
): readonly Mark[] {
  const size = {
    width: ruler.width(code, CODE_PT, true) + 1,
    height: capHeight(CODE_PT) + 1,
  };
  const placed =
    placer.inside(ground, size) ??
    placer.turned(ground, size) ??
    placer.beside(ground, size) ??
    placer.apart(ground, size);
  if (!placed) return [];
  const { label, leader } = placed;
  const angle = (label.turnDeg * Math.PI) / 180;
  const drop = capHeight(CODE_PT) / 2;
  const at = {
    x: label.centre.x - Math.sin(angle) * drop,
    y: label.centre.y + Math.cos(angle) * drop,
  };
  return [
    ...(leader ? [line(leader, { widthMm: 0.2 })] : []),
    text(at, code, CODE_PT, { isBold: true, align: "middle", turnDeg: label.turnDeg }),
  ];
}

/** A cross in a box, with the number it has in the words. */
function fixedMarkMarks(number: string, { x, y }: PagePoint, stake: PagePoint): readonly Mark[] {
  // On the side away from stake P, which may stand close by.
  const side = x < stake.x ? -1 : 1;
  const half = 1.3;
  const box: Box = { left: x - half, top: y - half, width: 2 * half, height: 2 * half };
  const pen = { widthMm: 0.3 };
  return [
    area(boxRing(box), 1, pen),
    ...[1, -1].map((turn) =>
      line(
        [
          { x: x - half, y: y - half * turn },
          { x: x + half, y: y + half * turn },
        ],
        pen,
      ),
    ),
    text({ x: x + side * (half + 0.8), y: y + capHeight(TYPE_PT.body) / 2 }, number, TYPE_PT.body, {
      isBold: true,
      align: side < 0 ? "right" : "left",
    }),
  ];
}
