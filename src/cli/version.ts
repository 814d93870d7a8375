/** The same as in package.json; a test holds it. */
export const version = "0.1.0";
