/** What trees, fences, slopes, buildings, water and diseases carry on paper besides their outline; mm. */
import { ringsContain } from "../page/label-box.ts";
import type { StyleName } from "./map-style.ts";
import { type Mark, type PagePoint, type Pen, area, line } from "../page/scene.ts";

const PEN: Pen = { widthMm: 0.35 };
const TRUNK_MM = 0.9;
const POST_MM = 0.8;
const POST_SPACING_MM = 4;
/** A fence so much longer than wide has its posts on its middle line. */
const LINE_RATIO = 4;
const ARROW_MOST_MM = 9;
const BARB_MM = 1.2;

/**
 * A cross where a trunk stands, posts along a fence, an arrow the way a slope falls.
 * @param ring its outer ring on the page; of a rectangle from the near left corner, clockwise
 */
export function groundMarks(style: StyleName, ring: readonly PagePoint[]): readonly Mark[] {
  switch (style) {
    case "tree":
      return crossMarks(middleOf(ring));
    case "fence":
      return fenceMarks(ring);
    case "slope":
      return arrowMarks(ring);
    case "building":
      return cornerMarks(ring);
    case "water":
      return waveMarks(ring);
    case "disease":
      return thornMarks(ring);
    default:
      return [];
  }
}

function crossMarks({ x, y }: PagePoint): readonly Mark[] {
  return [1, -1].map((turn) =>
    line(
      [
        { x: x - TRUNK_MM, y: y - TRUNK_MM * turn },
        { x: x + TRUNK_MM, y: y + TRUNK_MM * turn },
      ],
      PEN,
    ),
  );
}

function fenceMarks(ring: readonly PagePoint[]): readonly Mark[] {
  const runs = middleRun(ring) ?? ring.map((from, index) => [from, next(ring, index)] as const);
  return runs.flatMap(([from, to]) => {
    const run = distance(from, to);
    if (run < POST_SPACING_MM) return [];
    const across = {
      x: (-(to.y - from.y) / run) * POST_MM,
      y: ((to.x - from.x) / run) * POST_MM,
    };
    const posts = Math.round(run / POST_SPACING_MM);
    return Array.from({ length: posts + 1 }, (_, post) => {
      const at = between(from, to, post / posts);
      return line(
        [
          { x: at.x - across.x, y: at.y - across.y },
          { x: at.x + across.x, y: at.y + across.y },
        ],
        PEN,
      );
    });
  });
}

/** The middle line of a long narrow rectangle. */
function middleRun(
  ring: readonly PagePoint[],
): readonly (readonly [PagePoint, PagePoint])[] | null {
  const [a, b, c, d] = ring;
  if (!a || !b || !c || !d || ring.length !== 4) return null;
  const [side, end] = [distance(a, b), distance(b, c)];
  if (side >= end * LINE_RATIO) return [[between(a, d, 0.5), between(b, c, 0.5)]];
  if (end >= side * LINE_RATIO) return [[between(a, b, 0.5), between(d, c, 0.5)]];
  return null;
}

/** Down the length of a rectangle, from its near end; any other slope says it in its note. */
function arrowMarks(ring: readonly PagePoint[]): readonly Mark[] {
  const [a, b, c, d] = ring;
  if (!a || !b || !c || !d || ring.length !== 4) return [];
  const [near, far] = [between(a, d, 0.5), between(b, c, 0.5)];
  const run = distance(near, far);
  if (run === 0) return [];
  const reach = Math.min(run * 0.8, ARROW_MOST_MM) / 2;
  const middle = between(near, far, 0.5);
  const down = { x: (far.x - near.x) / run, y: (far.y - near.y) / run };
  const place = (along: number, across: number) => ({
    x: middle.x + down.x * along - down.y * across,
    y: middle.y + down.y * along + down.x * across,
  });
  const barb = Math.min(BARB_MM, reach);
  return [
    line([place(-reach, 0), place(reach, 0)], PEN),
    line([place(reach - barb, -barb), place(reach, 0), place(reach - barb, barb)], PEN),
  ];
}

const CORNER_MM = 3;

/** The first corner filled black: a building is no plot, also on a copy of a copy. */
function cornerMarks(ring: readonly PagePoint[]): readonly Mark[] {
  const [corner, after] = ring;
  const before = ring.at(-1);
  if (!corner || !after || !before) return [];
  const towards = (to: PagePoint) => {
    const run = distance(corner, to);
    return run === 0 ? corner : between(corner, to, Math.min(CORNER_MM, run / 2) / run);
  };
  return [area([corner, towards(after), towards(before)], 0, null)];
}

const WAVE = { lengthMm: 5, heightMm: 0.7, apartMm: 1.8 } as const;

/** Two short waves above the middle, where its name has room; none where they would leave it. */
function waveMarks(ring: readonly PagePoint[]): readonly Mark[] {
  const middle = middleOf(ring);
  const high = 2 * (middle.y - Math.min(...ring.map(({ y }) => y)));
  const waves = [0, 1].map((row) => {
    const level = middle.y - high * 0.3 + row * WAVE.apartMm;
    return Array.from({ length: 21 }, (_, step) => ({
      x: middle.x + (step / 20 - 0.5) * WAVE.lengthMm,
      y: level - Math.sin((step / 5) * Math.PI) * WAVE.heightMm,
    }));
  });
  return waves.every((wave) => wave.every((place) => ringsContain([ring], place)))
    ? waves.map((wave) => line(wave, { widthMm: 0.25 }))
    : [];
}

const THORN = { apartMm: 4.5, wideMm: 1.8, highMm: 1.7 } as const;

/**
 * Black thorns along the edge, pointing out: keep off. Outside, since within lie the hatch, the rows
 * and the code of whatever is planted there.
 */
function thornMarks(ring: readonly PagePoint[]): readonly Mark[] {
  const outwards = isClockwise(ring) ? 1 : -1;
  return ring.flatMap((from, index) => {
    const to = next(ring, index);
    const run = distance(from, to);
    if (run < THORN.wideMm) return [];
    const along = { x: (to.x - from.x) / run, y: (to.y - from.y) / run };
    const count = Math.max(1, Math.round(run / THORN.apartMm));
    return Array.from({ length: count }, (_, thorn) => {
      const middle = between(from, to, (thorn + 0.5) / count);
      const place = (forward: number, out: number): PagePoint => ({
        x: middle.x + along.x * forward + along.y * outwards * out,
        y: middle.y + along.y * forward - along.x * outwards * out,
      });
      const foot = THORN.wideMm / 2;
      return area([place(-foot, 0), place(foot, 0), place(0, THORN.highMm)], 0, null);
    });
  });
}

/** On a page, whose y runs down. */
function isClockwise(ring: readonly PagePoint[]): boolean {
  const twice = ring.reduce((sum, { x, y }, index) => {
    const to = next(ring, index);
    return sum + x * to.y - to.x * y;
  }, 0);
  return twice > 0;
}

function middleOf(ring: readonly PagePoint[]): PagePoint {
  const xs = ring.map(({ x }) => x);
  const ys = ring.map(({ y }) => y);
  return {
    x: (Math.min(...xs) + Math.max(...xs)) / 2,
    y: (Math.min(...ys) + Math.max(...ys)) / 2,
  };
}

function next(ring: readonly PagePoint[], index: number): PagePoint {
  return ring[(index + 1) % ring.length] as PagePoint;
}

function between(a: PagePoint, b: PagePoint, share: number): PagePoint {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

function distance(a: PagePoint, b: PagePoint): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
