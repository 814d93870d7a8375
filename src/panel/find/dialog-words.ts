/** Words of the parts of find that are fetched when they are opened. */

export const nothingIsCalledThat =
  "Nothing is called that: type a code, a variety, a kind or the name of a neighbour.";
export const matches = "Matches";
export const inWord = (elsewhere: string | number) => `in ${elsewhere}`;
