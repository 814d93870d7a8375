import { useSyncExternalStore } from "react";

const query = matchMedia("(prefers-reduced-motion: reduce)");

function follow(change: () => void): () => void {
  query.addEventListener("change", change);
  return () => query.removeEventListener("change", change);
}

/** Whether the system asks for less motion. */
export function useReducedMotion(): boolean {
  return useSyncExternalStore(follow, () => query.matches);
}
