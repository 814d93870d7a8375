/** Sheets that go with the plot map when they are wanted, in the order they are printed. */
export const companionTitles = {
  "bed-cards": "Cards of the beds, with a drawing and room to write",
  calendar: "Season calendar by week",
  harvest: "Harvest list, by when seed is ripe, with room to write",
  isolation: "Isolation report for each seed planting",
  "set-out": "Set-out table, to mark the beds with two tapes",
} as const;

export type CompanionId = keyof typeof companionTitles;

export const companionIds = Object.keys(companionTitles) as readonly CompanionId[];
