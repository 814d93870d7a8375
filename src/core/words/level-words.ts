/** Purity levels in a word each, as they stand within sentences and where there is little room. */
import type { PurityLevel } from "../model/plan.ts";

export const levelNames: Readonly<Record<PurityLevel, string>> = {
  home: "home",
  sale: "sale",
  stock: "stock",
};
