/** Commands of storage: their names, further words they are found by, and why they cannot be used. */

export const storagePlaces = "Storage places";
export const storagePlacesAlso = "shelf fridge freezer humidity";
