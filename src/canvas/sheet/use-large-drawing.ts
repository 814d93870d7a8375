import { useEffect, useMemo, useState } from "react";
import type { LargeDrawing } from "./large-sheet.ts";

const loadLarge = () => import("./large-sheet.ts");

/** Fetches what draws a large sheet, so that it is there when a plan has one. */
export const fetchLargeDrawing = loadLarge;

type Large = Awaited<ReturnType<typeof loadLarge>>;
let loaded: Large | null = null;

/**
 * What draws a sheet of thousands of things; null: drawn whole at each turn, as where there are few.
 * @param onTurn called when there is more to show
 */
export function useLargeDrawing(
  isNeeded: boolean,
  onTurn: () => void,
): LargeDrawing | "coming" | null {
  const [large, setLarge] = useState<Large | "missing" | null>(loaded);
  useEffect(() => {
    if (!isNeeded || large) return;
    let isHere = true;
    const take = (found: Large | "missing") => {
      if (found !== "missing") loaded = found;
      if (isHere) setLarge(found);
    };
    loadLarge().then(take, () => take("missing"));
    return () => {
      isHere = false;
    };
  }, [isNeeded, large]);
  const drawing = useMemo(
    () => (large === null || large === "missing" ? null : large.largeDrawing(onTurn)),
    [large, onTurn],
  );
  useEffect(() => drawing?.stop, [drawing]);
  if (!isNeeded || large === "missing") return null;
  return drawing ?? "coming";
}
