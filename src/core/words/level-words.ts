/** Purity levels in a word each, as they stand within sentences and where there is little room. */
export const levelNames: Readonly<Record<"home" | "sale" | "stock", string>> = {
  home: "home",
  sale: "sale",
  stock: "stock",
};
