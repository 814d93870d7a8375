/** Words of the fields that the line of a variety is reckoned from. */
export const originWords = {
  plantsHint: "Whose seed is in the lot",
  pollen: "Plants that shed pollen",
  pollenHint:
    "All that flowered; by hand, those whose pollen was used; of spinach and asparagus the males",
  equal: "Equal seed of each",
  equalChoices: [
    { value: "unknown", label: "not known" },
    { value: "yes", label: "yes" },
    { value: "no", label: "no" },
  ],
  parents: "Grown from",
  changeParents: (code: string) => `Change what ${code} was grown from`,
  parentsHint: "Codes of the lots sown, with ; between",
  unknownCode: (code: string) => `No lot on the shelf has the code ${code}`,
} as const;
