import { useEffect } from "react";
import { withLoaded } from "../panel/commands/command.ts";
import { windowNow } from "../panel/state/plan-actions.ts";
import { viewNow } from "../panel/state/view-state.ts";
import { useWindowStore } from "../store/window/window-store.ts";
import { TYPED_INTO } from "../store/window/typed-into.ts";

const load = () => import("../panel/clipboard/clipboard-actions.ts");
const loadCorners = () => import("../canvas/tools/paste-corners.ts");
type Clipboard = Awaited<ReturnType<typeof load>>;

/** Text that is marked or typed is the browser's to copy; a dialog lies over the plan. */
function isTextual(event: ClipboardEvent): boolean {
  const { target } = event;
  const isTyping = target instanceof Element && target.matches(TYPED_INTO);
  return isTyping || viewNow().dialog !== null || document.getSelection()?.isCollapsed === false;
}

/** A paste so soon after the middle button belongs to it, ms. */
const MIDDLE_MS = 400;

/**
 * Some systems paste what is marked when the middle button is let go, which here pans. The paste
 * comes between the press and the release, or just after it.
 */
function watchMiddle(): { readonly isMiddlePress: () => boolean; readonly stopMiddle: () => void } {
  let isHeld = false;
  let releasedAt = -Infinity;
  const down = ({ button }: MouseEvent) => {
    if (button === 1) isHeld = true;
  };
  const up = ({ button }: MouseEvent) => {
    if (button !== 1) return;
    isHeld = false;
    releasedAt = performance.now();
  };
  window.addEventListener("mousedown", down, true);
  window.addEventListener("mouseup", up, true);
  return {
    isMiddlePress: () => isHeld || performance.now() - releasedAt < MIDDLE_MS,
    stopMiddle: () => {
      window.removeEventListener("mousedown", down, true);
      window.removeEventListener("mouseup", up, true);
    },
  };
}

/** The browser's own copy, cut and paste, from keys or its menu, for what is selected. */
export function useClipboard(): void {
  useEffect(() => {
    let clipboard: Clipboard | null = null;
    const { isMiddlePress, stopMiddle } = watchMiddle();
    const loadAhead = async () => {
      clipboard = await load().catch(() => null);
    };
    // Loaded with the first selection, so that a copy can fill the event it comes with.
    const stopWatching = useWindowStore.subscribe(({ selection }) => {
      if (selection.length === 0) return;
      stopWatching();
      void loadAhead();
    });
    const copy = (event: ClipboardEvent) => {
      if (isTextual(event) || windowNow().selection.length === 0) return;
      const isCut = event.type === "cut";
      event.preventDefault();
      if (clipboard && event.clipboardData) clipboard.copyInto(event.clipboardData, isCut);
      else {
        void withLoaded(load, (loaded) => {
          void (isCut ? loaded.cutSelection() : loaded.copySelection());
        });
      }
    };
    const paste = (event: ClipboardEvent) => {
      if (isTextual(event)) return;
      if (isMiddlePress()) {
        event.preventDefault();
        return;
      }
      const text = event.clipboardData?.getData("text/plain") ?? "";
      event.preventDefault();
      if (windowNow().tool === "draw-outline") {
        void withLoaded(loadCorners, ({ pasteCornerText }) => pasteCornerText(text));
        return;
      }
      void withLoaded(load, (loaded) => {
        loaded.pasteText(text);
      });
    };
    document.addEventListener("copy", copy);
    document.addEventListener("cut", copy);
    document.addEventListener("paste", paste);
    return () => {
      stopWatching();
      stopMiddle();
      document.removeEventListener("copy", copy);
      document.removeEventListener("cut", copy);
      document.removeEventListener("paste", paste);
    };
  }, []);
}
