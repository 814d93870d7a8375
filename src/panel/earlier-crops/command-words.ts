/** Commands of earlier-crops: their names, further words they are found by, and why they cannot be used. */

export const earlierCrops = "Earlier crops";
export const earlierCropsAlso = "rotation volunteers last year";
