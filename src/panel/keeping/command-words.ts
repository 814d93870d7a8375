/** Commands of keeping: their names, further words they are found by, and why they cannot be used. */

export const newPlan = "New plan";
export const openPlan = "Open a plan file ...";
export const savePlan = "Save a plan file";
export const saveAs = "Save as another file ...";
export const keptPlans = "Kept plans ...";
export const keptPlansAlso = "earlier backup";
export const whatWentWrong = "Trouble report";
export const whatWentWrongAlso = "errors fault";
