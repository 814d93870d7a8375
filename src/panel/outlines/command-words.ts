/** Commands of outlines: their names, further words they are found by, and why they cannot be used. */

export const importOutlines = "Outlines from GPS or a map program ...";
export const importOutlinesAlso = "import gpx geojson track waypoints";
export const outlineFromCorners = "Outline from its corners ...";
export const outlineFromCornersAlso = "coordinates list paste survey bearing curve polygon";
