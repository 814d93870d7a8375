import { useEffect, useState } from "react";
import { useFirstPicture } from "../../store/window/first-picture.ts";

const loadPainter = async () => {
  const [{ drawSketch }, { drawTrial }] = await Promise.all([
    import("../tools/draw-sketch.ts"),
    import("./draw-trial.ts"),
  ]);
  return { drawSketch, drawTrial };
};

type Painter = Awaited<ReturnType<typeof loadPainter>>;
let loaded: Painter | null = null;

/** Draws what the tool at work sketches and what is on trial: fetched after the first picture, which waits for nothing. */
export function useSketchPainter(): Painter | null {
  const [painter, setPainter] = useState(loaded);
  const isPainted = useFirstPicture((state) => state.isPainted);
  useEffect(() => {
    if (painter || !isPainted) return;
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
  }, [painter, isPainted]);
  return painter;
}
