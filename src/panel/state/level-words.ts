/** Purity levels in a word each, where there is little room. */
import type { PurityLevel } from "../../core/model/plan.ts";

export const levelNames: Readonly<Record<PurityLevel, string>> = {
  home: "home",
  sale: "sale",
  stock: "stock",
};
