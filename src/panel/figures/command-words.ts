/** Commands of figures: their names, further words they are found by, and why they cannot be used. */

export const figures = "Figures";
export const figuresAlso = "isolation distance source";
