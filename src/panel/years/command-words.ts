/** Words of the command that opens the page of years: in the first load, so these alone. */
export const commandWords = {
  name: "Which year for which ...",
  also: "years renew rotation collection seasons ahead",
  noLots: "There is no lot on the shelf yet",
} as const;
