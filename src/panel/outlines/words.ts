/** Words of outlines on the screen. */

export const simplifyDropCornersCloser = "Simplify: drop corners closer than";
export const outlineWithoutThemKeeps = "To the outline without them. 0 keeps every corner.";
export const pollenSourcesTakenTheir = (kindName: string | number) =>
  `Pollen sources are taken as ${kindName}: their particulars say what flowers there.`;
export const cancel = "Cancel";
export const outlinesGpsMapProgram = "Outlines from GPS or a map program";
export const gpxFileTracksRoutes =
  "A GPX file (tracks, routes, waypoints) or GeoJSON (polygons, lines, points) becomes beds, the site's outline or its surroundings. Waypoints with one name and the numbers 1, 2, 3 after it are taken as the corners of one outline.";
export const gpxOrGeojsonFile = "GPX or GeoJSON file";
export const reading = "Reading ...";
export const whatNumberBecomes = (numberText: string | number) =>
  `What number ${numberText} becomes`;
export const widthOfNumber = (numberText: string | number) => `Width of number ${numberText}`;
export const it = (problem: string | number) => `It ${problem}.`;
export const showAll = (count: string | number) => `Show all ${count}`;
export const whatTheFileHolds = "What the file holds";
export const number = "Number";
export const name = "Name";
export const inTheFile = "In the file";
export const becomes = "Becomes";
export const allBecome = (value: string | number) => `All ${value} become `;
export const whatIsChosenBelow = "what is chosen below";
export const ofNoKind = "of no kind yet";
