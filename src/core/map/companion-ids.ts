/** Sheets that go with the plot map when they are wanted, in the order they are printed. */
export const companionIds = ["bed-cards", "calendar", "harvest", "isolation", "set-out"] as const;

export type CompanionId = (typeof companionIds)[number];
