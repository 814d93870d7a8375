import { useMemo } from "react";
import type { Colours } from "../draw/sheet-colours.ts";
import { type Drawing, SheetShape } from "./SheetShape.tsx";
import { useLiveDrawing } from "./use-live-drawing.ts";
import { useOverlayDrawing } from "./use-overlay-drawing.ts";

/** What is held and what is said of it, in one layer: each whole layer of dots costs every frame. */
export function AboveLayer({ colours }: { readonly colours: Colours }) {
  const live = useLiveDrawing();
  const overlay = useOverlayDrawing();
  const draw = useMemo((): Drawing | null => {
    if (!live && !overlay) return null;
    return (brush) => {
      if (live) apart(brush, live);
      if (overlay) apart(brush, overlay);
    };
  }, [live, overlay]);
  return <SheetShape colours={colours} draw={draw} />;
}

/** Neither draws with what the other has set. */
function apart(brush: Parameters<Drawing>[0], draw: Drawing): void {
  brush.context.save();
  draw(brush);
  brush.context.restore();
}
