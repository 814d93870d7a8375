import { useEffect, useMemo, useState } from "react";
import type { LargeDrawing } from "./large-sheet.ts";

const loadLarge = () => import("./large-sheet.ts");

type Large = Awaited<ReturnType<typeof loadLarge>>;
let loaded: Large | null = null;

/** Fetches what draws a large sheet, so that it is there when a plan has one. */
export async function fetchLargeDrawing(): Promise<Large> {
  return (loaded ??= await loadLarge());
}

/**
 * What draws a sheet of thousands of things; null: drawn whole at each turn, as where there are few.
 * @param onTurn called when there is more to show
 */
export function useLargeDrawing(
  isNeeded: boolean,
  onTurn: () => void,
): LargeDrawing | "coming" | null {
  const [late, setLate] = useState<Large | "missing" | null>(null);
  // Fetched while the window was idle it is here at once: a plan just opened is drawn in its first frame.
  const large = loaded ?? late;
  useEffect(() => {
    if (!isNeeded || large) return;
    let isHere = true;
    const take = (found: Large | "missing") => {
      if (isHere) setLate(found);
    };
    fetchLargeDrawing().then(take, () => take("missing"));
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
