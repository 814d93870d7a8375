/** What can still be done in the field, in words. */
export const fieldRemedyWords = {
  cover: {
    cage: (code: string) => `Put a cage over ${code}`,
    bags: (code: string) => `Bag the flowers of ${code}`,
    hand: (code: string) => `Pollinate ${code} by hand`,
  },
  coverNote: {
    cage: "The mesh must stand clear of the flowers. Fix cages and stakes so that wind cannot throw them.",
    bags: "Bag before a flower opens and mark each bagged fruit.",
  },
  cut: (name: string, isOurs: boolean) =>
    isOurs ? `Cut ${name} before it flowers` : `Ask that ${name} be cut before it flowers`,
  cutOpen: (name: string, isOurs: boolean) =>
    isOurs
      ? `Cut ${name} now, every open flower`
      : `Ask that ${name} be cut now, every open flower`,
  cutNote:
    "Look again each week: where it sprouts and opens again, write a first flower, and the finding comes back.",
  cutEntryNote: "cut, with every open flower",
  giveUp: (code: string) => `Keep no seed of ${code}`,
  giveUpNote:
    "What was crossed stays crossed. It is grown to eat; mark its seed as not to be kept.",
} as const;
