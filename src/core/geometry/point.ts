/** A place on the sheet: metres, x to the right, y up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export function pointDistance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Direction from a to b, degrees clockwise from the sheet's up, 0 to below 360. */
export function directionDeg(a: Point, b: Point): number {
  const degrees = (Math.atan2(b.x - a.x, b.y - a.y) * 180) / Math.PI;
  return (degrees + 360) % 360;
}

/** Turns a point about a centre, degrees clockwise. */
export function turnPoint(point: Point, centre: Point, turnDeg: number): Point {
  const angle = (turnDeg * Math.PI) / 180;
  const dx = point.x - centre.x;
  const dy = point.y - centre.y;
  return {
    x: centre.x + dx * Math.cos(angle) + dy * Math.sin(angle),
    y: centre.y - dx * Math.sin(angle) + dy * Math.cos(angle),
  };
}
