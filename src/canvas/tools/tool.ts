/** What a pointer tool is to the sheet. */
import type { Point } from "../../core/geometry/point.ts";

/** The pointer as a tool sees it. */
export interface SheetPointer {
  /** Pixels from the drawing's upper left corner. */
  readonly px: Point;
  /** The same place in sheet metres. */
  readonly at: Point;
  /** The same place on the page, CSS pixels: menus open there. */
  readonly page: Point;
  /** Held to constrain. */
  readonly isShift: boolean;
  /** Snapping is off, or suspended with Alt held. */
  readonly isFree: boolean;
  /** A finger: it covers what it points at and cannot hover. */
  readonly isCoarse: boolean;
  /** 1 for a click, 2 for the second of a double click. */
  readonly clicks: number;
}

/** What happens from the press to the release. Every gesture ends in exactly one of end or cancel. */
export interface Gesture {
  /** At most once a frame. */
  readonly move: (pointer: SheetPointer) => void;
  readonly end: (pointer: SheetPointer) => void;
  /** Puts everything back as it was before the press. */
  readonly cancel: () => void;
}

export interface Tool {
  /** The pointer's look while nothing else is said. */
  readonly cursor: string;
  readonly press: (pointer: SheetPointer) => Gesture;
  /** The pointer moves with nothing pressed. */
  readonly hover: (pointer: SheetPointer) => void;
  /** A key while the sheet has the focus: true when the tool used it. */
  readonly key: (key: string) => boolean;
  /** It is taken up: what it can do is said before the first press. */
  readonly take?: () => void;
  /** Another tool is taken up: drafts are dropped. */
  readonly leave: () => void;
}
