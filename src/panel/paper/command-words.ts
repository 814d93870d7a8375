/** Commands of paper: their names, further words they are found by, and why they cannot be used. */

export const paper = "Paper ...";
export const paperAlso = "print pdf plot map bed cards stakes labels packets calendar report";
export const files = "Files for others ...";
export const filesAlso = "export csv geojson";
