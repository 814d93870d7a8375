/** Boxes that words take on the page, possibly turned, and whether they are in each other's way. */
import type { Box, PagePoint } from "./scene.ts";

export interface LabelBox {
  readonly centre: PagePoint;
  readonly width: number;
  readonly height: number;
  /** Degrees clockwise on the page. */
  readonly turnDeg: number;
  readonly corners: readonly PagePoint[];
  /** Upright bounds, for quick refusal. */
  readonly bounds: Box;
}

export type Ring = readonly PagePoint[];

export function labelBox(
  centre: PagePoint,
  width: number,
  height: number,
  turnDeg: number,
): LabelBox {
  const { right, down } = directions(turnDeg);
  const corner = (sideways: number, downwards: number) => ({
    x: centre.x + (right.x * sideways * width + down.x * downwards * height) / 2,
    y: centre.y + (right.y * sideways * width + down.y * downwards * height) / 2,
  });
  const corners = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
  return { centre, width, height, turnDeg, corners, bounds: boxOf(corners) };
}

/** Unit directions of text turned clockwise on a page whose y runs down. */
export function directions(turnDeg: number) {
  const angle = (turnDeg * Math.PI) / 180;
  return {
    right: { x: Math.cos(angle), y: Math.sin(angle) },
    down: { x: -Math.sin(angle), y: Math.cos(angle) },
  };
}

/** The upright box around some points; at least one. */
export function boxOf(points: readonly PagePoint[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, top, width: right - left, height: bottom - top };
}

export function isInBox({ bounds }: LabelBox, box: Box): boolean {
  return (
    bounds.left >= box.left &&
    bounds.top >= box.top &&
    bounds.left + bounds.width <= box.left + box.width &&
    bounds.top + bounds.height <= box.top + box.height
  );
}

function boxesMeet(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  );
}

/** Whether two label boxes overlap: separating axes of two rectangles. */
export function labelsMeet(a: LabelBox, b: LabelBox): boolean {
  if (!boxesMeet(a.bounds, b.bounds)) return false;
  return [a, b].every(({ turnDeg }) => {
    const { right, down } = directions(turnDeg);
    return [right, down].every((axis) => {
      const [aMin, aMax] = spread(a.corners, axis);
      const [bMin, bMax] = spread(b.corners, axis);
      return aMin < bMax && bMin < aMax;
    });
  });
}

function spread(points: readonly PagePoint[], axis: PagePoint): readonly [number, number] {
  const places = points.map((point) => point.x * axis.x + point.y * axis.y);
  return [Math.min(...places), Math.max(...places)];
}

/** Even-odd over all rings. */
export function ringsContain(rings: readonly Ring[], { x, y }: PagePoint): boolean {
  let isInside = false;
  for (const ring of rings) {
    let from = ring.at(-1) as PagePoint;
    for (const to of ring) {
      if (to.y > y !== from.y > y && x < ((from.x - to.x) * (y - to.y)) / (from.y - to.y) + to.x) {
        isInside = !isInside;
      }
      from = to;
    }
  }
  return isInside;
}

/** Whether the whole label lies on the ground inside the rings. */
export function isInRings(label: LabelBox, rings: readonly Ring[]): boolean {
  return (
    label.corners.every((corner) => ringsContain(rings, corner)) &&
    !ringsCross(rings, label.corners)
  );
}

/** Whether label and ground share anything. */
export function meetsRings(label: LabelBox, rings: readonly Ring[], ringBox: Box): boolean {
  if (!boxesMeet(label.bounds, ringBox)) return false;
  const first = rings[0]?.[0];
  return (
    ringsContain(rings, label.centre) ||
    ringsCross(rings, label.corners) ||
    (first !== undefined && ringsContain([label.corners], first))
  );
}

function ringsCross(rings: readonly Ring[], corners: readonly PagePoint[]): boolean {
  return rings.some((ring) =>
    ring.some((to, index) => {
      const from = ring.at(index - 1) as PagePoint;
      return corners.some((corner, place) =>
        segmentsCross(from, to, corners.at(place - 1) as PagePoint, corner),
      );
    }),
  );
}

export function segmentsCross(a: PagePoint, b: PagePoint, c: PagePoint, d: PagePoint): boolean {
  const side = (from: PagePoint, to: PagePoint, point: PagePoint) =>
    (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
  return side(a, b, c) > 0 !== side(a, b, d) > 0 && side(c, d, a) > 0 !== side(c, d, b) > 0;
}

/** Whether a line runs over the label. */
export function lineMeetsLabel(from: PagePoint, to: PagePoint, label: LabelBox): boolean {
  const isInside = (point: PagePoint) => ringsContain([label.corners], point);
  if (isInside(from) || isInside(to)) return true;
  return label.corners.some((corner, index) =>
    segmentsCross(from, to, label.corners.at(index - 1) as PagePoint, corner),
  );
}

/** Where the line from the label's middle to a point leaves the label. */
export function labelEdge(label: LabelBox, to: PagePoint): PagePoint {
  const { right, down } = directions(label.turnDeg);
  const dx = to.x - label.centre.x;
  const dy = to.y - label.centre.y;
  const sideways = Math.abs(dx * right.x + dy * right.y) / (label.width / 2);
  const downwards = Math.abs(dx * down.x + dy * down.y) / (label.height / 2);
  const share = 1 / Math.max(sideways, downwards, 1);
  return { x: label.centre.x + dx * share, y: label.centre.y + dy * share };
}
