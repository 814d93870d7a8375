/** What a turn of the wheel, or two fingers on a trackpad, ask for. */

export interface WheelTurn {
  readonly deltaX: number;
  readonly deltaY: number;
  /** 0 pixels, 1 lines, 2 pages. */
  readonly deltaMode: number;
  readonly isCtrl: boolean;
  /** Milliseconds of the page's clock. */
  readonly time: number;
}

export type WheelMeaning = "zoom" | "pan";

export interface WheelMemory {
  readonly meaning: WheelMeaning;
  readonly time: number;
}

/** What the grower has said the wheel does; `guess` leaves it to how the wheel turns. */
type WheelWish = "guess" | WheelMeaning;

/** Turns that follow each other faster than this mean the same, milliseconds. */
const ONE_GESTURE_MS = 250;
/** The least a notch of a mouse wheel turns, pixels. */
const NOTCH_PX = 60;

/**
 * Wheels zoom, trackpads pan, pinches zoom (browsers send them with Ctrl). Which device it is can
 * only be guessed from the first turn of a gesture: trackpads turn a little, or sideways as well.
 */
export function wheelMeaning(
  turn: WheelTurn,
  before: WheelMemory | null,
  wish: WheelWish = "guess",
): WheelMeaning {
  if (turn.isCtrl) return "zoom";
  if (wish !== "guess") return wish;
  if (before && turn.time - before.time < ONE_GESTURE_MS) return before.meaning;
  if (turn.deltaMode !== 0) return "zoom";
  if (turn.deltaX !== 0) return "pan";
  return Math.abs(turn.deltaY) >= NOTCH_PX ? "zoom" : "pan";
}

/** Pixels a line or a page of a wheel stand for. */
const MODE_PX = [1, 33, 400] as const;

export function wheelPixels(delta: number, deltaMode: number): number {
  return delta * (MODE_PX[deltaMode as 0 | 1 | 2] ?? 1);
}

/** The factor a wheel's turn zooms by: pinches send small turns, notches large ones. */
export function wheelFactor(deltaPx: number, isPinch: boolean): number {
  const turn = Math.max(-200, Math.min(200, deltaPx));
  return Math.exp(-turn * (isPinch ? 0.01 : 0.002));
}
