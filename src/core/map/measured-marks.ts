/** Lines between the nearest points of what is too close, each with its number in the list. */
import { labelBox } from "../page/label-box.ts";
import type { LabelPlacer } from "../page/label-placer.ts";
import type { Point } from "../geometry/point.ts";
import type { NumberedFinding } from "./map-items.ts";
import { styles } from "./map-style.ts";
import {
  type Mark,
  type PagePoint,
  type TextRuler,
  area,
  capHeight,
  line,
  text,
} from "../page/scene.ts";
import { type SheetView, clipLine } from "../page/sheet-view.ts";

const NUMBER_PT = 8;
const END_MM = 0.7;
/** Towards what no sheet shows, only this much of a line is drawn. */
const STUB_MM = 14;

/** With more than this on one sheet, lines and numbers would hide the plots: none is drawn. */
const MOST_ON_A_SHEET = 24;

export interface MeasuredMarks {
  readonly lines: readonly Mark[];
  readonly badges: readonly Mark[];
  readonly numbers: ReadonlySet<number>;
}

export function measuredMarks(
  measured: readonly NumberedFinding[],
  /** Whether some sheet shows a place. */
  isShown: (place: Point) => boolean,
  view: SheetView,
  placer: LabelPlacer,
  ruler: TextRuler,
): MeasuredMarks {
  const lines: Mark[] = [];
  const badges: Mark[] = [];
  const numbers = new Set<number>();
  const here = measured.flatMap(({ number, finding }) => {
    if (finding.where === undefined) return [];
    const drawn = measuredLine(finding.where, isShown, view);
    const seen = clipLine(drawn.from, drawn.to, view.box);
    return seen === null ? [] : [{ number, drawn, seen }];
  });
  for (const { number, drawn, seen } of here.length > MOST_ON_A_SHEET ? [] : here) {
    numbers.add(number);
    lines.push(line([drawn.from, drawn.to], styles.measure.pen), ...drawn.ends);
    badges.push(...badgeMarks(number, seen, placer, ruler));
  }
  return { lines, badges, numbers };
}

interface MeasuredLine {
  readonly from: PagePoint;
  readonly to: PagePoint;
  readonly ends: readonly Mark[];
}

/** From point to point; towards ground that no sheet shows, a short arrow. */
function measuredLine(
  where: readonly [Point, Point],
  isShown: (place: Point) => boolean,
  view: SheetView,
): MeasuredLine {
  const [here, there] = isShown(where[0]) ? where : [where[1], where[0]];
  const [from, to] = [view.toPage(here), view.toPage(there)];
  if (isShown(there)) return { from, to, ends: [ringEnd(from), ringEnd(to)] };
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const place = (forward: number, sideways: number) => ({
    x: from.x + along.x * forward - along.y * sideways,
    y: from.y + along.y * forward + along.x * sideways,
  });
  const tip = place(STUB_MM, 0);
  const head = area([tip, place(STUB_MM - 2.4, 0.9), place(STUB_MM - 2.4, -0.9)], 0, null);
  return { from, to: place(STUB_MM - 1, 0), ends: [ringEnd(from), head] };
}

function ringEnd(centre: PagePoint): Mark {
  return { kind: "circle", centre, radiusMm: END_MM, fill: 1, pen: styles.measure.pen };
}

/** The number in a ring on its line, or beside it where there is no room. */
function badgeMarks(
  number: number,
  seen: readonly [PagePoint, PagePoint],
  placer: LabelPlacer,
  ruler: TextRuler,
): readonly Mark[] {
  const size = badgeSize(number, ruler);
  const middle = between(...seen, 0.5);
  const places = badgePlaces(seen).map((place) => labelBox(place, size, size, 0));
  const { centre } = placer.firstFree(places) ?? labelBox(middle, size, size, 0);
  const isOnLine = clipLine(...seen, {
    left: centre.x - size / 2,
    top: centre.y - size / 2,
    width: size,
    height: size,
  });
  const leader: readonly Mark[] = isOnLine ? [] : [line([middle, centre], { widthMm: 0.2 })];
  return [...leader, ...badge(number, centre, ruler)];
}

/** The number of a finding in a ring, as on the map and in the list. */
export function badge(number: number, centre: PagePoint, ruler: TextRuler): readonly Mark[] {
  return [
    {
      kind: "circle",
      centre,
      radiusMm: badgeSize(number, ruler) / 2 - 0.2,
      fill: 1,
      pen: styles.measure.pen,
    },
    text({ x: centre.x, y: centre.y + capHeight(NUMBER_PT) / 2 }, String(number), NUMBER_PT, {
      isBold: true,
      align: "middle",
    }),
  ];
}

export function badgeSize(number: number, ruler: TextRuler): number {
  return Math.max(4.6, ruler.width(String(number), NUMBER_PT, true) + 2);
}

function badgePlaces(seen: readonly [PagePoint, PagePoint]): readonly PagePoint[] {
  const [from, to] = seen;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const across =
    length < 1e-6 ? { x: 0, y: 1 } : { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
  const shares = [0.5, 0.35, 0.65, 0.2, 0.8];
  return [0, 5, -5, 8, -8, 12, -12, 17, -17].flatMap((away) =>
    shares.map((share) => {
      const place = between(from, to, share);
      return { x: place.x + across.x * away, y: place.y + across.y * away };
    }),
  );
}

function between(from: PagePoint, to: PagePoint, share: number): PagePoint {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
