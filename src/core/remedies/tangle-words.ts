/** Plantings tangled in conflicts with one another, in words. */

export const tangleSentences = {
  tangled: (count: number, names: string) =>
    `${count} plantings are tangled in conflicts here: ${names}.`,
  noneStays: (leave: number) =>
    `Where they lie now, none of them can stay as it is; at least ${leave} must move, flower at another time, be covered or give no seed.`,
  someStay: (stay: number, names: string, leave: number) =>
    `Where they lie now, at most ${stay} of them can stay as they are, for example ${names}; at least ${leave} must move, flower at another time, be covered or give no seed.`,
  countedHere:
    "This is counted for the places they have now. Whether all fit elsewhere, Arrange in the layout menu tries.",
} as const;
