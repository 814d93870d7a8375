import { useEffect } from "react";
import { withLoaded } from "../panel/commands/command.ts";
import { windowNow } from "../panel/state/plan-actions.ts";
import { viewNow } from "../panel/state/view-state.ts";
import { useWindowStore } from "../store/window/window-store.ts";
import { TYPED_INTO } from "./typed-into.ts";

const load = () => import("../panel/clipboard/clipboard-actions.ts");
type Clipboard = Awaited<ReturnType<typeof load>>;

/** Text that is marked or typed is the browser's to copy; a dialog lies over the plan. */
function isTextual(event: ClipboardEvent): boolean {
  const { target } = event;
  const isTyping = target instanceof Element && target.matches(TYPED_INTO);
  return isTyping || viewNow().dialog !== null || document.getSelection()?.isCollapsed === false;
}

/** The browser's own copy, cut and paste, from keys or its menu, for what is selected. */
export function useClipboard(): void {
  useEffect(() => {
    let clipboard: Clipboard | null = null;
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
      const text = event.clipboardData?.getData("text/plain") ?? "";
      event.preventDefault();
      void withLoaded(load, (loaded) => {
        loaded.pasteText(text);
      });
    };
    document.addEventListener("copy", copy);
    document.addEventListener("cut", copy);
    document.addEventListener("paste", paste);
    return () => {
      stopWatching();
      document.removeEventListener("copy", copy);
      document.removeEventListener("cut", copy);
      document.removeEventListener("paste", paste);
    };
  }, []);
}
