/** Commands of picture: their names, further words they are found by, and why they cannot be used. */

export const pictureUnder = "Picture under the drawing";
export const pictureUnderAlso = "photo air map sketch background scale";
