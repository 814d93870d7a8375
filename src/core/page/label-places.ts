/** Where the words of a thing may go: turns they are read in, places inside, beside and around it. */
import { type LabelBox, type Ring, directions, labelBox, ringsContain } from "./label-box.ts";
import type { Box, PagePoint } from "./scene.ts";

/** Something drawn that words must keep off, or be put into. */
export interface Ground {
  readonly id: string;
  readonly rings: readonly Ring[];
  readonly box: Box;
  /** Plantings are never covered by other things' words; beds only when nothing else is left. */
  readonly isPlanted: boolean;
  /** A sign for a point: its words stand level beside it. */
  readonly isSymbol: boolean;
}

/** Width and height of a label's box, mm. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

/** Between a label and what it stands beside, mm. */
const GAP_MM = 0.8;
const LEADER_MM = { least: 5, most: 60, step: 2.5 };

/** Text turns to try: along the ground's longest edge or across it, the nearer to level first; level last. */
export function readableTurns(ground: Ground): readonly number[] {
  const along = longestEdge(ground).turnDeg;
  const [flatter, steeper] = flatterFirst(along);
  return [flatter, 0, steeper];
}

/** A direction and the one across it as text turns, the nearer to level first. */
function flatterFirst(turnDeg: number): readonly [number, number] {
  const [one, other] = [uprightTurn(turnDeg), uprightTurn(turnDeg + 90)];
  return Math.abs(one) <= Math.abs(other) ? [one, other] : [other, one];
}

export function longestEdge({ rings: [ring = []] }: Ground) {
  let longest = 0;
  let turnDeg = 0;
  ring.forEach((to, index) => {
    const from = ring.at(index - 1) as PagePoint;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length <= longest * (1 + 1e-6)) return;
    longest = length;
    turnDeg = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  });
  return { length: longest, turnDeg };
}

/** The same line of text, read from below or from the right: above -90 up to 90 degrees. */
function uprightTurn(turnDeg: number): number {
  const turn = ((turnDeg % 180) + 180) % 180;
  const level = turn > 90 + 1e-6 ? turn - 180 : turn;
  // Straight up the page reads from the right, as maps are lettered.
  return Math.abs(level - 90) < 1e-6 ? -90 : level;
}

/** Places inside the ground and the box, the middle first, then outwards. */
export function anchorsOf({ rings, box }: Ground, limit: Box): readonly PagePoint[] {
  const steps = 9;
  const middle = { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  const places: PagePoint[] = [middle];
  for (let row = 0; row < steps; row += 1) {
    for (let column = 0; column < steps; column += 1) {
      places.push({
        x: box.left + (box.width * (column + 0.5)) / steps,
        y: box.top + (box.height * (row + 0.5)) / steps,
      });
    }
  }
  const away = (place: PagePoint) => Math.hypot(place.x - middle.x, place.y - middle.y);
  return places
    .filter(
      (place) =>
        place.x > limit.left &&
        place.x < limit.left + limit.width &&
        place.y > limit.top &&
        place.y < limit.top + limit.height &&
        ringsContain(rings, place),
    )
    .sort((a, b) => away(a) - away(b));
}

/** Boxes just off the ground's edges, short edges first: at the ends of a bed, then along its sides. */
export function besideBoxes(ground: Ground, size: LabelSize): readonly LabelBox[] {
  if (ground.isSymbol) return besideSymbol(ground.box, size);
  const ring = ground.rings[0] ?? [];
  // Of equal edges the left one, so that the codes of beds side by side line up.
  const edges = ring
    .map((to, index) => ({ from: ring.at(index - 1) as PagePoint, to }))
    .map((edge) => ({
      ...edge,
      length: Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y),
    }))
    .filter((edge) => edge.length > 0)
    .sort(
      (a, b) =>
        Math.round(a.length) - Math.round(b.length) || a.from.x + a.to.x - b.from.x - b.to.x,
    );
  return edges.flatMap(({ from, to, length }) => {
    const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    return [1, -1].flatMap((side) => {
      const out = { x: along.y * side, y: -along.x * side };
      const outwards = (Math.atan2(out.y, out.x) * 180) / Math.PI;
      const turns = [...flatterFirst(outwards), 0];
      return turns.flatMap((turnDeg) => {
        const { right, down } = directions(turnDeg);
        const reach =
          (Math.abs(right.x * out.x + right.y * out.y) * size.width +
            Math.abs(down.x * out.x + down.y * out.y) * size.height) /
            2 +
          GAP_MM;
        return [0, -0.3, 0.3].map((share) =>
          labelBox(
            {
              x: middle.x + out.x * reach + along.x * share * length,
              y: middle.y + out.y * reach + along.y * share * length,
            },
            size.width,
            size.height,
            turnDeg,
          ),
        );
      });
    });
  });
}

function besideSymbol(box: Box, { width, height }: LabelSize): readonly LabelBox[] {
  const centre = { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  const away = Math.max(box.width, box.height) / 2 + GAP_MM;
  return [
    [1, 0],
    [-1, 0],
    [0, -1],
    [0, 1],
  ].map(([sideways = 0, downwards = 0]) =>
    labelBox(
      {
        x: centre.x + sideways * (away + width / 2),
        y: centre.y + downwards * (away + height / 2),
      },
      width,
      height,
      0,
    ),
  );
}

/** Places around an anchor, near ones first. */
export function* around(anchor: PagePoint): Iterable<PagePoint> {
  for (let away = LEADER_MM.least; away <= LEADER_MM.most; away += LEADER_MM.step) {
    for (let turn = 0; turn < 16; turn += 1) {
      const angle = ((turn * 2 + 1) * Math.PI) / 16;
      yield { x: anchor.x + away * Math.cos(angle), y: anchor.y - away * Math.sin(angle) };
    }
  }
}
