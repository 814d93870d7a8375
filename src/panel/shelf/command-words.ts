/** Commands of shelf: their names, further words they are found by, and why they cannot be used. */

export const lotList = "Seed lots as CSV";
export const lotListAlso = "import spreadsheet table";
