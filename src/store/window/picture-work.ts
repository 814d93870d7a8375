/** Work on the picture under the drawing, shared by sheet and panel. Never part of the plan. */
import { create } from "zustand";
import type { Point } from "../../core/geometry/point.ts";

interface PictureDesk {
  readonly isOpen: boolean;
  /** Ends of the known length marked so far, sheet metres; at most two. */
  readonly marks: readonly Point[];
}

export const usePictureDesk = create<PictureDesk>()(() => ({ isOpen: false, marks: [] }));

export function openPictureDesk(): void {
  usePictureDesk.setState({ isOpen: true });
}

export function closePictureDesk(): void {
  usePictureDesk.setState({ isOpen: false, marks: [] });
}

export function setMarks(marks: readonly Point[]): void {
  usePictureDesk.setState({ marks });
}
