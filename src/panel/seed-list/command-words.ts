/** Commands of seed-list: their names, further words they are found by, and why they cannot be used. */

export const placeVariety = "Place a variety ...";
export const placeVarietyAlso = "plant sow";
export const newVariety = "Add a variety ...";
export const varietyList = "Seed list as CSV";
export const varietyListAlso = "import spreadsheet table";
