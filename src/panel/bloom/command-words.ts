/** Commands of bloom: their names, further words they are found by, and why they cannot be used. */

export const foldBloom = "Show or hide the bloom strip";
