/** Commands of grown: their names, further words they are found by, and why they cannot be used. */

export const readAsGrown = "Read the plan as grown, or as planned again";
export const readAsGrownAlso = "field record season seen what happened";
export const harvestIntoLot = "Harvest into a lot ...";
export const harvestIntoLotAlso = "seed saved packet shelf isolation";
export const predictedAndSeen = "Predicted and seen ...";
export const predictedAndSeenAlso = "bloom forecast learn days to flower own range";
export const nothingRecordedYet = "Nothing is written in the field record yet";
export const noPlantingYet = "No planting is placed yet";
