import { useEffect, useState } from "react";

const loadPainter = () => import("../tools/draw-sketch.ts");

type Painter = Awaited<ReturnType<typeof loadPainter>>;
let loaded: Painter | null = null;

/** Draws what the tool at work sketches: fetched at once, and the sheet waits for nothing. */
export function useSketchPainter(): Painter | null {
  const [painter, setPainter] = useState(loaded);
  useEffect(() => {
    if (painter) return;
    let isHere = true;
    const take = async () => {
      loaded = await loadPainter();
      if (isHere) setPainter(loaded);
    };
    // Away from the network for the moment: a drag goes without its guides.
    void take().catch(() => null);
    return () => {
      isHere = false;
    };
  }, [painter]);
  return painter;
}
