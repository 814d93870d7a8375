import { useEffect, useState } from "react";
import { needsGround } from "../../core/checks/ground-checks.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import type { GroundPainter } from "../ground/ground-painter.ts";

let loaded: GroundPainter | null = null;

/** Draws what the ground of the plan needs beside its plantings; null until that is fetched. */
export function useGroundPainter(): GroundPainter | null {
  const isNeeded = usePlanStore(({ shown }) => needsGround(shown));
  const [painter, setPainter] = useState(loaded);
  useEffect(() => {
    if (!isNeeded || painter) return;
    let isHere = true;
    const take = async () => {
      const { groundPainter } = await import("../ground/ground-painter.ts");
      loaded = groundPainter;
      if (isHere) setPainter(groundPainter);
    };
    // Away from the network for the moment: the sheet is drawn without.
    void take().catch(() => null);
    return () => {
      isHere = false;
    };
  }, [isNeeded, painter]);
  return isNeeded ? painter : null;
}
