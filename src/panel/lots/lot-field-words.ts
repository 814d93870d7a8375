/** What the fields of a lot are called where one is refused. */

const FIELDS: readonly (readonly [RegExp, string])[] = [
  [/^tests.*date$/, "Date of a test"],
  [/^tests.*sown$/, "Seeds sown"],
  [/^tests.*sprouted$/, "Sprouted"],
  [/^tests.*hard$/, "Hard seed"],
  [/^tests.*replicates/, "Parts"],
  [/^tests.*days$/, "Days"],
  [/^tests/, "Test"],
  [/^stored.*from$/, "Since when it lies there"],
  [/^stored.*moisturePct$/, "Moisture"],
  [/^stored/, "Storage place"],
  [/^from\.on$/, "Day received"],
  [/^from/, "Where from"],
  [/^harvestYear$/, "Harvest year"],
  [/^amount/, "Amount"],
  [/^seedsPerGram$/, "Seeds in a gram"],
  [/^treatedWith$/, "Treated with"],
  [/^mayHaveCrossed$/, "Crossing"],
  [/^code$/, "Code"],
  [/^variety$/, "Variety"],
  [/^partOf/, "Split or mixed from"],
  [/^grownFrom/, "Grown from"],
  [/^note$/, "Note"],
];

export function fieldWords(path: string): string {
  return FIELDS.find(([pattern]) => pattern.test(path))?.[1] ?? path;
}

export const fieldFault = (field: string, got: string, expected: string) =>
  `${field}: got ${got}, expected ${expected}`;
