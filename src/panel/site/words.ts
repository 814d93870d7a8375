/** Words of site on the screen. */

export const season = "Season";
export const name = "Name";
export const firstDay = "First day";
export const lastDay = "Last day";
export const seasonMayCrossNew = "A season may cross New Year, for example July to June.";
export const goSeasonYearLater = "Go on to the season a year later";
export const becomesDates = "What becomes of the dates";
export const seasonIsToBe = (nameText: string | number, seasonDays: string | number) =>
  `Season ${nameText} is to be ${seasonDays}. `;
export const noDatePlanHangs = "No date in the plan hangs on it.";
export const cancel = "Cancel";
export const otherDaySeason = "The other day of the season";
export const nothingChangedYetSeason = (seasonDays: string | number) =>
  `Nothing has changed yet: from ${seasonDays} the season would end before it starts. Type the other day as well.`;
export const apply = (seasonDays: string | number) => `Apply ${seasonDays}`;
export const planSettings = "Plan settings";
export const purityLevel = "Purity level";
export const decidesPublishedIsolationDistances =
  "Decides which published isolation distances apply.";
export const units = "Units";
export const onlyShownAnyUnit = "Only what is shown; any unit can be typed in any field.";
export const wheelOverTheSheet = "Wheel over the sheet";
export const keptBrowserPinchingCtrl =
  "Kept in this browser. Pinching, and Ctrl with the wheel, always zoom.";
export const site = "Site";
export const compassDirectionTop = "Compass direction at the top";
export const degreesClockwiseNorthWhere =
  "Degrees clockwise from north; 0 where north is at the top of the sheet.";
export const climate = "Climate";
export const change = "Change ...";
export const latitude = "Latitude";
export const notSet = "not set";
export const longitude = "Longitude";
export const bothAreNeeded = "Both are needed";
export const sheetsOriginBothMay =
  "Of the sheet's origin. Both may be pasted into one field: 51.42 N, 0.35 W.";
export const edge = "Edge";
export const notDrawn = "not drawn";
export const drawIt = "Draw it";
export const addAroundDrawn = "Add it around what is drawn";
export const deleteWord = "Delete";
export const seasonNeedsName = "A season needs a name, for example 2027";
export const seasonNeedsFirst = "A season needs a first day";
export const seasonNeedsLast = "A season needs a last day";
export const setLevel = (level: string) => `Set level to ${level}`;
export const showLengthsIn = (unit: string) => `Show lengths in ${unit}`;
export const wheelGuess = "Automatic: a mouse zooms, a trackpad pans";
export const wheelZooms = "Zooms";
export const wheelPans = "Pans";
export const renameSite = "Rename the site";
export const turnNorth = "Turn the north arrow";
export const setPosition = "Set the site's position";
export const drawEdge = "Draw the site's edge";
export const deleteEdge = "Delete the site's edge";
export const reshapeSite = "Reshape the site";
