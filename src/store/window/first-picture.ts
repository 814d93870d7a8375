/**
 * The first picture of the window: the sheet drawn in full, the findings counted, all that can be
 * pressed. What fills room already kept for it, and parts that are wanted only later, come right
 * after it has been painted.
 */
import { create } from "zustand";

/** A window that is not painted, such as one in the background, is not waited for longer. */
const PATIENCE_MS = 300;

/** True but for the moments between the start and the first painting. */
export const useFirstPicture = create<{ readonly isPainted: boolean }>()(() => ({
  isPainted: true,
}));

/** To be called before the window is drawn for the first time. */
export function beginFirstPicture(): void {
  useFirstPicture.setState({ isPainted: false });
}

/** Settles when what was drawn has been painted, and has said so to all who wait for it. */
export async function endFirstPicture(): Promise<void> {
  await new Promise<void>((painted) => {
    setTimeout(painted, PATIENCE_MS);
    // A frame begins by this call and is painted after it: a task of its own comes later.
    requestAnimationFrame(() => setTimeout(painted));
  });
  useFirstPicture.setState({ isPainted: true });
}
