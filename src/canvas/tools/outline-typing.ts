/** Sides, corners and diameters of an outline by typed numbers. What is left empty follows the pointer. */
import { type Point, directionDeg, pointDistance } from "../../core/geometry/point.ts";
import { parseLength } from "../../core/model/length.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useView } from "../scene/view-store.ts";
import { toPx } from "../scene/viewport.ts";
import { outlineDraftWords as words } from "./outline-draft-words.ts";
import { roundCorners } from "./outline-shaping.ts";
import { sketch, useSketch } from "./sketch-store.ts";
import { alongSide, readDegrees } from "./typed-side.ts";
import { type TwoTexts, startTyping } from "./typed-values.ts";

type Take = (place: Point) => void;

function read(text: string, isCoordinate: boolean) {
  const { units } = usePlanStore.getState().plan;
  return parseLength(text, units, isCoordinate, decimalMark());
}

const pxOf = (place: Point): Point => toPx(useView.getState().view, place);

/** The next side by its length and direction. */
export function typeSide(key: string, take: Take): void {
  const { corners, nextCorner } = useSketch.getState();
  const last = corners.at(-1);
  if (!last) return;
  const before = corners.at(-2);
  const drawn = before ? directionDeg(before, last) : 0;
  const pointed = nextCorner && pointDistance(last, nextCorner) > 0 ? nextCorner : null;
  let next: Point | null = null;
  const change = ([length, direction]: TwoTexts) => {
    const side = read(length, false);
    if (!side.ok) return side.reason;
    if (side.metres === 0) return words.noLength;
    const degrees = readDegrees(direction);
    if (degrees === undefined) return words.directions;
    next = alongSide({ last, drawn, pointed }, side.metres, degrees);
    sketch({ nextCorner: next });
    return null;
  };
  const apply = () => {
    if (next) take(next);
  };
  const about = { labels: words.sideLabels, note: words.sideNote, change, apply };
  startTyping({ ...about, dismiss: () => undefined }, key, pxOf(nextCorner ?? last));
}

/** A corner by its place on the sheet: the first one too. */
export function typeCorner(key: string, take: Take): void {
  const { corners, nextCorner } = useSketch.getState();
  const last = corners.at(-1);
  let next: Point | null = null;
  const change = ([right, up]: TwoTexts) => {
    const x = read(right, true);
    if (!x.ok) return x.reason;
    // Until the second number is begun there is nothing wrong with it.
    if (up.trim() === "") {
      next = null;
      return null;
    }
    const y = read(up, true);
    if (!y.ok) return y.reason;
    next = { x: x.metres, y: y.metres };
    if (last && pointDistance(last, next) === 0) return words.sameCorner;
    sketch({ nextCorner: last ? next : null });
    return null;
  };
  const apply = () => {
    if (next) take(next);
  };
  const { widthPx, heightPx } = useView.getState();
  const at = nextCorner ?? last;
  const about = { labels: words.cornerLabels, note: words.cornerNote, change, apply };
  startTyping(
    { ...about, dismiss: () => undefined },
    key,
    at ? pxOf(at) : { x: widthPx / 3, y: heightPx / 3 },
  );
}

/** A round about its middle by the diameter. */
export function typeDiameter(
  key: string,
  middle: Point,
  take: (corners: readonly Point[]) => void,
): void {
  let rim: readonly Point[] = [];
  const change = ([text]: TwoTexts) => {
    const diameter = read(text, false);
    if (!diameter.ok) return diameter.reason;
    if (diameter.metres === 0) return words.noDiameter;
    rim = roundCorners(middle, diameter.metres);
    sketch({ curve: [...rim, ...rim.slice(0, 1)] });
    return null;
  };
  const apply = () => take(rim);
  const about = { labels: words.diameterLabels, change, apply };
  startTyping({ ...about, dismiss: () => undefined }, key, pxOf(middle));
}
