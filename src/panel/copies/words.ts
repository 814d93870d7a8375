/** Words of copies on the screen. */

export const gotExpected = (
  fileName: string | number,
  got: string | number,
  expected: string | number,
) => `${fileName}: got ${got}, expected ${expected}.`;
export const andMore = (value: string | number) => `... and ${value} more`;
