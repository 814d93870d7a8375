/**
 * The only conversion between pixels and metres, and the only flip of y. Sheet metres have y up,
 * pixels of the drawing (CSS pixels from its upper left corner) have y down.
 */
import type { Bounds } from "../../core/geometry/bounds.ts";
import type { Point } from "../../core/geometry/point.ts";

export interface View {
  /** Pixels to a metre. */
  readonly scale: number;
  /** Pixel where the sheet's x = 0 and y = 0 lie. */
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Room kept free around what is fitted into the drawing, pixels. */
export interface Inset {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Pixels to a metre: from ten kilometres across a small screen to a seed tray filling it. */
export const SCALE_LIMITS = { least: 0.02, most: 1000 } as const;
/** Fitting never enlarges beyond this: a single planting keeps some ground around it. */
const FIT_SCALE_MOST = 120;
/** An inset never takes more than this share of the drawing. */
const INSET_SHARE = 0.15;

export function toPx(view: View, place: Point): Point {
  return { x: view.x + place.x * view.scale, y: view.y - place.y * view.scale };
}

export function toSheet(view: View, px: Point): Point {
  return { x: (px.x - view.x) / view.scale, y: (view.y - px.y) / view.scale };
}

export function pannedBy(view: View, dxPx: number, dyPx: number): View {
  return { ...view, x: view.x + dxPx, y: view.y + dyPx };
}

/** Zoomed by a factor; the place under the pixel stays under it. */
export function zoomedAbout(view: View, px: Point, factor: number): View {
  const scale = held(view.scale * factor, SCALE_LIMITS.least, SCALE_LIMITS.most);
  const share = scale / view.scale;
  return { scale, x: px.x + (view.x - px.x) * share, y: px.y + (view.y - px.y) * share };
}

/** The view that shows the bounds as large as they go, in the middle of what the inset leaves. */
export function fittedView(bounds: Bounds, size: Size, inset: Inset): View {
  const left = Math.min(inset.left, size.widthPx * INSET_SHARE);
  const top = Math.min(inset.top, size.heightPx * INSET_SHARE);
  const width = size.widthPx - left - Math.min(inset.right, size.widthPx * INSET_SHARE);
  const height = size.heightPx - top - Math.min(inset.bottom, size.heightPx * INSET_SHARE);
  const scale = held(
    Math.min(
      width / Math.max(bounds.maxX - bounds.minX, 1e-6),
      height / Math.max(bounds.maxY - bounds.minY, 1e-6),
      FIT_SCALE_MOST,
    ),
    SCALE_LIMITS.least,
    SCALE_LIMITS.most,
  );
  return {
    scale,
    x: left + width / 2 - ((bounds.minX + bounds.maxX) / 2) * scale,
    y: top + height / 2 + ((bounds.minY + bounds.maxY) / 2) * scale,
  };
}

/** The view after the drawing changed its size: its middle stays in the middle. */
export function resizedView(view: View, before: Size, after: Size): View {
  return pannedBy(
    view,
    (after.widthPx - before.widthPx) / 2,
    (after.heightPx - before.heightPx) / 2,
  );
}

/** So many times as wide or high: a drawer of a phone has gone, no bar or strip beside the sheet. */
const FAR_LARGER = 1.6;

/** Whether what was fitted would be lost in the room there is now. */
export function isFarLarger(before: Size, after: Size): boolean {
  return (
    after.widthPx > before.widthPx * FAR_LARGER || after.heightPx > before.heightPx * FAR_LARGER
  );
}

/**
 * The view after something beside the drawing took or gave room: what is drawn stays where it is
 * on the screen, or moves just so far that all of what was fitted can still be seen.
 * @param movedPx how far the drawing's upper left corner moved on the screen
 * @param fitted ground that was fitted and is to stay in sight; null: none
 * @returns null when what was fitted no longer goes in
 */
export function stayingView(
  view: View,
  movedPx: Point,
  fitted: Bounds | null,
  { widthPx, heightPx }: Size,
): View | null {
  const stayed = pannedBy(view, -movedPx.x, -movedPx.y);
  if (!fitted) return stayed;
  const upper = toPx(stayed, { x: fitted.minX, y: fitted.maxY });
  const lower = toPx(stayed, { x: fitted.maxX, y: fitted.minY });
  if (lower.x - upper.x > widthPx || lower.y - upper.y > heightPx) return null;
  const inward = (from: number, to: number, most: number) =>
    from < 0 ? -from : Math.min(0, most - to);
  return pannedBy(stayed, inward(upper.x, lower.x, widthPx), inward(upper.y, lower.y, heightPx));
}

/** Ground that is visible, grown by some pixels on every side. */
export function visibleBounds(view: View, size: Size, marginPx = 0): Bounds {
  const lower = toSheet(view, { x: -marginPx, y: size.heightPx + marginPx });
  const upper = toSheet(view, { x: size.widthPx + marginPx, y: -marginPx });
  return { minX: lower.x, minY: lower.y, maxX: upper.x, maxY: upper.y };
}

export function held(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
