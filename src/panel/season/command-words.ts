/** Commands of season: their names, further words they are found by, and why they cannot be used. */

export const seasonCalendar = "Season calendar";
export const siteClimate = "Climate of the site";
export const siteClimateAlso = "heat frost";
export const startNextSeason = "Start the next season ...";
export const startNextSeasonAlso = "new year carry over earlier crops";
export const lotsBefore = "Add lots of the season before ...";
export const lotsBeforeAlso = "harvest last year seed shelf";
export const notStartedFromSeasonBefore = "This plan was not started from the season before";
