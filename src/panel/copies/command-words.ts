/** Commands of copies: their names, further words they are found by, and why they cannot be used. */

export const helpersCopies = "Helpers' copies ...";
export const helpersCopiesAlso = "share send phone merge bring together returned";
