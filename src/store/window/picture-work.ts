/** Work on the picture under the drawing, shared by sheet and panel. Never part of the plan. */
import { create } from "zustand";
import type { Point } from "../../core/geometry/point.ts";

interface PictureWork {
  readonly isOpen: boolean;
  /** Ends of the known length marked so far, sheet metres; at most two. */
  readonly marks: readonly Point[];
}

export const usePictureWork = create<PictureWork>()(() => ({ isOpen: false, marks: [] }));

export function openPictureWork(): void {
  usePictureWork.setState({ isOpen: true });
}

export function closePictureWork(): void {
  usePictureWork.setState({ isOpen: false, marks: [] });
}

export function setMarks(marks: readonly Point[]): void {
  usePictureWork.setState({ marks });
}
